package org.roofmaths.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.Hanging;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.flashing.BedJoints;
import org.roofmaths.flashing.CoverFlashing;
import org.roofmaths.flashing.CoveringLine;
import org.roofmaths.flashing.FlashingDemand;
import org.roofmaths.flashing.StepFlashing;
import org.roofmaths.order.CuttingDemand;
import org.roofmaths.order.JointedRun;
import org.roofmaths.order.Order;
import org.roofmaths.order.StockCutting;
import org.roofmaths.order.UnitsAlong;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.roof.EdgeKind;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.roof.LeanToFit;
import org.roofmaths.roof.LeanToSite;
import org.roofmaths.roof.PitchDemand;
import org.roofmaths.roof.Roof;
import org.roofmaths.roof.RoofEdge;
import org.roofmaths.roof.RoofEnd;
import org.roofmaths.roof.RoofFace;
import org.roofmaths.roof.Roofs;
import org.roofmaths.rules.Check;
import org.roofmaths.rules.Demands;
import org.roofmaths.rules.Detail;
import org.roofmaths.rules.Edition;
import org.roofmaths.rules.Insulation;
import org.roofmaths.rules.Outcome;
import org.roofmaths.rules.RoofForm;
import org.roofmaths.rules.RuleSet;
import org.roofmaths.rules.Rules;
import org.roofmaths.rules.Situation;
import org.roofmaths.rules.Subject;
import org.roofmaths.rules.Subjects;
import org.roofmaths.settingout.BattenDemand;
import org.roofmaths.settingout.BattenRuns;
import org.roofmaths.settingout.Change;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.LayoutScheme;
import org.roofmaths.settingout.Preference;
import org.roofmaths.settingout.UnderlayDemand;
import org.roofmaths.settingout.UnderlayRoll;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Range;
import org.roofmaths.ventilation.EdgeVents;
import org.roofmaths.ventilation.RafterBays;
import org.roofmaths.ventilation.SpotVents;
import org.roofmaths.ventilation.Vent;
import org.roofmaths.working.Assumed;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Sourced;

/**
 * Everything that is worked out for a job, each part once; the parts of the sheet read it. What cannot be worked out is absent, and a
 * problem says why.
 */
final class JobFigures {
    /** One face and how it is covered. */
    record Face(RoofFace face, FlatShape shape, boolean asFound, FaceLayout layout) {}

    /** What a saw takes away with each cut of a batten. */
    static final Length SAW_CUT = Length.ofMillimetres(3);

    /** The face of a duo-pitch that is seen from the other side. */
    private static final String BACK = "back";

    private final Job job;
    private final List<Problem> problems = new ArrayList<>();
    private final @Nullable RuleSet rules;
    private final @Nullable Roof roof;
    private final List<Face> faces = new ArrayList<>();
    private final @Nullable RafterBays bays;
    private final @Nullable CoverFlashing topFlashing;
    private final List<StepFlashing> sideFlashings = new ArrayList<>();
    private final List<EdgeVents> lowVents = new ArrayList<>();
    private final @Nullable LeanToFit leanToFit;
    private final @Nullable EdgeVents highVents;
    private final @Nullable SpotVents topVents;
    private final @Nullable UnitsAlong ridgeUnits;
    private final @Nullable StockCutting battenPlan;
    private final @Nullable Order order;

    JobFigures(Job job) {
        this.job = job;
        rules = tried(() -> Attempt.call(() -> Rules.of(job.jurisdiction()).inOrder(job.editions())))
                .orElse(null);
        roof = tried(() -> buildRoof(job.roof())).orElse(null);
        roof().ifPresent(r -> problems.addAll(r.problems()));
        roof().ifPresent(this::layOutFaces);
        bays = roof().flatMap(r -> tried(() -> Attempt.call(() -> RafterBays.of(
                        job.roof().along(),
                        job.settingOut().rafterCentres(),
                        job.settingOut().rafterWidth()))))
                .orElse(null);
        topFlashing = meets(EdgeKind.TOP_ABUTMENT)
                ? tried(() -> demands().flashing(Detail.COVER_FLASHING))
                        .flatMap(this::flashTop)
                        .orElse(null)
                : null;
        if (meets(EdgeKind.SIDE_ABUTMENT)) {
            tried(() -> demands().flashing(Detail.STEP_AND_COVER)).ifPresent(this::flashSides);
        }
        leanToFit = job.roof().kind() == JobRoof.Kind.LEAN_TO ? fitLeanTo().orElse(null) : null;
        highVents = ventilate().orElse(null);
        topVents = highVents()
                .filter(vents -> vents.demand().isAsked())
                .flatMap(vents -> job.topVent()
                        .flatMap(area ->
                                bays().map(b -> vents.provided(Vent.of("top vent of " + Show.opening(area), area), b))))
                .orElse(null);
        ridgeUnits = job.ridgeCover()
                .flatMap(cover -> roof().flatMap(
                                r -> r.edges(EdgeKind.RIDGE).stream().findFirst())
                        .flatMap(ridge ->
                                tried(() -> UnitsAlong.attempt(ridge.trueLengthFigure(), Figure.given(cover)))))
                .orElse(null);
        topVents().ifPresent(vents -> problems.addAll(vents.problems()));
        ridgeUnits().ifPresent(units -> problems.addAll(units.problems()));
        battenPlan = planBattens().orElse(null);
        order = JobPurchases.order(this).orElse(null);
        order().ifPresent(o -> problems.addAll(o.problems()));
    }

    private <T> Optional<T> tried(Supplier<Attempt<T>> call) {
        Attempt<T> attempt = call.get();
        problems.addAll(attempt.problems());
        return attempt.value();
    }

    static Attempt<Roof> buildRoof(JobRoof r) {
        return switch (r.kind()) {
            case LEAN_TO ->
                Roofs.leanTo()
                        .wallLength(r.along())
                        .projection(r.across())
                        .slope(r.slope())
                        .eavesOverhang(r.eavesOverhang())
                        .left(r.left())
                        .right(r.right())
                        .attempt();
            case DUO_PITCH ->
                Roofs.duoPitch()
                        .length(r.along())
                        .span(r.across())
                        .slope(r.slope())
                        .eavesOverhang(r.eavesOverhang())
                        .left(r.left())
                        .right(r.right())
                        .attempt();
        };
    }

    private void layOutFaces(Roof built) {
        for (String name : job.roof().asFound().keySet()) {
            if (built.faces().stream().noneMatch(face -> face.name().equals(name))) {
                problems.add(Problem.error(
                        Job.IMPOSSIBLE,
                        "asFound",
                        '"' + name + '"',
                        "name a face of the roof: "
                                + String.join(
                                        ", ",
                                        built.faces().stream()
                                                .map(RoofFace::name)
                                                .toList())));
            }
        }
        for (RoofFace face : built.faces()) {
            Ends<Length> found = job.roof().asFound().get(face.name());
            FlatShape shape = found == null
                    ? face.flatShape()
                    : FlatShape.of(found, face.eavesWidth()).withPitch(face.pitch());
            scheme(built, face)
                    .flatMap(s -> tried(
                            () -> Attempt.call(() -> found == null ? FaceLayout.on(face, s) : FaceLayout.on(shape, s))))
                    .ifPresent(layout -> {
                        faces.add(new Face(face, shape, found != null, layout));
                        problems.addAll(layout.problems());
                        problems.addAll(layout.courses().problems());
                        problems.addAll(layout.columns().problems());
                    });
        }
    }

    private Optional<LayoutScheme> scheme(Roof built, RoofFace face) {
        JobSettingOut s = job.settingOut();
        Optional<Figure<Length>> headlap = headlapAsked();
        if (headlap.isEmpty()) {
            return Optional.empty();
        }
        Optional<BattenDemand> battens =
                rules().isPresent() ? tried(() -> demands().battens()) : Optional.empty();
        Detail top = built.edges(EdgeKind.RIDGE).isEmpty() ? Detail.ABUTMENT : Detail.RIDGE;
        Optional<UnderlayDemand> underlay =
                rules().isPresent() ? tried(() -> demands().underlay(top)) : Optional.empty();
        boolean seenFromBack = face.name().equals(BACK); // what is left on the front is right on the back
        return tried(() -> Attempt.call(() -> {
            var scheme = LayoutScheme.builder()
                    .unit(job.covering())
                    .headlap(headlap.get())
                    .overhangIntoGutter(s.overhangIntoGutter())
                    .topDistance(s.topDistance())
                    .left(end(seenFromBack ? job.roof().right() : job.roof().left()))
                    .right(end(seenFromBack ? job.roof().left() : job.roof().right()))
                    .battens(battens)
                    .rafterCentres(s.rafterCentres())
                    .underlay(underlay)
                    .underlayRoll(new UnderlayRoll(
                            job.underlay().rollWidth(), job.underlay().rollLength()));
            if (!s.preference().isEmpty()) {
                List<Change> order = s.preference();
                scheme.preference(Preference.usual()
                        .changing(order.get(0), order.subList(1, order.size()).toArray(Change[]::new)));
            }
            return scheme.build();
        }));
    }

    /** What the owner asks; else what a row asks; else what the unit itself asks. */
    private Optional<Figure<Length>> headlapAsked() {
        if (job.headlap().isPresent()) {
            return job.headlap().map(Figure::given);
        }
        Optional<Sourced<Length>> asked =
                rules().flatMap(r -> r.find(Subjects.LEAST_HEADLAP, situation()).figure());
        if (asked.isPresent()) {
            return Optional.of(asked.get());
        }
        if (job.covering() instanceof SingleLapUnit unit) {
            return Optional.of(Figure.given(unit.leastHeadlap()));
        }
        problems.add(Problem.error(
                Job.FIELD_MISSING,
                "/headlap",
                "missing",
                "be given, since no document asked has a headlap for this unit at this pitch"));
        return Optional.empty();
    }

    private FaceEnd end(RoofEnd end) {
        JobSettingOut s = job.settingOut();
        if (end instanceof RoofEnd.Verge verge) {
            Length wanted = verge.overhang().length();
            return FaceEnd.verge(wanted, s.vergeOverhang().orElse(Range.closed(wanted, wanted)));
        }
        return FaceEnd.abutment(s.abutmentGap().orElse(Range.closed(Length.ZERO, Length.ZERO)));
    }

    private Demands demands() {
        return Demands.of(rules().orElseThrow(), situation());
    }

    boolean meetsAWall() {
        return meets(EdgeKind.TOP_ABUTMENT) || meets(EdgeKind.SIDE_ABUTMENT);
    }

    private boolean meets(EdgeKind kind) {
        return rules().isPresent()
                && roof().isPresent()
                && !roof().get().edges(kind).isEmpty();
    }

    /** The height of the covering's highest part over the rafters, square to the slope. */
    Length coveringOverRafters() {
        return job.settingOut().battenDepth().plus(job.covering().crownHeight());
    }

    private Optional<CoverFlashing> flashTop(FlashingDemand demand) {
        List<RoofEdge> edges = roof().map(r -> r.edges(EdgeKind.TOP_ABUTMENT)).orElse(List.of());
        if (edges.isEmpty()) {
            return Optional.empty();
        }
        RoofEdge edge = edges.get(0);
        CoveringLine line = CoveringLine.of(edge, Offset.squareToSlope(coveringOverRafters()));
        CoveringLine limited =
                job.roof().upperLimit().map(limit -> line.under(limit.height())).orElse(line);
        Optional<Length> joint = job.walls().flatMap(JobWalls::topJoint);
        return tried(() -> joint.isPresent()
                ? CoverFlashing.attemptAlong(
                        limited, BedJoints.of(joint.get(), job.walls().get().course()), demand)
                : CoverFlashing.attemptInChase(limited, demand));
    }

    private void flashSides(FlashingDemand demand) {
        for (RoofEdge edge : roof().map(r -> r.edges(EdgeKind.SIDE_ABUTMENT)).orElse(List.of())) {
            Optional<Length> joint = job.walls().flatMap(JobWalls::sideJoint);
            if (joint.isEmpty()) {
                problems.add(Problem.error(
                        Job.FIELD_MISSING,
                        "/walls/sideJoint",
                        "missing",
                        "be given, since the roof meets a wall at its side"));
                continue;
            }
            CoveringLine line = CoveringLine.of(edge, Offset.squareToSlope(coveringOverRafters()));
            tried(() -> StepFlashing.attemptAlong(
                            line, BedJoints.of(joint.get(), job.walls().get().course()), demand))
                    .ifPresent(sideFlashings::add);
        }
    }

    /** The lean-to worked backwards from what it must stay below, for the pitch that the documents ask of this unit. */
    private Optional<LeanToFit> fitLeanTo() {
        if (job.roof().upperLimit().isEmpty() || roof().isEmpty() || rules().isEmpty()) {
            return Optional.empty();
        }
        Length sill = job.roof().upperLimit().get().height();
        Figure<Length> limit = job.walls()
                .filter(walls -> walls.topJoint().isPresent())
                .<Figure<Length>>map(walls ->
                        BedJoints.of(walls.topJoint().get(), walls.course()).highestUnder(Figure.given(sill)))
                .orElse(Figure.given(sill));
        Optional<Sourced<Pitch>> least =
                rules().get().find(Subjects.LEAST_PITCH, situation()).figure();
        return rules().get()
                .find(Subjects.FLASHING_UPSTAND, situation().at(Detail.COVER_FLASHING))
                .figure()
                .flatMap(upstand -> tried(() -> LeanToFit.attempt(LeanToSite.builder()
                        .plateHeight(roof().get().faces().get(0).plateHeight())
                        .projection(job.roof().across())
                        .upperLimit(limit)
                        .upstand(upstand)
                        .buildUp(coveringOverRafters())
                        .addAllDemands(least.stream()
                                .map(pitch ->
                                        PitchDemand.of(job.covering().kind().toString(), pitch))
                                .toList())
                        .build())));
    }

    private Optional<EdgeVents> ventilate() {
        if (roof().isEmpty() || rules().isEmpty()) {
            return Optional.empty();
        }
        tried(() -> demands().lowVents())
                .ifPresent(demand -> roof().get()
                        .edges(EdgeKind.EAVES)
                        .forEach(eaves -> lowVents.add(EdgeVents.along(eaves, demand))));
        EdgeKind top = job.roof().kind() == JobRoof.Kind.LEAN_TO ? EdgeKind.TOP_ABUTMENT : EdgeKind.RIDGE;
        return tried(() -> demands().highVents())
                .flatMap(demand ->
                        roof().get().edges(top).stream().findFirst().map(edge -> EdgeVents.along(edge, demand)));
    }

    /** What is known of the roof, for every question to the documents. */
    Situation situation() {
        Situation s = Situation.of(job.covering().kind())
                .withExposure(job.exposure())
                .withRafterCentres(job.settingOut().rafterCentres())
                .withUnderlay(job.underlay().resistance(), job.underlay().support())
                .withInsulation(Insulation.AT_CEILING)
                .withRoofForm(job.roof().kind() == JobRoof.Kind.LEAN_TO ? RoofForm.LEAN_TO : RoofForm.DUO_PITCH);
        if (job.roof().kind() == JobRoof.Kind.DUO_PITCH) {
            s = s.withSpan(job.roof().across());
        }
        if (roof().isPresent()) {
            s = s.withPitch(roof().get().faces().get(0).pitch());
        }
        return s;
    }

    /** Holds a figure against every document that covers it; if none does, returns the first document's answer. */
    <V> List<Check<V>> checks(Subject<V> subject, Situation situation, Figure<V> got) {
        List<Check<V>> covered = new ArrayList<>();
        Optional<Check<V>> other = Optional.empty();
        for (Edition edition : rules().map(RuleSet::editions).orElse(List.of())) {
            if (edition.rows(subject).isEmpty()) {
                continue;
            }
            Check<V> check = edition.check(subject, situation, got);
            if (check.outcome() == Outcome.NOT_COVERED) {
                other = other.isPresent() ? other : Optional.of(check);
            } else {
                covered.add(check);
            }
        }
        return covered.isEmpty() ? other.map(List::of).orElse(List.of()) : covered;
    }

    /** Battens cut from stock with every joint on a rafter; the rafters run as the bays say, from the left end of the wall. */
    private Optional<StockCutting> planBattens() {
        if (rules == null || faces.isEmpty()) {
            return Optional.empty();
        }
        JobSettingOut s = job.settingOut();
        return demands().battens().value().flatMap(demand -> {
            var cutting = CuttingDemand.builder().kerf(SAW_CUT).addStockLengths(s.battenStock());
            for (Face face : faces) {
                RoofEnd left = face.face().name().equals(BACK)
                        ? job.roof().right()
                        : job.roof().left();
                Length beforeWall =
                        left instanceof RoofEnd.Verge verge ? verge.overhang().length() : Length.ZERO;
                Optional<BattenRuns> battens = face.layout().battens().value();
                if (battens.isEmpty()) {
                    return Optional.empty();
                }
                List<Length> runs = battens.get().runs();
                runs.stream()
                        .distinct()
                        .forEach(run -> cutting.addRuns(JointedRun.over(
                                face.face().name() + " " + Show.whole(run),
                                run,
                                beforeWall.plus(s.rafterWidth().dividedBy(2)),
                                s.rafterCentres(),
                                demand.leastPiece().value(),
                                demand.leastSupports().value(),
                                runs.stream().filter(run::equals).count())));
            }
            return tried(() -> StockCutting.attempt(cutting.build()));
        });
    }

    /** What the documents say of joints that follow one another, at the gauge of the first face. */
    List<String> battenJoints() {
        if (rules == null || faces.isEmpty()) {
            return List.of();
        }
        Optional<Length> gauge = faces.get(0)
                .layout()
                .courses()
                .value()
                .map(courses -> courses.gauge().left());
        return demands().battens().value().stream()
                .flatMap(demand -> demand.joints().stream())
                .filter(rule -> gauge.isEmpty() || rule.gauge().contains(gauge.get()))
                .map(rule -> rule + " (" + rule.most().origin() + ")")
                .toList();
    }

    /** The cutting plan of the battens, where their lengths are known. */
    Optional<StockCutting> battenPlan() {
        return Optional.ofNullable(battenPlan);
    }

    /** The ridge units, where the roof has a ridge and the job says what one covers. */
    Optional<UnitsAlong> ridgeUnits() {
        return Optional.ofNullable(ridgeUnits);
    }

    /** The spot vents at the top edge, where the job says what vent it is. */
    Optional<SpotVents> topVents() {
        return Optional.ofNullable(topVents);
    }

    /** What is to be bought. */
    Optional<Order> order() {
        return Optional.ofNullable(order);
    }

    /** How many nails hold one unit: two in a slate, one in a tile. */
    Figure<Integer> nailsToAUnit() {
        boolean slate =
                job.covering() instanceof DoubleLapUnit unit && unit.hanging().way() != Hanging.Way.NIBS;
        return Assumed.of(
                slate ? 2 : 1,
                slate ? "common practice: two nails to each slate" : "one mechanical fixing to each unit",
                "count the pattern that the document or the maker asks");
    }

    Job job() {
        return job;
    }

    List<Problem> problems() {
        return problems.stream().distinct().toList();
    }

    Optional<RuleSet> rules() {
        return Optional.ofNullable(rules);
    }

    Optional<Roof> roof() {
        return Optional.ofNullable(roof);
    }

    List<Face> faces() {
        return faces;
    }

    Optional<RafterBays> bays() {
        return Optional.ofNullable(bays);
    }

    Optional<CoverFlashing> topFlashing() {
        return Optional.ofNullable(topFlashing);
    }

    List<StepFlashing> sideFlashings() {
        return sideFlashings;
    }

    Optional<LeanToFit> leanToFit() {
        return Optional.ofNullable(leanToFit);
    }

    List<EdgeVents> lowVents() {
        return lowVents;
    }

    Optional<EdgeVents> highVents() {
        return Optional.ofNullable(highVents);
    }
}
