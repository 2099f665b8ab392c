package org.roofmaths.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.roofmaths.flashing.FlashingDemand;
import org.roofmaths.flashing.LeadLap;
import org.roofmaths.flashing.LeadSheet;
import org.roofmaths.flashing.SoakerDemand;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.settingout.BattenDemand;
import org.roofmaths.settingout.JointRule;
import org.roofmaths.settingout.LapDemand;
import org.roofmaths.settingout.UnderlayDemand;
import org.roofmaths.units.Area;
import org.roofmaths.units.AreaPerLength;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Ratio;
import org.roofmaths.ventilation.VentDemand;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Sourced;
import org.roofmaths.working.Worked;

/**
 * What documents ask of the parts of a roof, as the demands that setting out, flashings and ventilation work from; every figure in
 * them carries its row.
 *
 * <p>Each call returns the demand, or one finding for every figure that no row gives and why: the caller may then tell the missing
 * fact, ask another edition, or build the demand with figures of their own. Immutable and thread-safe.
 *
 * <pre>{@code
 * Demands demands = Demands.of(gb.inOrder("nhbc-standards/2024", "nhbc-standards/2021"), situation);
 * BattenDemand battens = demands.battens().orThrow();
 * }</pre>
 *
 * @since 0.1
 */
public final class Demands {
    private final RuleSet rules;
    private final Situation situation;

    private Demands(RuleSet rules, Situation situation) {
        this.rules = rules;
        this.situation = situation;
    }

    /**
     * Returns what is asked in a situation.
     *
     * @param rules the edition, or editions in order
     * @param situation what is known of the roof
     * @return the demands
     */
    public static Demands of(RuleSet rules, Situation situation) {
        return new Demands(Objects.requireNonNull(rules, "rules"), Objects.requireNonNull(situation, "situation"));
    }

    /** Returns what is asked of the headlap, by kind of unit, pitch and exposure. */
    public Attempt<LapDemand> lap() {
        Collector found = new Collector();
        @Nullable Sourced<Length> headlap = found.need(Subjects.LEAST_HEADLAP, situation);
        return found.attempt(() -> new LapDemand(there(headlap)));
    }

    /**
     * Returns what is asked of the battens, by kind of unit and rafter centres: section, least piece, supports, joints by gauge. The
     * joints are those of the first edition that has rows on them.
     */
    public Attempt<BattenDemand> battens() {
        Collector found = new Collector();
        @Nullable Sourced<BattenSize> size = found.need(Subjects.BATTEN_SIZE, situation);
        @Nullable Sourced<Length> piece = found.need(Subjects.LEAST_BATTEN_LENGTH, situation);
        @Nullable Sourced<Integer> supports = found.need(Subjects.LEAST_BATTEN_SUPPORTS, situation);
        return found.attempt(() -> new BattenDemand(
                Sourced.of(there(size).value().width(), there(size).citation()),
                Sourced.of(there(size).value().depth(), there(size).citation()),
                there(piece),
                there(supports),
                joints()));
    }

    private List<JointRule> joints() {
        return rules.editions().stream()
                .map(edition -> edition.rows(Subjects.BATTEN_JOINTS))
                .filter(rows -> !rows.isEmpty())
                .findFirst()
                .orElse(List.of())
                .stream()
                .flatMap(row -> row.figure().stream()
                        .map(limit -> new JointRule(
                                row.rangeOf(Facts.GAUGE),
                                Sourced.of(limit.value().joints(), limit.citation()),
                                Sourced.of(limit.value().battens(), limit.citation()))))
                .toList();
    }

    /**
     * Returns what is asked of the underlay: its laps by pitch and support, and how far it goes past the apex.
     *
     * @param top what the face ends at: {@link Detail#RIDGE}, {@link Detail#ABUTMENT} or {@link Detail#TOP_EDGE}
     * @return the demand
     */
    public Attempt<UnderlayDemand> underlay(Detail top) {
        Collector found = new Collector();
        @Nullable Sourced<Length> horizontal = found.need(Subjects.UNDERLAY_HORIZONTAL_LAP, situation);
        @Nullable Sourced<Length> vertical = found.need(Subjects.UNDERLAY_VERTICAL_LAP, situation);
        @Nullable Sourced<Length> past = found.need(Subjects.UNDERLAY_EDGE_LAP, situation.at(top));
        return found.attempt(() -> new UnderlayDemand(there(horizontal), there(vertical), there(past)));
    }

    /**
     * Returns the lead sheet that is asked at a place: the least code, with the thickness and the mass of that code.
     *
     * @param detail the place, such as {@link Detail#COVER_FLASHING}
     * @return the sheet
     */
    public Attempt<LeadSheet> leadSheet(Detail detail) {
        Collector found = new Collector();
        @Nullable LeadSheet sheet = leadSheet(detail, found);
        return found.attempt(() -> there(sheet));
    }

    private @Nullable LeadSheet leadSheet(Detail detail, Collector found) {
        @Nullable Sourced<Integer> code = found.need(Subjects.LEAST_LEAD_CODE, situation.at(detail));
        if (code == null) {
            return null;
        }
        Situation sheet = situation.withFact(Facts.LEAD_CODE, code.value());
        @Nullable Sourced<Length> thickness = found.need(Subjects.LEAD_THICKNESS, sheet);
        @Nullable Sourced<ArealMass> mass = found.need(Subjects.LEAD_MASS, sheet);
        return thickness == null || mass == null ? null : LeadSheet.of("lead code " + code.value(), thickness, mass);
    }

    /**
     * Returns what is asked of a lead flashing: sheet, upstand, cover, tuck, laps, longest piece, and, where rows give them, the water
     * line of a step flashing and the spacing of wedges. The upstand of a stepped flashing is that of a cover flashing; its own height
     * is the water line.
     *
     * @param detail the place, such as {@link Detail#COVER_FLASHING} or {@link Detail#STEP_AND_COVER}
     * @return the demand
     */
    public Attempt<FlashingDemand> flashing(Detail detail) {
        Collector found = new Collector();
        Situation here = situation.at(detail).withFact(Facts.METAL, Metal.LEAD);
        boolean isStepped = detail == Detail.STEP_AND_COVER || detail == Detail.STEP_FLASHING;
        @Nullable LeadSheet sheet = leadSheet(detail, found);
        @Nullable
        Sourced<Length> upstand =
                found.need(Subjects.FLASHING_UPSTAND, isStepped ? here.at(Detail.COVER_FLASHING) : here);
        @Nullable Sourced<Length> cover = found.need(Subjects.FLASHING_COVER, here);
        @Nullable Sourced<Length> tuck = found.need(Subjects.FLASHING_TUCK, here);
        @Nullable Sourced<Length> sideLap = found.need(Subjects.FLASHING_SIDE_LAP, here);
        @Nullable Sourced<Length> longestPiece = found.need(Subjects.LONGEST_PIECE, here);
        return found.attempt(() -> FlashingDemand.builder()
                .sheet(there(sheet))
                .upstand(there(upstand))
                .cover(there(cover))
                .tuck(there(tuck))
                .sideLap(there(sideLap))
                .longestPiece(there(longestPiece))
                .waterLine(rules.find(Subjects.WATER_LINE, here).figure())
                .wedgeSpacing(rules.find(Subjects.WEDGE_SPACING, here).figure())
                .build());
    }

    /** Returns what is asked of soakers beside a wall: sheet, legs and turn-over. */
    public Attempt<SoakerDemand> soakers() {
        Collector found = new Collector();
        Situation here = situation.at(Detail.SOAKER).withFact(Facts.METAL, Metal.LEAD);
        @Nullable LeadSheet sheet = leadSheet(Detail.SOAKER, found);
        @Nullable Sourced<Length> upstand = found.need(Subjects.SOAKER_UPSTAND, here);
        @Nullable Sourced<Length> under = found.need(Subjects.SOAKER_UNDER_COVER, here);
        @Nullable Sourced<Length> turn = found.need(Subjects.SOAKER_TURN_DOWN, here);
        return found.attempt(() -> SoakerDemand.builder()
                .sheet(there(sheet))
                .upTheWall(there(upstand))
                .underCovering(there(under))
                .turnOver(there(turn))
                .build());
    }

    /**
     * Returns how far lead laps up a slope, from the height and the least lap that rows ask.
     *
     * @param detail the place, such as {@link Detail#COVER_FLASHING} or {@link Detail#VALLEY}
     * @param truePitch the pitch of what the lead lies on: of the laid unit, or of the valley; not the rafter pitch
     * @return the lap and its working
     */
    public Attempt<Worked<Length>> slopeLap(Detail detail, Figure<Pitch> truePitch) {
        Collector found = new Collector();
        @Nullable Sourced<Length> height = found.need(Subjects.SLOPE_LAP_HEIGHT, situation.at(detail));
        @Nullable Sourced<Length> least = found.need(Subjects.LEAST_SLOPE_LAP, situation.at(detail));
        return found.attempt(() -> LeadLap.upTheSlope(truePitch, there(height), there(least)));
    }

    /** Returns what is asked of the openings at the eaves, each side: a continuous gap, an area for each metre, or none. */
    public Attempt<VentDemand> lowVents() {
        return vents(Subjects.LOW_VENT_GAP, Subjects.LOW_VENT_AREA);
    }

    /** Returns what is asked of the openings at the top: a continuous gap, an area for each metre, or none. */
    public Attempt<VentDemand> highVents() {
        return vents(Subjects.HIGH_VENT_GAP, Subjects.HIGH_VENT_AREA);
    }

    private Attempt<VentDemand> vents(Subject<Length> byGap, Subject<AreaPerLength> byArea) {
        Ruling<Length> gap = rules.find(byGap, situation);
        if (gap.figure().isPresent()) {
            Sourced<Length> figure = gap.orThrow();
            return Attempt.of(figure.value().isZero() ? none(gap) : VentDemand.gap(figure));
        }
        Ruling<AreaPerLength> area = rules.find(byArea, situation);
        if (area.figure().isPresent()) {
            Sourced<AreaPerLength> figure = area.orThrow();
            return Attempt.of(figure.value().isZero() ? none(area) : VentDemand.perMetre(figure));
        }
        // A document that speaks of areas for each metre, or of gaps, says why it gives none.
        return Attempt.failed(List.of((area.rows().isEmpty() ? gap : area).finding()));
    }

    private static VentDemand none(Ruling<?> ruling) {
        RuleRow<?> row = ruling.row().orElseThrow();
        String conditions = row.toConfirm().isEmpty() ? "" : ", if " + String.join(" and ", row.toConfirm());
        return VentDemand.noneAsked("row " + row.id() + " asks for none" + conditions);
    }

    /**
     * Returns what is asked of the openings as a share of an area, where a document goes that way.
     *
     * @param area the area that the document takes the share of, usually the ceiling on plan
     * @param portion the part of it at this edge
     * @return the demand
     */
    public Attempt<VentDemand> ventShare(Figure<Area> area, Figure<Ratio> portion) {
        Collector found = new Collector();
        @Nullable Sourced<Ratio> share = found.need(Subjects.VENT_AREA_SHARE, situation);
        return found.attempt(() -> VentDemand.shareOfArea(there(share), area, portion));
    }

    /** Looks figures up and keeps a finding for each that no row gives. */
    private final class Collector {
        private final List<Problem> findings = new ArrayList<>();

        private <V> @Nullable Sourced<V> need(Subject<V> subject, Situation here) {
            Ruling<V> ruling = rules.find(subject, here);
            if (ruling.figure().isEmpty()) {
                findings.add(ruling.finding());
            }
            return ruling.figure().orElse(null);
        }

        private <D> Attempt<D> attempt(Supplier<D> demand) {
            return findings.isEmpty() ? Attempt.call(demand) : Attempt.failed(findings);
        }
    }

    /** Every figure of a demand that is made has been found: a missing one is an error, and stops the demand before this. */
    private static <T> T there(@Nullable T figure) {
        return Objects.requireNonNull(figure, "figure");
    }

    /** Returns the editions asked and the situation. */
    @Override
    public String toString() {
        return "demands of " + rules + " for " + situation;
    }
}
