package org.roofmaths.roof;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Mend;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Expression;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.HasWorking;
import org.roofmaths.working.Recorder;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;
import org.roofmaths.working.Working;

/**
 * What pitch a lean-to can have under a sill, worked backwards from the heights; and what plate height or projection a
 * wanted pitch allows.
 *
 * <p>Every layer is counted at the top edge and plumb: a build-up T square to the slope takes T / cos(pitch) of the
 * height. With the height A = limit − upstand − plate height and the projection r, the greatest pitch is arccos(T ÷
 * √(A² + r²)) − arctan(r ÷ A). Where a lower limit is set, the gutter may not hang below it: tan(pitch) is at most
 * (plate height − gutter drop − lower limit) ÷ eaves overhang.
 *
 * <p>For example, under a bed joint at 4575 mm, with the plate at 2300 mm, 3000 mm out, an upstand of 75 mm and a
 * build-up of 90 mm, the greatest pitch is 34.87°.
 *
 * <p>The least pitch of a covering comes from the caller or from a rule; here it is only held against what the site
 * allows. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class LeanToFit implements HasWorking, Serializable {
    private static final long serialVersionUID = 1L;

    /** The height of the rafter plane at the plate line. */
    public static final Term<Length> PLATE_HEIGHT = RoofFace.PLATE_HEIGHT;

    /** The level distance from the wall face to the plate line. */
    public static final Term<Length> PROJECTION = Roofs.PROJECTION;

    /** The height up to which the flashing may reach. */
    public static final Term<Length> UPPER_LIMIT = Term.of("upper limit at the wall", "U", Length.class);

    /** How far the flashing stands up the wall above the covering, plumb. */
    public static final Term<Length> UPSTAND = Term.of("upstand at the wall", "us", Length.class);

    /** What lies on the rafters, square to the slope. */
    public static final Term<Length> BUILD_UP = MeetingLine.BUILD_UP;

    /** The height left at the wall for the rise of the rafters and for what lies on them. */
    public static final Term<Length> AVAILABLE = Term.of("height available at the wall", "ha", Length.class);

    /** The greatest pitch at which the flashing stays under the upper limit. */
    public static final Term<Pitch> PITCH_UNDER_LIMIT =
            Term.of("greatest pitch under the upper limit", "pu", Pitch.class);

    /** The greatest pitch at which the gutter stays above the lower limit. */
    public static final Term<Pitch> PITCH_OVER_LIMIT =
            Term.of("greatest pitch over the lower limit", "pl", Pitch.class);

    /** The greatest pitch available. */
    public static final Term<Pitch> GREATEST_PITCH = Term.of("greatest pitch available", "pg", Pitch.class);

    /** How far the underside of the gutter hangs below the rafter plane at the fascia line. */
    public static final Term<Length> GUTTER_DROP = Term.of("gutter drop", "gd", Length.class);

    /** The height below which the gutter must not hang. */
    public static final Term<Length> LOWER_LIMIT = Term.of("lower limit at the eaves", "U2", Length.class);

    /** The pitch that is wanted. */
    public static final Term<Pitch> WANTED_PITCH = Term.of("wanted pitch", "pw", Pitch.class);

    /** The height of the top of the covering at the wall, at the wanted pitch. */
    public static final Term<Length> TOP_OF_COVERING = Term.of("top of the covering at the wall", "tc", Length.class);

    /** How much height is spare at the wall at the wanted pitch; below zero if it is short. */
    public static final Term<Length> SPARE = Term.of("spare height at the wall", "sp", Length.class);

    /** How much height is spare at the eaves at the wanted pitch; below zero if the gutter hangs too low. */
    public static final Term<Length> SPARE_AT_EAVES = Term.of("spare height at the eaves", "se", Length.class);

    /** The greatest plate height that a wanted pitch allows. */
    public static final Term<Length> GREATEST_PLATE_HEIGHT = Term.of("greatest plate height", "Hg", Length.class);

    /** The least plate height that a wanted pitch allows. */
    public static final Term<Length> LEAST_PLATE_HEIGHT = Term.of("least plate height", "Hl", Length.class);

    /** The greatest projection that a wanted pitch allows. */
    public static final Term<Length> GREATEST_PROJECTION = Term.of("greatest projection", "jg", Length.class);

    /** The height of the underside of the gutter, at the wanted pitch. */
    public static final Term<Length> GUTTER_UNDERSIDE = Term.of("underside of the gutter", "gu", Length.class);

    /** A size of the site is not as it must be. */
    public static final ProblemCode SIZE =
            ProblemCode.of("lean-to-fit.size", "Check the size, its datum and its unit.");

    /** No pitch at all fits under the limit. */
    public static final ProblemCode NO_PITCH =
            ProblemCode.of("lean-to-fit.no-pitch", "Lower the plate, raise the limit or thin the build-up.");

    /** A covering asks for more pitch than the site allows. */
    public static final ProblemCode DEMAND_MISSED = ProblemCode.of(
            "lean-to-fit.demand-missed", "Lower the plate, shorten the projection or take another covering.");

    /** A lower limit was asked about but none is set. */
    public static final ProblemCode NO_LOWER_LIMIT = ProblemCode.of(
            "lean-to-fit.no-lower-limit", "Set the lower limit of the site, such as the head of a door.");

    private static final Formula AVAILABLE_SUM =
            Formula.of(AVAILABLE, UPPER_LIMIT.minus(UPSTAND).minus(PLATE_HEIGHT));
    private static final Formula PITCH_UNDER_LIMIT_BY_HEIGHT = Formula.of(
            PITCH_UNDER_LIMIT,
            BUILD_UP.over(AVAILABLE.squared().plus(PROJECTION.squared()).squareRoot())
                    .arcCos()
                    .minus(PROJECTION.arcTanOver(AVAILABLE)));
    private static final Formula PITCH_OVER_LIMIT_BY_HEIGHT = Formula.of(
            PITCH_OVER_LIMIT, PLATE_HEIGHT.minus(GUTTER_DROP).minus(LOWER_LIMIT).arcTanOver(RoofFace.EAVES_OVERHANG));
    private static final Formula GREATEST_IS_UNDER_LIMIT = Formula.of(GREATEST_PITCH, PITCH_UNDER_LIMIT);
    private static final Formula GREATEST_IS_LEAST =
            Formula.of(GREATEST_PITCH, PITCH_UNDER_LIMIT.least(PITCH_OVER_LIMIT));
    private static final Expression PLUMB_BUILD_UP = BUILD_UP.over(WANTED_PITCH.cos());
    private static final Formula TOP_SUM = Formula.of(
            TOP_OF_COVERING,
            PLATE_HEIGHT.plus(PROJECTION.times(WANTED_PITCH.tan())).plus(PLUMB_BUILD_UP));
    private static final Formula SPARE_SUM =
            Formula.of(SPARE, UPPER_LIMIT.minus(UPSTAND).minus(TOP_OF_COVERING));
    private static final Formula GREATEST_PLATE_SUM = Formula.of(
            GREATEST_PLATE_HEIGHT,
            UPPER_LIMIT.minus(UPSTAND).minus(PLUMB_BUILD_UP).minus(PROJECTION.times(WANTED_PITCH.tan())));
    private static final Formula LEAST_PLATE_SUM = Formula.of(
            LEAST_PLATE_HEIGHT, LOWER_LIMIT.plus(GUTTER_DROP).plus(RoofFace.EAVES_OVERHANG.times(WANTED_PITCH.tan())));
    private static final Formula GREATEST_PROJECTION_BY_PITCH =
            Formula.of(GREATEST_PROJECTION, AVAILABLE.minus(PLUMB_BUILD_UP).over(WANTED_PITCH.tan()));
    private static final Formula GUTTER_SUM = Formula.of(
            GUTTER_UNDERSIDE,
            PLATE_HEIGHT
                    .minus(RoofFace.EAVES_OVERHANG.times(WANTED_PITCH.tan()))
                    .minus(GUTTER_DROP));

    private static final Formula SPARE_AT_EAVES_SUM = Formula.of(SPARE_AT_EAVES, GUTTER_UNDERSIDE.minus(LOWER_LIMIT));

    private final LeanToSite site;
    private final @Nullable Pitch greatest;
    private final List<Line> lines;
    private final List<Problem> problems;

    private LeanToFit(LeanToSite site) {
        this.site = site;
        this.greatest = compute(Recorder.off());
        List<Line> made = new ArrayList<>();
        List<Problem> found = new ArrayList<>();
        if (greatest == null) {
            found.add(noPitch());
        }
        for (PitchDemand demand : site.demands()) {
            Line line = new Line(demand, spare(demand), spareAtEaves(demand));
            made.add(line);
            if (!line.fitsAtWall()) {
                found.add(missedAtWall(line));
            }
            if (!line.fitsAtEaves()) {
                found.add(missedAtEaves(line, Objects.requireNonNull(line.spareAtEaves)));
            }
        }
        this.lines = List.copyOf(made);
        this.problems = List.copyOf(found);
    }

    /**
     * How one covering fares on the site at its least pitch.
     *
     * @since 0.1
     */
    public static final class Line implements Serializable {
        private static final long serialVersionUID = 1L;

        private final PitchDemand demand;
        private final Worked<Length> spare;
        private final @Nullable Worked<Length> spareAtEaves;

        private Line(PitchDemand demand, Worked<Length> spare, @Nullable Worked<Length> spareAtEaves) {
            this.demand = demand;
            this.spare = spare;
            this.spareAtEaves = spareAtEaves;
        }

        /** Returns what the covering asks for. */
        public PitchDemand demand() {
            return demand;
        }

        /** Returns the height left between the flashing and the upper limit; below zero if it is short. */
        public Worked<Length> spare() {
            return spare;
        }

        /**
         * Returns the height left between the gutter and the lower limit, below zero if it is short; empty without such
         * a limit.
         */
        public Optional<Worked<Length>> spareAtEaves() {
            return Optional.ofNullable(spareAtEaves);
        }

        /** Tells whether the covering's least pitch fits; a shortfall of up to 100 nm is none. */
        public boolean fits() {
            return fitsAtWall() && fitsAtEaves();
        }

        private boolean fitsAtWall() {
            return spare.value().meetsLeast(Length.ZERO);
        }

        private boolean fitsAtEaves() {
            return spareAtEaves == null || spareAtEaves.value().meetsLeast(Length.ZERO);
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Line l
                    && demand.equals(l.demand)
                    && spare.equals(l.spare)
                    && Objects.equals(spareAtEaves, l.spareAtEaves);
        }

        @Override
        public int hashCode() {
            return Objects.hash(demand, spare.value());
        }

        /**
         * Returns for example {@code plain tiles: at least 35° fits with 12 mm to spare} or
         * {@code plain tiles: at least 35° misses by 24.2 mm}.
         */
        @Override
        public String toString() {
            Length least = spareAtEaves == null ? spare.value() : spare.value().min(spareAtEaves.value());
            return demand + (fits() ? " fits with " + least + " to spare" : " misses by " + least.negated());
        }
    }

    /**
     * Works out what fits on a site.
     *
     * @param site the heights and sizes
     * @return what fits
     * @throws ProblemsException with everything that is wrong with the sizes
     */
    public static LeanToFit of(LeanToSite site) {
        check(site).throwIfErrors();
        return new LeanToFit(site);
    }

    /**
     * Works out what fits on a site, or what is wrong with its sizes.
     *
     * @param site the heights and sizes
     * @return what fits, with the findings beside it, or the problems
     */
    public static Attempt<LeanToFit> attempt(LeanToSite site) {
        Problems wrong = check(site);
        if (wrong.hasErrors()) {
            return Attempt.failed(wrong.list());
        }
        LeanToFit fit = new LeanToFit(site);
        return Attempt.of(fit, fit.problems);
    }

    private static Problems check(LeanToSite site) {
        Problems problems = Problems.none();
        Sizes.requireWithin(problems, SIZE, "plate height", site.plateHeight());
        Sizes.requireSize(problems, SIZE, "projection", site.projection());
        Sizes.requireWithin(problems, SIZE, "upper limit", site.upperLimit().value());
        Sizes.requireNoLessThanZero(problems, SIZE, "upstand", site.upstand().value());
        Sizes.requireNoLessThanZero(problems, SIZE, "build-up", site.buildUp());
        Sizes.requireNoLessThanZero(problems, SIZE, "eaves overhang", site.eavesOverhang());
        Sizes.requireNoLessThanZero(problems, SIZE, "gutter drop", site.gutterDrop());
        site.lowerLimit().ifPresent(limit -> Sizes.requireWithin(problems, SIZE, "lower limit", limit.value()));
        for (PitchDemand demand : site.demands()) {
            demand.buildUp()
                    .ifPresent(own ->
                            Sizes.requireNoLessThanZero(problems, SIZE, "build-up of " + demand.covering(), own));
            problems.require(
                    site.projection().toMetres() * demand.leastPitch().value().tan() <= Sizes.LONGEST.toMetres(),
                    SIZE,
                    "least pitch of " + demand.covering(),
                    demand.leastPitch().value(),
                    "give a rise of at most " + Sizes.LONGEST + " over the projection");
        }
        return problems;
    }

    private @Nullable Pitch compute(Recorder r) {
        Length plate = r.use(PLATE_HEIGHT, site.plateHeight());
        Length projection = r.use(PROJECTION, site.projection());
        Length buildUp = r.use(BUILD_UP, site.buildUp());
        Length available = available(plate, r);
        double room = StrictMath.hypot(available.toMetres(), projection.toMetres());
        Angle under = Angle.ofRadians(StrictMath.acos(Math.min(1, buildUp.toMetres() / room))
                - StrictMath.atan2(projection.toMetres(), available.toMetres()));
        if (!isPitch(under) || buildUp.toMetres() >= room) {
            return null;
        }
        Pitch pitch = r.record(PITCH_UNDER_LIMIT, Pitch.from(under), PITCH_UNDER_LIMIT_BY_HEIGHT);
        Angle over = overLimit(plate, r);
        if (over == null) {
            return r.record(GREATEST_PITCH, pitch, GREATEST_IS_UNDER_LIMIT);
        }
        if (!isPitch(over)) {
            return null;
        }
        Pitch gutter = r.record(PITCH_OVER_LIMIT, Pitch.from(over), PITCH_OVER_LIMIT_BY_HEIGHT);
        return r.record(GREATEST_PITCH, pitch.min(gutter), GREATEST_IS_LEAST);
    }

    private static boolean isPitch(Angle angle) {
        return angle.isPositive() && angle.toDegrees() < 90;
    }

    private Length available(Length plate, Recorder r) {
        Length limit = r.use(UPPER_LIMIT, site.upperLimit());
        Length upstand = r.use(UPSTAND, site.upstand());
        return r.record(AVAILABLE, limit.minus(upstand).minus(plate), AVAILABLE_SUM);
    }

    /**
     * The greatest angle at which the gutter stays above its limit; null where the limit cannot be reached at any
     * pitch.
     */
    private @Nullable Angle overLimit(Length plate, Recorder r) {
        if (site.lowerLimit().isEmpty()) {
            return null;
        }
        Length overhang = r.use(RoofFace.EAVES_OVERHANG, site.eavesOverhang());
        Length drop = r.use(GUTTER_DROP, site.gutterDrop());
        Length limit = r.use(LOWER_LIMIT, site.lowerLimit().get());
        Length room = plate.minus(drop).minus(limit);
        if (overhang.isZero() && !room.isNegative()) {
            return null;
        }
        return Angle.ofRadians(StrictMath.atan2(room.toMetres(), overhang.toMetres()));
    }

    private Problem noPitch() {
        Length available =
                site.upperLimit().value().minus(site.upstand().value()).minus(site.plateHeight());
        Length short1 = site.buildUp().minus(available);
        boolean atWall = !short1.isNegative();
        String message = atWall
                ? "no pitch fits: the height available at the wall is " + available + ", and the build-up alone takes "
                        + site.buildUp()
                : "no pitch fits: the gutter would hang below the lower limit at any pitch";
        List<Mend> mends = atWall
                ? List.of(Mend.of(
                        "plate height", short1 + " less and more", short1.negated(), "room for the rafters to rise"))
                : List.of();
        return Problem.finding(NO_PITCH, "lean-to", available, site.buildUp(), message, mends);
    }

    private Problem missedAtWall(Line line) {
        Length missing = line.spare.value().negated();
        Pitch wanted = line.demand.leastPitch().value();
        List<Mend> mends = new ArrayList<>();
        mends.add(Mend.of(
                "plate height",
                missing + " less",
                missing.negated(),
                "a plate at " + site.plateHeight().minus(missing)));
        Length projection = greatestProjection(line.demand, Recorder.off());
        if (projection.isPositive()) {
            Length less = site.projection().minus(projection);
            mends.add(Mend.of("projection", less + " less", less.negated(), "a projection of " + projection));
        }
        return Problem.finding(
                DEMAND_MISSED,
                line.demand.covering(),
                line.spare.value(),
                Length.ZERO,
                line.demand.covering() + " asks for " + wanted + ", which misses by " + missing + " at the wall"
                        + (greatest == null ? "" : "; the greatest pitch available is " + greatest),
                mends);
    }

    private static Problem missedAtEaves(Line line, Worked<Length> spare) {
        Length missing = spare.value().negated();
        return Problem.finding(
                DEMAND_MISSED,
                line.demand.covering(),
                spare.value(),
                Length.ZERO,
                line.demand.covering() + " asks for " + line.demand.leastPitch().value()
                        + ", at which the gutter hangs " + missing + " below the lower limit",
                List.of(Mend.of("eaves overhang", "less", "the gutter hangs higher")));
    }

    private @Nullable Worked<Length> spareAtEaves(PitchDemand demand) {
        if (site.lowerLimit().isEmpty()) {
            return null;
        }
        Figure<Length> lower = site.lowerLimit().get();
        return Worked.by(SPARE_AT_EAVES, r -> {
            Length underside = gutterUnderside(demand.leastPitch(), r);
            return r.record(SPARE_AT_EAVES, underside.minus(r.use(LOWER_LIMIT, lower)), SPARE_AT_EAVES_SUM);
        });
    }

    private Length gutterUnderside(Figure<Pitch> wanted, Recorder r) {
        Length plate = r.use(PLATE_HEIGHT, site.plateHeight());
        Length drop = r.use(GUTTER_DROP, site.gutterDrop());
        Length overhang = r.use(RoofFace.EAVES_OVERHANG, site.eavesOverhang());
        Pitch pitch = r.use(WANTED_PITCH, wanted);
        return r.record(GUTTER_UNDERSIDE, plate.minus(pitch.riseOver(overhang)).minus(drop), GUTTER_SUM);
    }

    private Figure<Length> buildUp(PitchDemand demand) {
        return Figure.given(demand.buildUp().orElse(site.buildUp()));
    }

    private Worked<Length> spare(PitchDemand demand) {
        return Worked.by(SPARE, r -> {
            Length plate = r.use(PLATE_HEIGHT, site.plateHeight());
            Length projection = r.use(PROJECTION, site.projection());
            Length buildUp = r.use(BUILD_UP, buildUp(demand));
            Pitch pitch = r.use(WANTED_PITCH, demand.leastPitch());
            Length top = r.record(
                    TOP_OF_COVERING,
                    plate.plus(pitch.riseOver(projection)).plus(buildUp.dividedBy(pitch.cos())),
                    TOP_SUM);
            Length limit = r.use(UPPER_LIMIT, site.upperLimit());
            Length upstand = r.use(UPSTAND, site.upstand());
            return r.record(SPARE, limit.minus(upstand).minus(top), SPARE_SUM);
        });
    }

    /** Returns the site for which this was worked out. */
    public LeanToSite site() {
        return site;
    }

    /** Returns the greatest pitch available, with the build-up of the site; empty if no pitch fits. */
    public Optional<Pitch> greatestPitch() {
        return Optional.ofNullable(greatest);
    }

    /** Returns how each covering fares, in the order of the demands. */
    public List<Line> lines() {
        return lines;
    }

    /** Returns a finding for each covering that misses, with ways to mend it, and one if no pitch fits at all. */
    public List<Problem> problems() {
        return problems;
    }

    /**
     * Returns the greatest plate height at which a wanted pitch still fits under the upper limit, with the projection
     * and the build-up of the site.
     *
     * @param wanted the pitch
     * @return the height of the rafter plane at the plate line
     */
    public Worked<Length> greatestPlateHeight(Pitch wanted) {
        Objects.requireNonNull(wanted, "wanted");
        return Worked.by(GREATEST_PLATE_HEIGHT, r -> {
            Length limit = r.use(UPPER_LIMIT, site.upperLimit());
            Length upstand = r.use(UPSTAND, site.upstand());
            Length buildUp = r.use(BUILD_UP, site.buildUp());
            Length projection = r.use(PROJECTION, site.projection());
            Pitch pitch = r.use(WANTED_PITCH, wanted);
            return r.record(
                    GREATEST_PLATE_HEIGHT,
                    limit.minus(upstand).minus(buildUp.dividedBy(pitch.cos())).minus(pitch.riseOver(projection)),
                    GREATEST_PLATE_SUM);
        });
    }

    /**
     * Returns the least plate height at which the gutter stays above the lower limit at a wanted pitch.
     *
     * @param wanted the pitch
     * @return the height of the rafter plane at the plate line
     * @throws ProblemsException if the site has no lower limit
     */
    public Worked<Length> leastPlateHeight(Pitch wanted) {
        Objects.requireNonNull(wanted, "wanted");
        Figure<Length> lower = site.lowerLimit()
                .orElseThrow(() -> new ProblemsException(List.of(Problem.error(
                        NO_LOWER_LIMIT, "lower limit", "not set", "be set to ask for a least plate height"))));
        return Worked.by(LEAST_PLATE_HEIGHT, r -> {
            Length limit = r.use(LOWER_LIMIT, lower);
            Length drop = r.use(GUTTER_DROP, site.gutterDrop());
            Length overhang = r.use(RoofFace.EAVES_OVERHANG, site.eavesOverhang());
            Pitch pitch = r.use(WANTED_PITCH, wanted);
            return r.record(LEAST_PLATE_HEIGHT, limit.plus(drop).plus(pitch.riseOver(overhang)), LEAST_PLATE_SUM);
        });
    }

    /**
     * Returns the greatest projection at which a wanted pitch still fits under the upper limit, with the plate height
     * and the build-up of the site.
     *
     * @param wanted the pitch
     * @return the level distance from the wall face to the plate line; zero or below if the pitch fits at no projection
     */
    public Worked<Length> greatestProjection(Pitch wanted) {
        PitchDemand demand = PitchDemand.of("wanted", wanted);
        return Worked.by(GREATEST_PROJECTION, r -> greatestProjection(demand, r));
    }

    private Length greatestProjection(PitchDemand demand, Recorder r) {
        Length plate = r.use(PLATE_HEIGHT, site.plateHeight());
        Length available = available(plate, r);
        Length buildUp = r.use(BUILD_UP, buildUp(demand));
        Pitch pitch = r.use(WANTED_PITCH, demand.leastPitch());
        return r.record(
                GREATEST_PROJECTION,
                pitch.runOver(available.minus(buildUp.dividedBy(pitch.cos()))),
                GREATEST_PROJECTION_BY_PITCH);
    }

    /**
     * Returns the height of the underside of the gutter at a pitch.
     *
     * @param wanted the pitch
     * @return the height
     */
    public Worked<Length> gutterUnderside(Pitch wanted) {
        Figure<Pitch> pitch = Figure.given(Objects.requireNonNull(wanted, "wanted"));
        return Worked.by(GUTTER_UNDERSIDE, r -> gutterUnderside(pitch, r));
    }

    /** Returns the working of the greatest pitch available; where none fits, of the height available at the wall. */
    @Override
    public Working working() {
        return Working.of(this::compute);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LeanToFit f && site.equals(f.site);
    }

    @Override
    public int hashCode() {
        return site.hashCode();
    }

    /** Returns for example {@code greatest pitch available 34.87°} and a line for each covering. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(
                greatest == null ? "no pitch fits" : "greatest pitch available " + Summary.pitch(greatest));
        lines.forEach(line -> text.append('\n').append(line));
        return text.toString();
    }
}
