package org.roofmaths.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.roofmaths.covering.CoveringUnit;
import org.roofmaths.covering.DoubleLapUnit;
import org.roofmaths.covering.Hanging;
import org.roofmaths.covering.Lap;
import org.roofmaths.covering.PartUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problems;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.RoofEnd;
import org.roofmaths.roof.Slope;
import org.roofmaths.rules.Exposure;
import org.roofmaths.rules.Rules;
import org.roofmaths.rules.UnderlayClass;
import org.roofmaths.rules.UnderlaySupport;
import org.roofmaths.settingout.Change;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;
import org.roofmaths.units.Offset;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Range;
import org.roofmaths.units.Ratio;
import org.roofmaths.units.Tolerance;

/** Reads a job from its form and writes it back; what each field means stands in docs/job-file.md. */
final class JobForm {
    private static final String FORMAT = "roof-maths job";
    private static final int VERSION = 1;
    private static final String LENGTH = "a length with its unit, such as \"5.2 m\" or \"150 mm\"";
    private static final String PITCH = "a pitch with its sign or words, such as \"35°\" or \"7 in 12\"";
    private static final String OFFSET =
            "a length with its direction, such as \"50 mm level\" or \"50 mm on the slope\"";
    private static final String MASS = "a mass with its unit, such as \"4.4 kg\"";
    private static final String PERCENT = "a share, such as \"5 %\"";
    private static final String AREA = "an area with its unit, such as \"5000 mm²\"";
    private static final String RANGE = "a range with its ends, such as \"[38 mm..50 mm]\"";
    private static final String TEXT = "a text";
    private static final String END = "an object whose kind is verge or abutment";

    private JobForm() {}

    static Attempt<Job> read(Map<String, ?> tree) {
        Problems problems = Problems.none();
        Fields form = Fields.ofForm(tree, problems);
        form.requiredWord("format", Map.of(FORMAT, FORMAT));
        form.requiredNumber("version", VERSION);
        Optional<String> name = form.required("name", TEXT, JobForm::text);
        Optional<String> note = form.optional("note", TEXT, Function.identity());

        Optional<Fields> rules = form.requiredObject("rules", "an object with jurisdiction and editions");
        Optional<String> jurisdiction = rules.flatMap(f -> f.required("jurisdiction", TEXT, JobForm::jurisdiction));
        List<String> editions = rules.map(f -> f.texts("editions", edition -> edition(jurisdiction, edition)))
                .orElse(List.of());
        rules.ifPresent(f -> {
            if (!f.has("editions")) {
                f.missing("editions", "a list of documents with their editions, such as \"nhbc-standards/2024\"");
            }
            f.refuseOthers();
        });

        Optional<Exposure> exposure = form.requiredWord("exposure", words(Exposure.values()));
        Optional<JobRoof> roof = form.requiredObject("roof", "an object that says what roof it is")
                .flatMap(JobForm::readRoof);
        Optional<CoveringUnit> covering = form.requiredObject(
                        "covering", "an object that says what tile or slate it is")
                .flatMap(JobForm::readCovering);
        Optional<Length> headlap = form.optional("headlap", LENGTH, Length::parse);
        Optional<JobSettingOut> settingOut = form.requiredObject(
                        "settingOut", "an object with the sizes decided for battens and columns")
                .flatMap(JobForm::readSettingOut);
        Optional<JobUnderlay> underlay = form.requiredObject("underlay", "an object that says what underlay it is")
                .flatMap(JobForm::readUnderlay);
        Optional<JobWalls> walls = form.object("walls").flatMap(JobForm::readWalls);
        Optional<Length> ridgeCover = form.optional("ridgeCover", LENGTH, JobForm::positive);
        Optional<Area> topVent = form.optional("topVent", AREA, Area::parse);
        Optional<JobOrder> order = form.requiredObject("order", "an object that says how the job is bought")
                .flatMap(JobForm::readOrder);
        form.refuseOthers();

        return problems.attempt(() -> Job.builder()
                .name(name.orElseThrow())
                .jurisdiction(jurisdiction.orElseThrow())
                .exposure(exposure.orElseThrow())
                .roof(roof.orElseThrow())
                .covering(covering.orElseThrow())
                .settingOut(settingOut.orElseThrow())
                .underlay(underlay.orElseThrow())
                .order(order.orElseThrow())
                .addAllEditions(editions)
                .note(note.orElse(""))
                .headlap(headlap)
                .walls(walls)
                .ridgeCover(ridgeCover)
                .topVent(topVent)
                .build());
    }

    private static Optional<JobRoof> readRoof(Fields f) {
        Optional<JobRoof.Kind> kind = f.requiredWord("kind", words(JobRoof.Kind.values()));
        Optional<Length> along = kind.flatMap(k -> f.required(k.alongField(), LENGTH, JobForm::positive));
        Optional<Length> across = kind.flatMap(k -> f.required(k.acrossField(), LENGTH, JobForm::positive));
        Optional<Slope> slope = f.requiredObject(
                        "slope", "an object with a pitch, or with plateHeight and apexHeight, or with both")
                .flatMap(JobForm::readSlope);
        Optional<Offset> overhang = f.required("eavesOverhang", OFFSET, Offset::parse);
        Optional<RoofEnd> left = f.requiredObject("left", END).flatMap(JobForm::readEnd);
        Optional<RoofEnd> right = f.requiredObject("right", END).flatMap(JobForm::readEnd);
        Map<String, Ends<Length>> asFound = new LinkedHashMap<>();
        f.object("asFound")
                .ifPresent(faces -> faces.names()
                        .forEach(face -> faces.object(face).ifPresent(lengths -> {
                            Optional<Length> atLeft = lengths.required("left", LENGTH, JobForm::positive);
                            Optional<Length> atRight = lengths.required("right", LENGTH, JobForm::positive);
                            lengths.refuseOthers();
                            atLeft.ifPresent(l -> atRight.ifPresent(r -> asFound.put(face, Ends.of(l, r))));
                        })));
        Optional<JobRoof.UpperLimit> limit = f.object("upperLimit").flatMap(inner -> {
            Optional<Length> height = inner.required("height", LENGTH, Length::parse);
            Optional<String> what = inner.required("what", TEXT, JobForm::text);
            inner.refuseOthers();
            return height.flatMap(h -> what.map(w -> new JobRoof.UpperLimit(h, w)));
        });
        if (kind.isPresent()) {
            f.refuseOthers(); // without a kind nobody knows which fields there may be
        }
        if (kind.isEmpty()
                || along.isEmpty()
                || across.isEmpty()
                || slope.isEmpty()
                || overhang.isEmpty()
                || left.isEmpty()
                || right.isEmpty()) {
            return Optional.empty();
        }
        return f.make(() -> {
            JobRoof roof = JobRoof.builder()
                    .kind(kind.get())
                    .along(along.get())
                    .across(across.get())
                    .slope(slope.get())
                    .eavesOverhang(overhang.get())
                    .left(left.get())
                    .right(right.get())
                    .putAllAsFound(asFound)
                    .upperLimit(limit)
                    .build();
            JobFigures.buildRoof(roof).orThrow(); // a roof that cannot be is refused here, where its fields are known
            return roof;
        });
    }

    private static Optional<Slope> readSlope(Fields f) {
        Optional<Pitch> pitch = f.optional("pitch", PITCH, Pitch::parse);
        Optional<Length> plate = f.optional("plateHeight", LENGTH, Length::parse);
        Optional<Length> apex = f.optional("apexHeight", LENGTH, Length::parse);
        Optional<Length> agree = f.optional("agreeWithin", LENGTH, JobForm::positive);
        f.refuseOthers();
        if (f.has("apexHeight")) {
            if (!f.has("plateHeight")) {
                return f.missing("plateHeight", "there if apexHeight is: " + LENGTH);
            }
            if (!f.has("pitch")) {
                return plate.flatMap(p -> apex.map(a -> Slope.heights(p, a)));
            }
            if (!f.has("agreeWithin")) {
                return f.missing("agreeWithin", "there if both pitch and heights are: " + LENGTH);
            }
            return pitch.flatMap(t ->
                    plate.flatMap(p -> apex.flatMap(a -> agree.map(w -> Slope.both(t, p, a, Tolerance.of(w))))));
        }
        if (!f.has("pitch")) {
            return f.missing("pitch", PITCH + ", or else plateHeight and apexHeight must be there");
        }
        return f.has("plateHeight")
                ? pitch.flatMap(t -> plate.map(p -> Slope.of(t).fromPlateAt(p)))
                : pitch.map(Slope::of);
    }

    private static Optional<RoofEnd> readEnd(Fields f) {
        Optional<String> kind = f.requiredWord("kind", Map.of("verge", "verge", "abutment", "abutment"));
        Optional<RoofEnd> end = kind.flatMap(k -> k.equals("verge")
                ? f.required("overhang", OFFSET, Offset::parse).map(RoofEnd::verge)
                : Optional.of(RoofEnd.abutment()));
        if (kind.isPresent()) {
            f.refuseOthers();
        }
        return end;
    }

    private static Optional<CoveringUnit> readCovering(Fields f) {
        Optional<UnitKind> kind = f.requiredWord("kind", words(UnitKind.values()));
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        return kind.get().lap() == Lap.SINGLE ? readSingleLap(f, kind.get()) : readDoubleLap(f, kind.get());
    }

    private static Optional<CoveringUnit> readSingleLap(Fields f, UnitKind kind) {
        Optional<String> name = f.required("name", TEXT, JobForm::text);
        Optional<Length> length = f.required("length", LENGTH, Length::parse);
        Optional<Length> hangingLength = f.required("hangingLength", LENGTH, Length::parse);
        Optional<Length> overallWidth = f.required("overallWidth", LENGTH, Length::parse);
        Optional<Length> coverWidth = f.required("coverWidth", LENGTH, Length::parse);
        Optional<Range<Length>> coverRange = f.optional("coverRange", RANGE, JobForm::range);
        Optional<Length> leastHeadlap = f.required("leastHeadlap", LENGTH, Length::parse);
        Optional<Length> leastGauge = f.optional("leastGauge", LENGTH, Length::parse);
        Optional<Length> greatestGauge = f.optional("greatestGauge", LENGTH, Length::parse);
        Optional<Length> thickness = f.required("thickness", LENGTH, Length::parse);
        Optional<Length> crownHeight = f.optional("crownHeight", LENGTH, Length::parse);
        Optional<Mass> mass = f.required("mass", MASS, Mass::parse);
        Optional<PartUnit> halfUnit = readPart(f, "halfUnit");
        Optional<PartUnit> leftVerge = readPart(f, "leftVergeUnit");
        Optional<PartUnit> rightVerge = readPart(f, "rightVergeUnit");
        f.refuseOthers();
        if (name.isEmpty()
                || length.isEmpty()
                || hangingLength.isEmpty()
                || overallWidth.isEmpty()
                || coverWidth.isEmpty()
                || leastHeadlap.isEmpty()
                || thickness.isEmpty()
                || mass.isEmpty()) {
            return Optional.empty();
        }
        return f.make(() -> {
            var unit = SingleLapUnit.builder()
                    .name(name.get())
                    .kind(kind)
                    .length(length.get())
                    .hangingLength(hangingLength.get())
                    .overallWidth(overallWidth.get())
                    .coverWidth(coverWidth.get())
                    .leastHeadlap(leastHeadlap.get())
                    .thickness(thickness.get())
                    .mass(mass.get())
                    .leastGauge(leastGauge)
                    .greatestGauge(greatestGauge)
                    .halfUnit(halfUnit)
                    .leftVergeUnit(leftVerge)
                    .rightVergeUnit(rightVerge);
            coverRange.ifPresent(unit::coverRange);
            crownHeight.ifPresent(unit::crownHeight);
            return unit.build();
        });
    }

    private static Optional<CoveringUnit> readDoubleLap(Fields f, UnitKind kind) {
        Optional<String> name = f.required("name", TEXT, JobForm::text);
        Optional<Length> length = f.required("length", LENGTH, Length::parse);
        Optional<Length> width = f.required("width", LENGTH, Length::parse);
        Optional<Length> joint = f.required("joint", LENGTH, Length::parse);
        Optional<Range<Length>> jointRange = f.optional("jointRange", RANGE, JobForm::range);
        Optional<Length> thickness = f.required("thickness", LENGTH, Length::parse);
        Optional<Mass> mass = f.required("mass", MASS, Mass::parse);
        Optional<Hanging> hanging = f.requiredWord("hanging", words(Hanging.Way.values()))
                .flatMap(way -> switch (way) {
                    case NIBS ->
                        f.required("hangingLength", LENGTH, Length::parse).map(Hanging::onNibs);
                    case CENTRE_NAILED ->
                        f.required("holeClearance", LENGTH, Length::parse).map(Hanging::centreNailed);
                    case HEAD_NAILED ->
                        f.required("holeToHead", LENGTH, Length::parse).map(Hanging::headNailed);
                });
        Optional<PartUnit> unitAndAHalf = readPart(f, "unitAndAHalf");
        Optional<Length> leastGauge = f.optional("leastGauge", LENGTH, Length::parse);
        Optional<Length> greatestGauge = f.optional("greatestGauge", LENGTH, Length::parse);
        f.refuseOthers();
        if (name.isEmpty()
                || length.isEmpty()
                || width.isEmpty()
                || joint.isEmpty()
                || thickness.isEmpty()
                || mass.isEmpty()
                || hanging.isEmpty()) {
            return Optional.empty();
        }
        return f.make(() -> {
            var unit = DoubleLapUnit.builder()
                    .name(name.get())
                    .kind(kind)
                    .length(length.get())
                    .width(width.get())
                    .joint(joint.get())
                    .thickness(thickness.get())
                    .mass(mass.get())
                    .hanging(hanging.get())
                    .unitAndAHalf(unitAndAHalf)
                    .leastGauge(leastGauge)
                    .greatestGauge(greatestGauge);
            jointRange.ifPresent(unit::jointRange);
            return unit.build();
        });
    }

    private static Optional<PartUnit> readPart(Fields f, String field) {
        return f.object(field).flatMap(part -> {
            Optional<Length> width = part.required("width", LENGTH, JobForm::positive);
            Optional<Mass> mass = part.required("mass", MASS, Mass::parse);
            part.refuseOthers();
            return width.flatMap(w -> mass.map(m -> new PartUnit(w, m)));
        });
    }

    private static Optional<JobSettingOut> readSettingOut(Fields f) {
        Optional<Offset> overhang = f.required("overhangIntoGutter", OFFSET, Offset::parse);
        Optional<Length> topDistance = f.required("topDistance", LENGTH, Length::parse);
        Optional<Length> centres = f.required("rafterCentres", LENGTH, JobForm::positive);
        Optional<Length> rafterWidth = f.required("rafterWidth", LENGTH, JobForm::positive);
        Optional<Length> rafterDepth = f.required("rafterDepth", LENGTH, JobForm::positive);
        Optional<Length> battenDepth = f.required("battenDepth", LENGTH, JobForm::positive);
        Optional<Length> battenWidth = f.required("battenWidth", LENGTH, JobForm::positive);
        Optional<Length> stock = f.required("battenStock", LENGTH, JobForm::positive);
        Optional<Range<Length>> verge = f.optional("vergeOverhang", RANGE, JobForm::range);
        Optional<Range<Length>> gap = f.optional("abutmentGap", RANGE, JobForm::range);
        List<Change> preference = f.words("preference", words(Change.values()));
        f.refuseOthers();
        if (overhang.isEmpty()
                || topDistance.isEmpty()
                || centres.isEmpty()
                || rafterWidth.isEmpty()
                || rafterDepth.isEmpty()
                || battenDepth.isEmpty()
                || battenWidth.isEmpty()
                || stock.isEmpty()) {
            return Optional.empty();
        }
        return f.make(() -> JobSettingOut.builder()
                .overhangIntoGutter(overhang.get())
                .topDistance(topDistance.get())
                .rafterCentres(centres.get())
                .rafterWidth(rafterWidth.get())
                .rafterDepth(rafterDepth.get())
                .battenDepth(battenDepth.get())
                .battenWidth(battenWidth.get())
                .battenStock(stock.get())
                .vergeOverhang(verge)
                .abutmentGap(gap)
                .addAllPreference(preference)
                .build());
    }

    private static Optional<JobUnderlay> readUnderlay(Fields f) {
        Optional<UnderlayClass> resistance = f.requiredWord("resistance", words(UnderlayClass.values()));
        Optional<UnderlaySupport> support = f.requiredWord("support", words(UnderlaySupport.values()));
        Optional<Length> width = f.required("rollWidth", LENGTH, JobForm::positive);
        Optional<Length> length = f.required("rollLength", LENGTH, JobForm::positive);
        f.refuseOthers();
        if (resistance.isEmpty() || support.isEmpty() || width.isEmpty() || length.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(JobUnderlay.builder()
                .resistance(resistance.get())
                .support(support.get())
                .rollWidth(width.get())
                .rollLength(length.get())
                .build());
    }

    private static Optional<JobWalls> readWalls(Fields f) {
        Optional<Length> course = f.required("course", LENGTH, JobForm::positive);
        Optional<Length> top = f.optional("topJoint", LENGTH, Length::parse);
        Optional<Length> side = f.optional("sideJoint", LENGTH, Length::parse);
        f.refuseOthers();
        return course.map(
                c -> JobWalls.builder().course(c).topJoint(top).sideJoint(side).build());
    }

    private static Optional<JobOrder> readOrder(Fields f) {
        Optional<Integer> pack = f.requiredCount("unitsInPack", 1);
        Optional<Ratio> breakage = f.required("unitBreakage", PERCENT, JobForm::share);
        Optional<Ratio> cutting = f.required("unitCutting", PERCENT, JobForm::share);
        Optional<Ratio> battens = f.required("battenCutting", PERCENT, JobForm::share);
        f.refuseOthers();
        if (pack.isEmpty() || breakage.isEmpty() || cutting.isEmpty() || battens.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(JobOrder.builder()
                .unitsInPack(pack.get())
                .unitBreakage(breakage.get())
                .unitCutting(cutting.get())
                .battenCutting(battens.get())
                .build());
    }

    private static String text(String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("it is blank");
        }
        return text;
    }

    private static String jurisdiction(String text) {
        return Rules.of(text).jurisdiction();
    }

    /** Refuses an edition that the jurisdiction does not have; without a jurisdiction nobody can know. */
    private static void edition(Optional<String> jurisdiction, String text) {
        jurisdiction.ifPresent(place -> Rules.of(place).inOrder(text));
    }

    private static Ratio share(String text) {
        Ratio share = Ratio.parse(text);
        if (share.toSi() < 0 || share.toSi() > 1) {
            throw new IllegalArgumentException("it must be from 0 % to 100 %");
        }
        return share;
    }

    private static Length positive(String text) {
        Length length = Length.parse(text);
        if (!length.isPositive()) {
            throw new IllegalArgumentException("it must be above 0 mm");
        }
        return length;
    }

    private static Range<Length> range(String text) {
        return Range.parse(text, Length::parse);
    }

    /** The words of an enum as printed, in its order. */
    private static <E> Map<String, E> words(E[] values) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E value : values) {
            words.put(value.toString(), value);
        }
        return words;
    }

    static Map<String, Object> write(Job job) {
        Map<String, Object> form = new LinkedHashMap<>();
        form.put("format", FORMAT);
        form.put("version", VERSION);
        form.put("name", job.name());
        if (!job.note().isEmpty()) {
            form.put("note", job.note());
        }
        form.put("rules", map("jurisdiction", job.jurisdiction(), "editions", job.editions()));
        form.put("exposure", job.exposure().toString());
        form.put("roof", roof(job.roof()));
        form.put("covering", covering(job.covering()));
        putText(form, "headlap", job.headlap());
        form.put("settingOut", settingOut(job.settingOut()));
        JobUnderlay underlay = job.underlay();
        form.put(
                "underlay",
                map(
                        "resistance", underlay.resistance().toString(),
                        "support", underlay.support().toString(),
                        "rollWidth", underlay.rollWidth().toString(),
                        "rollLength", underlay.rollLength().toString()));
        job.walls().ifPresent(walls -> {
            Map<String, Object> inner = map("course", walls.course().toString());
            putText(inner, "topJoint", walls.topJoint());
            putText(inner, "sideJoint", walls.sideJoint());
            form.put("walls", inner);
        });
        putText(form, "ridgeCover", job.ridgeCover());
        putText(form, "topVent", job.topVent());
        JobOrder order = job.order();
        form.put(
                "order",
                map(
                        "unitsInPack", order.unitsInPack(),
                        "unitBreakage", order.unitBreakage().toString(),
                        "unitCutting", order.unitCutting().toString(),
                        "battenCutting", order.battenCutting().toString()));
        return form;
    }

    private static Map<String, Object> roof(JobRoof roof) {
        Map<String, Object> form = map(
                "kind",
                roof.kind().toString(),
                roof.kind().alongField(),
                roof.along().toString(),
                roof.kind().acrossField(),
                roof.across().toString());
        Map<String, Object> slope = new LinkedHashMap<>();
        putText(slope, "pitch", roof.slope().pitch().map(figure -> figure.value()));
        putText(slope, "plateHeight", roof.slope().plateHeight().map(figure -> figure.value()));
        putText(slope, "apexHeight", roof.slope().apexHeight().map(figure -> figure.value()));
        putText(slope, "agreeWithin", roof.slope().tolerance().map(Tolerance::amount));
        form.put("slope", slope);
        form.put("eavesOverhang", roof.eavesOverhang().toString());
        form.put("left", end(roof.left()));
        form.put("right", end(roof.right()));
        if (!roof.asFound().isEmpty()) {
            Map<String, Object> faces = new LinkedHashMap<>();
            roof.asFound()
                    .forEach((face, lengths) -> faces.put(
                            face,
                            map(
                                    "left",
                                    lengths.left().toString(),
                                    "right",
                                    lengths.right().toString())));
            form.put("asFound", faces);
        }
        roof.upperLimit()
                .ifPresent(limit ->
                        form.put("upperLimit", map("height", limit.height().toString(), "what", limit.what())));
        return form;
    }

    private static Map<String, Object> end(RoofEnd end) {
        return end instanceof RoofEnd.Verge verge
                ? map("kind", "verge", "overhang", verge.overhang().toString())
                : map("kind", "abutment");
    }

    private static Map<String, Object> covering(CoveringUnit covering) {
        Map<String, Object> form = map(
                "kind",
                covering.kind().toString(),
                "name",
                covering.name(),
                "length",
                covering.length().toString());
        if (covering instanceof SingleLapUnit unit) {
            form.put("hangingLength", unit.hangingLength().toString());
            form.put("overallWidth", unit.overallWidth().toString());
            form.put("coverWidth", unit.coverWidth().toString());
            form.put("coverRange", unit.coverRange().toString());
            form.put("leastHeadlap", unit.leastHeadlap().toString());
            putText(form, "leastGauge", unit.leastGauge());
            putText(form, "greatestGauge", unit.greatestGauge());
            form.put("thickness", unit.thickness().toString());
            form.put("crownHeight", unit.crownHeight().toString());
            form.put("mass", unit.mass().toString());
            putPart(form, "halfUnit", unit.halfUnit());
            putPart(form, "leftVergeUnit", unit.leftVergeUnit());
            putPart(form, "rightVergeUnit", unit.rightVergeUnit());
        } else if (covering instanceof DoubleLapUnit unit) {
            form.put("width", unit.width().toString());
            form.put("joint", unit.joint().toString());
            form.put("jointRange", unit.jointRange().toString());
            form.put("thickness", unit.thickness().toString());
            form.put("mass", unit.mass().toString());
            form.put("hanging", unit.hanging().way().toString());
            form.put(
                    switch (unit.hanging().way()) {
                        case NIBS -> "hangingLength";
                        case CENTRE_NAILED -> "holeClearance";
                        case HEAD_NAILED -> "holeToHead";
                    },
                    unit.hanging().size().toString());
            putPart(form, "unitAndAHalf", unit.unitAndAHalf());
            putText(form, "leastGauge", unit.leastGauge());
            putText(form, "greatestGauge", unit.greatestGauge());
        }
        return form;
    }

    private static Map<String, Object> settingOut(JobSettingOut settingOut) {
        Map<String, Object> form = map(
                "overhangIntoGutter", settingOut.overhangIntoGutter().toString(),
                "topDistance", settingOut.topDistance().toString(),
                "rafterCentres", settingOut.rafterCentres().toString(),
                "rafterWidth", settingOut.rafterWidth().toString(),
                "rafterDepth", settingOut.rafterDepth().toString(),
                "battenDepth", settingOut.battenDepth().toString(),
                "battenWidth", settingOut.battenWidth().toString(),
                "battenStock", settingOut.battenStock().toString());
        putText(form, "vergeOverhang", settingOut.vergeOverhang());
        putText(form, "abutmentGap", settingOut.abutmentGap());
        if (!settingOut.preference().isEmpty()) {
            form.put(
                    "preference",
                    settingOut.preference().stream().map(Change::toString).toList());
        }
        return form;
    }

    private static void putText(Map<String, Object> form, String field, Optional<?> value) {
        value.ifPresent(present -> form.put(field, present.toString()));
    }

    private static void putPart(Map<String, Object> form, String field, Optional<PartUnit> part) {
        part.ifPresent(p -> form.put(
                field, map("width", p.width().toString(), "mass", p.mass().toString())));
    }

    private static Map<String, Object> map(Object... fieldsAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < fieldsAndValues.length; i += 2) {
            map.put((String) fieldsAndValues[i], fieldsAndValues[i + 1]);
        }
        return map;
    }
}
