package org.roofmaths.roof;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;

/**
 * The outline of a roof as seen from above, and what the roof does along each side of it.
 *
 * <p>The outline is the edge of the roof: the fascia line along an eaves, the outer edge of the covering along a verge,
 * the face of the wall along an abutment. Courtyards are openings in it, with sides of their own. Each side has a name;
 * the face that rises from it takes that name.
 *
 * <pre>{@code
 * RoofPlan.builder()
 *         .corner("south", metres(0), metres(0))          // the side that starts here, and where
 *         .corner("east", metres(10), metres(0))
 *         .corner("north", metres(10), metres(6))
 *         .corner("west", metres(0), metres(6))
 *         .everySide(eaves(pitch("40°")))
 *         .side("east", gable())
 *         .build();
 * }</pre>
 *
 * <p>Corners are kept against the clock, so that the roof lies to the left of each side; a ring given clockwise is
 * turned round, which the roof notes. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class RoofPlan implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The corners do not make a ring. */
    public static final ProblemCode RING =
            ProblemCode.of("plan.ring", "Give each corner once, in order round the outline, without crossing sides.");

    /** A corner lies too far away. */
    public static final ProblemCode SIZE = ProblemCode.of("plan.size", "Check the coordinates and their unit.");

    /** A side of the plan is not named as it must be. */
    public static final ProblemCode SIDE_NAME =
            ProblemCode.of("plan.side-name", "Give each side a name of its own, and treat only sides that exist.");

    /** A side of the plan has no treatment. */
    public static final ProblemCode NO_TREATMENT =
            ProblemCode.of("plan.no-treatment", "Say what the roof does along each side: eaves, gable or abutment.");

    /** An eaves is not as it must be. */
    public static final ProblemCode EAVES = ProblemCode.of("plan.eaves", "Check overhang and height of the eaves.");

    /** No side of the plan is an eaves, so no face can rise and no water can leave. */
    public static final ProblemCode NO_EAVES =
            ProblemCode.of("plan.no-eaves", "Make at least one side of the outline an eaves.");

    /** A ring was given clockwise. */
    public static final ProblemCode CLOCKWISE =
            ProblemCode.of("plan.clockwise", "Nothing to do; give corners against the clock to keep their order.");

    private final String kind;
    private final List<List<PlanSide>> rings;
    private final Map<String, FaceFigures> figures;
    private final List<Problem> notices;

    RoofPlan(String kind, List<List<PlanSide>> rings, Map<String, FaceFigures> figures, List<Problem> notices) {
        this.kind = kind;
        this.rings = rings.stream().map(List::copyOf).toList();
        this.figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
        this.notices = List.copyOf(notices);
    }

    /** Starts a plan. */
    public static Builder builder() {
        return new Builder();
    }

    /** Returns the sides of the outline, against the clock. */
    public List<PlanSide> outline() {
        return rings.get(0);
    }

    /**
     * Returns the sides of each courtyard, clockwise, so that the roof lies to their left; empty if there is no
     * courtyard.
     */
    public List<List<PlanSide>> courtyards() {
        return rings.subList(1, rings.size());
    }

    /** Returns the sides of the outline and then those of each courtyard. */
    public List<PlanSide> sides() {
        return rings.stream().flatMap(List::stream).toList();
    }

    /**
     * Returns the side of a name.
     *
     * @param name the name of the side
     * @return the side
     * @throws ProblemsException if no side has that name
     */
    public PlanSide side(String name) {
        Objects.requireNonNull(name, "name");
        List<PlanSide> all = sides();
        return all.stream()
                .filter(side -> side.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new ProblemsException(List.of(Problem.error(
                        SIDE_NAME,
                        "side",
                        "\"" + name + "\"",
                        "be one of "
                                + String.join(
                                        ", ", all.stream().map(PlanSide::name).toList())))));
    }

    /** What sort of roof this is, in words. */
    String kind() {
        return kind;
    }

    /** The numbers that a ready-made plan knows by name, by the name of the face; they keep their origin. */
    Map<String, FaceFigures> figures() {
        return figures;
    }

    List<List<PlanSide>> rings() {
        return rings;
    }

    List<Problem> notices() {
        return notices;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RoofPlan p && kind.equals(p.kind) && rings.equals(p.rings);
    }

    @Override
    public int hashCode() {
        return rings.hashCode();
    }

    /** Returns for example {@code plan of 4 sides} or {@code plan of 8 sides and a courtyard of 4 sides}. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("plan of " + outline().size() + " sides");
        for (List<PlanSide> courtyard : courtyards()) {
            text.append(" and a courtyard of ").append(courtyard.size()).append(" sides");
        }
        return text.toString();
    }

    /**
     * Collects the corners of a plan and the treatment of its sides. For one thread.
     *
     * @since 0.1
     */
    public static final class Builder {
        private final List<List<Corner>> rings = new ArrayList<>();
        private final Map<String, EdgeTreatment> bySide = new LinkedHashMap<>();
        private @Nullable EdgeTreatment everySide;
        private int count;

        private Builder() {
            rings.add(new ArrayList<>());
        }

        /**
         * Adds a corner and names the side that starts there.
         *
         * @param side the name of the side from this corner to the next
         * @param x distance to the right
         * @param y distance away from the reader
         * @return this
         */
        public Builder corner(String side, Length x, Length y) {
            count++;
            rings.get(rings.size() - 1).add(new Corner(Objects.requireNonNull(side, "side"), PlanPoint.of(x, y)));
            return this;
        }

        /**
         * Adds a corner; the side that starts there is named by its number, counted from 1 over all corners added.
         *
         * @param x distance to the right
         * @param y distance away from the reader
         * @return this
         */
        public Builder corner(Length x, Length y) {
            return corner(Integer.toString(count + 1), x, y);
        }

        /**
         * Starts a courtyard: the corners added from here on are its own.
         *
         * @return this
         */
        public Builder courtyard() {
            rings.add(new ArrayList<>());
            return this;
        }

        /**
         * Says what the roof does along every side for which nothing else is said.
         *
         * @param treatment the treatment
         * @return this
         */
        public Builder everySide(EdgeTreatment treatment) {
            everySide = Objects.requireNonNull(treatment, "treatment");
            return this;
        }

        /**
         * Says what the roof does along one side.
         *
         * @param name the name of the side
         * @param treatment the treatment
         * @return this
         */
        public Builder side(String name, EdgeTreatment treatment) {
            bySide.put(Objects.requireNonNull(name, "name"), Objects.requireNonNull(treatment, "treatment"));
            return this;
        }

        /**
         * Returns the plan.
         *
         * @return the plan
         * @throws ProblemsException with everything that is wrong with it
         */
        public RoofPlan build() {
            return attempt().orThrow();
        }

        /** Returns the plan, or everything that is wrong with it. */
        public Attempt<RoofPlan> attempt() {
            Problems problems = Problems.none();
            checkNames(problems);
            checkTreatments(problems);
            for (int i = 0; i < rings.size(); i++) {
                checkCorners(i, problems);
            }
            if (!problems.hasErrors()) {
                checkCrossings(problems);
            }
            if (!problems.hasErrors() && rings.size() > 1) {
                checkCourtyards(problems);
            }
            return problems.attempt(() -> made(problems));
        }

        private List<Corner> corners() {
            return rings.stream().flatMap(List::stream).toList();
        }

        private Rings geometry(List<List<Corner>> of) {
            return Rings.ofPlan(of.stream()
                    .map(ring -> ring.stream().map(Corner::at).toList())
                    .toList());
        }

        private void checkNames(Problems problems) {
            Map<String, Integer> uses = new LinkedHashMap<>();
            corners().forEach(corner -> uses.merge(corner.side, 1, Integer::sum));
            uses.forEach((name, times) -> {
                problems.require(
                        !name.isBlank(), SIDE_NAME, "name of a side", "\"" + name + "\"", "have a letter or a digit");
                problems.require(
                        times == 1, SIDE_NAME, "name \"" + name + "\"", "the name of " + times, "name one side");
            });
            for (String name : bySide.keySet()) {
                problems.require(
                        uses.containsKey(name),
                        SIDE_NAME,
                        "side to treat",
                        "\"" + name + "\"",
                        "be one of " + String.join(", ", uses.keySet()));
            }
        }

        private void checkTreatments(Problems problems) {
            boolean anyEaves = false;
            for (Corner corner : corners()) {
                EdgeTreatment treatment = bySide.getOrDefault(corner.side, everySide);
                String where = "side \"" + corner.side + "\"";
                if (treatment == null) {
                    problems.add(Problem.error(NO_TREATMENT, where, "not said", "be an eaves, a gable or an abutment"));
                } else if (treatment instanceof EdgeTreatment.Eaves eaves) {
                    anyEaves = true;
                    Sizes.requireNoLessThanZero(
                            problems,
                            EAVES,
                            "overhang of " + where,
                            eaves.overhang().value());
                    Sizes.requireWithin(
                            problems,
                            EAVES,
                            "plate height of " + where,
                            eaves.plateHeight().value());
                }
            }
            problems.require(anyEaves, NO_EAVES, "plan", "without one", "have an eaves");
        }

        private void checkCorners(int number, Problems problems) {
            List<Corner> ring = rings.get(number);
            if (ring.size() < 3) {
                String name = number == 0 ? "outline" : "courtyard " + number;
                problems.add(Problem.error(RING, name, ring.size() + " corners", "have at least 3 corners"));
                return;
            }
            Problems found = Problems.none();
            ring.forEach(corner -> Sizes.requireInReach(found, SIZE, corner.words(), corner.at));
            if (!found.hasErrors()) {
                requireExtent(ring, found);
            }
            if (!found.hasErrors()) {
                Rings geometry = geometry(List.of(ring));
                geometry.repeatedCorners()
                        .forEach(i -> found.add(Problem.error(
                                RING, ring.get(i).words(), ring.get(i).at, "differ from the corner before it")));
                if (!found.hasErrors()) {
                    geometry.spikes()
                            .forEach(i -> found.add(Problem.error(
                                    RING,
                                    ring.get(i).words(),
                                    ring.get(i).at,
                                    "not turn straight back along the side before it")));
                }
            }
            problems.addAll(found.list());
        }

        private static void requireExtent(List<Corner> ring, Problems problems) {
            for (Function<PlanPoint, Length> axis : List.<Function<PlanPoint, Length>>of(PlanPoint::x, PlanPoint::y)) {
                List<Length> places = ring.stream()
                        .map(corner -> axis.apply(corner.at))
                        .sorted()
                        .toList();
                Length extent = places.get(places.size() - 1).minus(places.get(0));
                problems.require(
                        !extent.isLongerThan(Sizes.LONGEST),
                        SIZE,
                        "outline",
                        extent,
                        "be at most " + Sizes.LONGEST + " from end to end");
            }
        }

        private void checkCrossings(Problems problems) {
            List<Corner> all = corners();
            Rings geometry = geometry(rings);
            for (int[] pair : geometry.crossings()) {
                problems.add(Problem.error(
                        RING,
                        "side \"" + all.get(pair[1]).side + "\"",
                        "from " + all.get(pair[1]).at + " to " + all.get(geometry.next(pair[1])).at,
                        "keep clear of side \"" + all.get(pair[0]).side + "\""));
            }
        }

        private void checkCourtyards(Problems problems) {
            Rings geometry = geometry(rings);
            for (int i = 1; i < rings.size(); i++) {
                PlanPoint corner = rings.get(i).get(0).at;
                String where = "courtyard " + i;
                problems.require(geometry.isInside(0, corner), RING, where, "at " + corner, "lie inside the outline");
                for (int j = 1; j < rings.size(); j++) {
                    problems.require(
                            i == j || !geometry.isInside(j, corner),
                            RING,
                            where,
                            "at " + corner,
                            "not lie inside courtyard " + j);
                }
            }
        }

        private RoofPlan made(Problems problems) {
            Rings geometry = geometry(rings);
            List<List<PlanSide>> made = new ArrayList<>();
            for (int i = 0; i < rings.size(); i++) {
                boolean inOrder = geometry.areaInSquareMetres(i) > 0 == (i == 0);
                if (i == 0 && !inOrder) {
                    problems.add(Problem.notice(
                            CLOCKWISE,
                            "outline",
                            rings.get(0).size() + " corners",
                            "the corners of the outline were given clockwise; they are kept against the clock"));
                }
                made.add(sides(rings.get(i), inOrder));
            }
            return new RoofPlan("roof", made, Map.of(), problems.list());
        }

        private List<PlanSide> sides(List<Corner> ring, boolean inOrder) {
            int n = ring.size();
            List<PlanSide> sides = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                int start = inOrder ? i : n - 1 - i;
                Corner a = ring.get(start);
                Corner b = ring.get((start + 1) % n);
                EdgeTreatment treatment = Objects.requireNonNull(bySide.getOrDefault(a.side, everySide));
                sides.add(
                        inOrder
                                ? new PlanSide(a.side, a.at, b.at, treatment)
                                : new PlanSide(a.side, b.at, a.at, treatment));
            }
            return sides;
        }

        private record Corner(String side, PlanPoint at) {
            String words() {
                return "corner where side \"" + side + "\" starts";
            }
        }
    }
}
