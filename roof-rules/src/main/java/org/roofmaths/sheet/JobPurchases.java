package org.roofmaths.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.PartUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.flashing.Flashing;
import org.roofmaths.order.Allowance;
import org.roofmaths.order.Amount;
import org.roofmaths.order.Cause;
import org.roofmaths.order.FixingPattern;
import org.roofmaths.order.Fixings;
import org.roofmaths.order.Nails;
import org.roofmaths.order.Order;
import org.roofmaths.order.OrderLine;
import org.roofmaths.order.OrderTerms;
import org.roofmaths.order.Stock;
import org.roofmaths.order.StockCutting;
import org.roofmaths.order.UnitsAlong;
import org.roofmaths.settingout.BattenRuns;
import org.roofmaths.settingout.PieceKind;
import org.roofmaths.settingout.Underlay;
import org.roofmaths.settingout.UnitCounts;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Ratio;
import org.roofmaths.ventilation.RafterBays;
import org.roofmaths.ventilation.SpotVents;
import org.roofmaths.working.Assumed;
import org.roofmaths.working.Figure;

/** What is to be bought for a job, from its layouts and junctions. */
final class JobPurchases {
    /** Nails at the joints of battens are left to the cutting plan of the battens. */
    private static final Figure<Integer> NO_JOINTS =
            Assumed.of(0, "joints of battens are not laid out", "add a nail for each joint");

    private final JobFigures figures;
    private final Job job;
    private final List<OrderLine> lines = new ArrayList<>();

    private JobPurchases(JobFigures figures) {
        this.figures = figures;
        this.job = figures.job();
    }

    static Optional<Order> order(JobFigures figures) {
        JobPurchases purchases = new JobPurchases(figures);
        purchases.units();
        purchases.ridge();
        purchases.battens();
        purchases.underlay();
        purchases.nails();
        purchases.flashings();
        purchases.vents();
        return purchases.lines.isEmpty() ? Optional.empty() : Optional.of(Order.ofLines(purchases.lines));
    }

    private void units() {
        CoveringUnit unit = job.covering();
        long whole = 0;
        long wide = 0;
        long half = 0;
        long leftVerge = 0;
        long rightVerge = 0;
        for (JobFigures.Face face : figures.faces()) {
            Optional<UnitCounts> counts = face.layout().counts().value();
            if (counts.isEmpty()) {
                continue;
            }
            whole += counts.get().wholeUnits();
            wide += counts.get().unitsAndAHalf();
            half += counts.get().count(PieceKind.HALF);
            leftVerge += counts.get().count(PieceKind.LEFT_VERGE);
            rightVerge += counts.get().count(PieceKind.RIGHT_VERGE);
        }
        unitLine(unit.name(), whole, unit.mass(), job.order().unitsInPack());
        if (unit instanceof SingleLapUnit single) {
            part("half unit", half, single.halfUnit());
            part("left-hand verge unit", leftVerge, single.leftVergeUnit());
            part("right-hand verge unit", rightVerge, single.rightVergeUnit());
        } else if (unit instanceof DoubleLapUnit twice) {
            part("unit-and-a-half", wide, twice.unitAndAHalf());
        }
    }

    private void part(String item, long count, Optional<PartUnit> part) {
        part.ifPresent(p -> unitLine(item, count, p.mass(), 1));
    }

    private void unitLine(String item, long count, Mass mass, int pack) {
        if (count > 0) {
            lines.add(OrderLine.of(
                    item,
                    Amount.pieces(count),
                    OrderTerms.builder()
                            .addAllowances(
                                    Allowance.breakage(job.order().unitBreakage()),
                                    Allowance.cutting(job.order().unitCutting()))
                            .stock(pack == 1 ? Stock.singly() : Stock.packs(pack))
                            .massOfOne(mass)
                            .build()));
        }
    }

    private void ridge() {
        figures.ridgeUnits()
                .ifPresent(units -> lines.add(OrderLine.of(
                        "ridge unit",
                        Amount.ofCount(units.working().at(UnitsAlong.COUNT)),
                        OrderTerms.builder().stock(Stock.singly()).build())));
    }

    private void battens() {
        Map<String, Figure<Amount>> faces = new LinkedHashMap<>();
        figures.faces()
                .forEach(face -> face.layout()
                        .battens()
                        .value()
                        .ifPresent(battens -> faces.put(
                                face.face().name(),
                                Amount.ofLength(battens.working().at(BattenRuns.TOGETHER)))));
        if (!faces.isEmpty()) {
            lines.add(OrderLine.of(
                    "batten " + Show.whole(job.settingOut().battenDepth()) + " x "
                            + Show.whole(job.settingOut().battenWidth()),
                    Amount.sum(faces),
                    OrderTerms.builder()
                            .addAllowances(battenCutting(Amount.sum(faces).value()))
                            .stock(Stock.lengths(job.settingOut().battenStock()))
                            .build()));
        }
    }

    /** What the cutting plan wastes, since joints lie on rafters; the buyer's share where that is more. */
    private Allowance battenCutting(Amount net) {
        Ratio share = job.order().battenCutting();
        Optional<Figure<Amount>> waste =
                figures.battenPlan().map(plan -> Amount.ofLength(plan.working().at(StockCutting.WASTE)));
        return waste.isPresent() && waste.get().value().doubleValue() > net.doubleValue() * share.toSi()
                ? Allowance.ofAmount(Cause.CUTTING, waste.get())
                : Allowance.cutting(share);
    }

    private void underlay() {
        Map<String, Figure<Amount>> faces = new LinkedHashMap<>();
        figures.faces()
                .forEach(face -> face.layout()
                        .underlay()
                        .ifPresent(underlay -> faces.put(
                                face.face().name(),
                                Amount.ofLength(underlay.working().at(Underlay.WITH_JOINS)))));
        if (!faces.isEmpty()) {
            lines.add(OrderLine.of(
                    "underlay " + Show.metres(job.underlay().rollWidth()) + " wide",
                    Amount.sum(faces),
                    OrderTerms.builder()
                            .stock(Stock.rolls(job.underlay().rollLength()))
                            .build()));
        }
    }

    private void nails() {
        battenNails()
                .ifPresent(nails -> lines.add(OrderLine.of(
                        "batten nail",
                        nails,
                        OrderTerms.builder().stock(Stock.singly()).build())));
        unitNails()
                .ifPresent(nails -> lines.add(OrderLine.of(
                        "unit nail",
                        nails,
                        OrderTerms.builder().stock(Stock.singly()).build())));
    }

    private Optional<Figure<Amount>> battenNails() {
        if (figures.bays().isEmpty()) {
            return Optional.empty();
        }
        Figure<Integer> rafters = figures.bays().get().working().at(RafterBays.RAFTERS);
        Map<String, Figure<Amount>> faces = new LinkedHashMap<>();
        figures.faces()
                .forEach(face -> face.layout()
                        .battens()
                        .value()
                        .ifPresent(battens -> faces.put(
                                face.face().name(),
                                Amount.ofCount(Nails.atCrossings(
                                        battens.working().at(BattenRuns.COUNT), rafters, NO_JOINTS)))));
        return faces.isEmpty() ? Optional.empty() : Optional.of(Amount.sum(faces));
    }

    /** One pattern for every unit: the job's, no wind design. */
    private Optional<Figure<Amount>> unitNails() {
        Map<String, Figure<Amount>> faces = new LinkedHashMap<>();
        int each = figures.nailsToAUnit().value();
        FixingPattern pattern =
                FixingPattern.builder().inEveryUnit(each).inPerimeterUnit(each).build();
        figures.faces()
                .forEach(face -> face.layout()
                        .counts()
                        .value()
                        .ifPresent(counts -> faces.put(
                                face.face().name(),
                                Amount.ofCount(Fixings.of(1, counts.total(), pattern)
                                        .working()
                                        .at(Fixings.FIXINGS)))));
        return faces.isEmpty() ? Optional.empty() : Optional.of(Amount.sum(faces));
    }

    private void flashings() {
        figures.topFlashing().ifPresent(this::flashing);
        figures.sideFlashings().forEach(this::flashing);
    }

    private void flashing(Flashing flashing) {
        lines.add(OrderLine.of(
                flashing.name() + ", " + flashing.sheet().name() + ", " + Show.whole(flashing.girth()) + " girth",
                Amount.ofLength(flashing.working().at(Flashing.METAL_LENGTH)),
                OrderTerms.builder().stock(Stock.asNeeded()).build()));
    }

    private void vents() {
        figures.topVents()
                .ifPresent(vents -> lines.add(OrderLine.of(
                        vents.vent().name(),
                        Amount.ofCount(vents.working().at(SpotVents.COUNT)),
                        OrderTerms.builder().stock(Stock.singly()).build())));
    }
}
