package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.roof.RoofLine;
import org.roofmaths.units.Direction;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * One face of a roof set out: its courses, its columns, the units counted, the battens and the underlay.
 *
 * <p>The face is the covered one: its width includes the verge overhangs that the scheme wants, its slope runs from the fascia line
 * to the apex line. What does not fit is a finding beside what fits: {@link #courses()} and {@link #columns()} are attempts, and
 * {@link #problems()} lists everything.
 *
 * <pre>{@code
 * FaceLayout layout = FaceLayout.on(FlatShape.rectangle(mm(5245), mm(3714)).withPitch(pitch("32°")), scheme);
 * layout.courses().orThrow().marks();
 * layout.counts().orThrow();
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class FaceLayout implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** An opening lies outside its face or across one of its edges. */
    public static final ProblemCode OPENING_OUTSIDE = ProblemCode.of(
            "face-layout.opening-outside", "Measure the place of the opening from the left end of the eaves again.");

    /** Two openings overlap. */
    public static final ProblemCode OPENINGS_OVERLAP =
            ProblemCode.of("face-layout.openings-overlap", "Give both as one opening, or measure them again.");

    /** The width of the covered face, verge overhangs as wanted included. */
    public static final Term<Length> FACE_WIDTH = Term.of("width of the covered face", "Wf", Length.class);

    /** The verge overhang that is wanted. */
    public static final Term<Length> VERGE_OVERHANG_WANTED = Term.of("verge overhang wanted", "vo", Length.class);

    private final FlatShape shape;
    private final LayoutScheme scheme;
    private final Attempt<Courses> courses;
    private final Attempt<Columns> columns;
    private final List<CourseRow> rows;

    private FaceLayout(
            FlatShape shape,
            LayoutScheme scheme,
            Attempt<Courses> courses,
            Attempt<Columns> columns,
            List<CourseRow> rows) {
        this.shape = shape;
        this.scheme = scheme;
        this.courses = courses;
        this.columns = columns;
        this.rows = rows;
    }

    /**
     * Sets out a face.
     *
     * @param shape the covered face laid flat; it must know its pitch if the scheme gives its overhang level
     * @param scheme how it is to be covered
     * @return the layout, with findings where something does not fit
     * @throws ProblemsException if shape and scheme cannot be used together
     */
    public static FaceLayout on(FlatShape shape, LayoutScheme scheme) {
        return attemptOn(shape, scheme).orThrow();
    }

    /**
     * Sets out a face of a roof.
     *
     * @param face the face; its verge overhangs are those that the scheme wants
     * @param scheme how it is to be covered
     * @return the layout, with findings where something does not fit
     */
    public static FaceLayout on(RoofFace face, LayoutScheme scheme) {
        FlatShape shape = face.flatShape();
        Worked<Length> length = face.slopeLength(RoofLine.FASCIA, RoofLine.APEX);
        Ends<Figure<Length>> lengths =
                shape.slopeLengths().map(at -> at.equals(length.value()) ? length : Figure.given(at));
        return attemptOn(shape, lengths, face.pitchFigure(), scheme).orThrow();
    }

    /**
     * Sets out a face, or says what is wrong with shape and scheme.
     *
     * @param shape the covered face laid flat
     * @param scheme how it is to be covered
     * @return the layout; or errors
     */
    public static Attempt<FaceLayout> attemptOn(FlatShape shape, LayoutScheme scheme) {
        return attemptOn(
                shape,
                shape.slopeLengths().map(Figure::given),
                shape.pitch().<Figure<Pitch>>map(Figure::given).orElse(null),
                scheme);
    }

    private static Attempt<FaceLayout> attemptOn(
            FlatShape shape, Ends<Figure<Length>> lengths, @Nullable Figure<Pitch> pitch, LayoutScheme scheme) {
        if (scheme.overhangIntoGutter().direction() == Direction.LEVEL && pitch == null) {
            return Attempt.failed(List.of(Problem.error(
                    LayoutScheme.CONTRADICTION,
                    "overhangIntoGutter",
                    scheme.overhangIntoGutter(),
                    "be measured on the slope, as the face does not know its pitch")));
        }
        Attempt<Courses> courses = new CourseSearch(
                        coursePlan(lengths, pitch, scheme),
                        scheme.overhangRange().orElse(null),
                        scheme.topDistanceRange().orElse(null))
                .find();
        FaceColumns.Found found = new FaceColumns(shape, scheme, courses).find();
        FaceLayout layout = new FaceLayout(shape, scheme, courses, found.columns(), found.rows());
        return Attempt.of(layout, layout.problems());
    }

    private static CoursePlan coursePlan(
            Ends<Figure<Length>> lengths, @Nullable Figure<Pitch> pitch, LayoutScheme scheme) {
        CoveringUnit unit = scheme.unit();
        Optional<Length> least = unit instanceof SingleLapUnit s ? s.leastGauge() : ((DoubleLapUnit) unit).leastGauge();
        Optional<Length> greatest =
                unit instanceof SingleLapUnit s ? s.greatestGauge() : ((DoubleLapUnit) unit).greatestGauge();
        return new CoursePlan(
                lengths,
                unit,
                scheme.headlap(),
                least.<Figure<Length>>map(Figure::given).orElse(null),
                greatest.<Figure<Length>>map(Figure::given).orElse(null),
                Figure.given(scheme.overhangIntoGutter().length()),
                scheme.overhangIntoGutter().direction(),
                pitch,
                Figure.given(scheme.topDistance()),
                scheme.battens().map(BattenDemand::width).orElse(null),
                scheme.underEavesHoleToHead().orElse(null),
                scheme.preference(),
                scheme.rounding());
    }

    /** Returns the covered face. */
    public FlatShape shape() {
        return shape;
    }

    /** Returns how it was to be covered. */
    public LayoutScheme scheme() {
        return scheme;
    }

    /** Returns the courses; or a finding that tells by how much none fit, with ways to mend it. */
    public Attempt<Courses> courses() {
        return courses;
    }

    /** Returns the columns; or a finding that tells by how much none fit, with ways to mend it. */
    public Attempt<Columns> columns() {
        return columns;
    }

    /**
     * Returns what lies in every course, from the eaves up, under-eaves and tops courses with the others: pieces that meet a hip, a
     * valley or an opening are cut. Empty if courses or columns are missing.
     *
     * @return one row for each course
     */
    public List<CourseRow> rows() {
        return rows;
    }

    /** Returns every unit that is cut to a hip, a valley, a verge out of square or round an opening, from the eaves up. */
    public List<UnitCut> cuts() {
        return rows.stream().flatMap(row -> row.cuts().stream()).toList();
    }

    /** Returns the units counted by kind; or, if courses or columns are missing, the findings that say why. */
    public Attempt<UnitCounts> counts() {
        return courses.hasValue() && columns.hasValue() ? Attempt.of(UnitCounts.of(rows)) : Attempt.failed(failures());
    }

    private List<Problem> failures() {
        List<Problem> all = new ArrayList<>();
        if (!courses.hasValue()) {
            all.addAll(courses.problems());
        }
        if (!columns.hasValue()) {
            all.addAll(columns.problems());
        }
        return all;
    }

    /** Returns the battens; or, if courses are missing, the findings that say why. */
    public Attempt<BattenRuns> battens() {
        return courses.hasValue()
                ? Attempt.of(new BattenRuns(courses.orThrow(), shape, scheme.openings()))
                : Attempt.failed(courses.problems());
    }

    /** Returns the underlay; empty if the scheme names no roll or no laps. */
    public Optional<Underlay> underlay() {
        return scheme.underlayRoll()
                .flatMap(roll -> scheme.underlay().map(demand -> {
                    Length slope =
                            shape.slopeLengths().left().max(shape.slopeLengths().right());
                    Length width = shape.eavesWidth().max(shape.topWidth());
                    return Underlay.over(slope, width, roll, demand);
                }));
    }

    /** Returns every finding and notice, courses first. */
    public List<Problem> problems() {
        List<Problem> all = new ArrayList<>(courses.problems());
        all.addAll(columns.problems());
        all.addAll(new OpeningProblems(shape, scheme, courses, columns, rows).list());
        return List.copyOf(all);
    }

    /** Returns the working of everything that could be worked out. */
    @Override
    public Working working() {
        return Working.of(this::tell);
    }

    private void tell(Recorder r) {
        courses.value().ifPresent(found -> found.tell(r));
        columns.value().ifPresent(found -> found.tell(r));
        battens().value().ifPresent(found -> found.tell(r));
        underlay().ifPresent(found -> found.tell(r));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof FaceLayout f && shape.equals(f.shape) && scheme.equals(f.scheme);
    }

    @Override
    public int hashCode() {
        return Objects.hash(shape, scheme);
    }

    /** Returns courses and columns in one line each, or why they are missing. */
    @Override
    public String toString() {
        return courses.value()
                        .map(Courses::toString)
                        .orElseGet(() -> courses.problems().get(0).message())
                + "\n"
                + columns.value()
                        .map(Columns::toString)
                        .orElseGet(() -> columns.problems().get(0).message());
    }
}
