package org.roofmaths.rules;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Area;
import org.roofmaths.units.AreaPerLength;
import org.roofmaths.units.ArealMass;
import org.roofmaths.units.FlowRate;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.Pressure;
import org.roofmaths.units.RainfallIntensity;
import org.roofmaths.units.Range;
import org.roofmaths.units.Ratio;

/**
 * Everything that rule data has tables about. A new table is one constant here and one file of rows.
 *
 * @since 0.1
 */
public final class Subjects {
    private static final Map<String, Subject<?>> ALL = new LinkedHashMap<>();

    // Units, pitch and laps
    /** Least rafter pitch for a kind of unit. */
    public static final Subject<Pitch> LEAST_PITCH = add("least-pitch", ValueKind.PITCH, Limit.AT_LEAST, Facts.PITCH);
    /** Least headlap. */
    public static final Subject<Length> LEAST_HEADLAP =
            add("least-headlap", ValueKind.LENGTH, Limit.AT_LEAST, Facts.HEADLAP);
    /** Least headlap as a share of the unit's length. */
    public static final Subject<Ratio> LEAST_HEADLAP_SHARE =
            add("least-headlap-share", ValueKind.RATIO, Limit.AT_LEAST, Facts.HEADLAP_SHARE);
    /** Greatest headlap as a share of the unit's length, for double lap. */
    public static final Subject<Ratio> GREATEST_HEADLAP_SHARE =
            add("greatest-headlap-share", ValueKind.RATIO, Limit.AT_MOST, Facts.HEADLAP_SHARE);
    /** Headlaps between which a document moves with the slope. */
    public static final Subject<Range<Length>> HEADLAP_RANGE =
            add("headlap-range", ValueKind.LENGTH_RANGE, Limit.WITHIN);
    /** Headlaps of which the rule for choosing was not read. */
    public static final Subject<String> LEAST_HEADLAP_SET = add("least-headlap-set", ValueKind.WORD, Limit.AS_PRINTED);
    /** A rule of thumb for slate headlaps that never decides. */
    public static final Subject<Length> LEAST_SLATE_HEADLAP_LADDER =
            add("least-slate-headlap-ladder", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Least length of a slate, in headlaps. */
    public static final Subject<BigDecimal> LEAST_LENGTH_IN_LAPS =
            add("least-length-in-laps", ValueKind.NUMBER, Limit.AT_LEAST);
    /** Least headlap of units hung on a wall. */
    public static final Subject<Length> VERTICAL_HANGING_HEADLAP =
            add("vertical-hanging-headlap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Least gauge. */
    public static final Subject<Length> LEAST_GAUGE = add("least-gauge", ValueKind.LENGTH, Limit.AT_LEAST, Facts.GAUGE);
    /** Greatest gauge. */
    public static final Subject<Length> GREATEST_GAUGE =
            add("greatest-gauge", ValueKind.LENGTH, Limit.AT_MOST, Facts.GAUGE);
    /** Least side lap. */
    public static final Subject<Length> LEAST_SIDE_LAP = add("least-side-lap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Least side lap as a share of the unit's width. */
    public static final Subject<Ratio> LEAST_SIDE_LAP_SHARE =
            add("least-side-lap-share", ValueKind.RATIO, Limit.AT_LEAST);
    /** Greatest side joint. */
    public static final Subject<Length> SIDE_JOINT = add("side-joint", ValueKind.LENGTH, Limit.AT_MOST);
    /** Play in the side lock. */
    public static final Subject<Range<Length>> SHUNT = add("shunt", ValueKind.LENGTH_RANGE, Limit.WITHIN);
    /** Least width of a cut unit as a share of the whole. */
    public static final Subject<Ratio> LEAST_CUT_SHARE = add("least-cut-share", ValueKind.RATIO, Limit.AT_LEAST);
    /** Least width of a cut unit. */
    public static final Subject<Length> LEAST_CUT_WIDTH = add("least-cut-width", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Greatest rafter length along the slope. */
    public static final Subject<Length> GREATEST_RAFTER_LENGTH =
            add("greatest-rafter-length", ValueKind.LENGTH, Limit.AT_MOST, Facts.RAFTER_LENGTH);
    /** Greatest length of slope on plan. */
    public static final Subject<Length> GREATEST_PLAN_LENGTH =
            add("greatest-plan-length", ValueKind.LENGTH, Limit.AT_MOST, Facts.PLAN_LENGTH);
    /** Slopes, rise over run, between which a unit may be laid. */
    public static final Subject<Range<Ratio>> SLOPE_RANGE = add("slope-range", ValueKind.RATIO_RANGE, Limit.WITHIN);
    /** How much flatter a unit lies than the rafter; for lead laps only. */
    public static final Subject<Angle> TRUE_PITCH_LOSS = add("true-pitch-loss", ValueKind.ANGLE, Limit.AS_PRINTED);
    /** Count of an old book. */
    public static final Subject<Integer> TILES_PER_SQUARE_YARD =
            add("tiles-per-square-yard", ValueKind.COUNT, Limit.AS_PRINTED);
    /** Driving rain that parts the exposures. */
    public static final Subject<String> EXPOSURE_LIMIT = add("exposure-limit", ValueKind.WORD, Limit.AS_PRINTED);

    // Slates: holes
    /** Hole above the head of the slate two courses below. */
    public static final Subject<Range<Length>> HOLE_CLEARANCE =
            add("hole-clearance", ValueKind.LENGTH_RANGE, Limit.WITHIN);
    /** Hole to the side edge of a slate. */
    public static final Subject<Range<Length>> HOLE_FROM_EDGE =
            add("hole-from-edge", ValueKind.LENGTH_RANGE, Limit.WITHIN);
    /** Hole to the head of a head-nailed slate. */
    public static final Subject<Length> SLATE_HOLE_FROM_HEAD =
            add("slate-hole-from-head", ValueKind.LENGTH, Limit.AS_PRINTED);

    // Battens
    /** Section of a batten by rafter centres and kind of unit. */
    public static final Subject<BattenSize> BATTEN_SIZE = add("batten-size", ValueKind.BATTEN_SIZE, Limit.AT_LEAST);
    /** Greatest width of a batten. */
    public static final Subject<Length> GREATEST_BATTEN_WIDTH =
            add("greatest-batten-width", ValueKind.LENGTH, Limit.AT_MOST);
    /** Least length of a batten. */
    public static final Subject<Length> LEAST_BATTEN_LENGTH =
            add("least-batten-length", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Least number of supports of a batten. */
    public static final Subject<Integer> LEAST_BATTEN_SUPPORTS =
            add("least-batten-supports", ValueKind.COUNT, Limit.AT_LEAST);
    /** How many battens may be joined over one rafter. */
    public static final Subject<JointLimit> BATTEN_JOINTS = add("batten-joints", ValueKind.JOINTS, Limit.AS_PRINTED);
    /** Length of a batten nail. */
    public static final Subject<Length> BATTEN_NAIL_LENGTH =
            add("batten-nail-length", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Shank of a batten nail. */
    public static final Subject<Length> BATTEN_NAIL_SHANK = add("batten-nail-shank", ValueKind.LENGTH, Limit.AT_LEAST);
    /** How far a batten nail reaches into the rafter. */
    public static final Subject<Length> BATTEN_NAIL_PENETRATION =
            add("batten-nail-penetration", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Batten end inside the outer face of the verge. */
    public static final Subject<Range<Length>> BATTEN_SETBACK =
            add("batten-setback", ValueKind.LENGTH_RANGE, Limit.WITHIN);
    /** Moisture of battens when fixed. */
    public static final Subject<Ratio> BATTEN_MOISTURE = add("batten-moisture", ValueKind.RATIO, Limit.AT_MOST);
    /** Tolerance on the width of a batten, either way. */
    public static final Subject<Length> BATTEN_WIDTH_TOLERANCE =
            add("batten-width-tolerance", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Fixings of a counter-batten along the rafter. */
    public static final Subject<Length> COUNTER_BATTEN_FIXING_SPACING =
            add("counter-batten-fixing-spacing", ValueKind.LENGTH, Limit.AT_MOST);
    /** How much lower than the doubling length the first batten lies. */
    public static final Subject<Length> DOUBLING_BATTEN_DROP =
            add("doubling-batten-drop", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Top batten to apex. */
    public static final Subject<Range<Length>> TOP_BATTEN_DISTANCE =
            add("top-batten-distance", ValueKind.LENGTH_RANGE, Limit.WITHIN);

    // Underlay
    /** Horizontal lap of underlay. */
    public static final Subject<Length> UNDERLAY_HORIZONTAL_LAP =
            add("underlay-horizontal-lap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Vertical lap of underlay. */
    public static final Subject<Length> UNDERLAY_VERTICAL_LAP =
            add("underlay-vertical-lap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Lap or turn-up of underlay at an edge. */
    public static final Subject<Length> UNDERLAY_EDGE_LAP = add("underlay-edge-lap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Drape of underlay between rafters. */
    public static final Subject<Length> UNDERLAY_DRAPE = add("underlay-drape", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Shank of an underlay nail. */
    public static final Subject<Length> UNDERLAY_NAIL_SHANK =
            add("underlay-nail-shank", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Vapour resistance that parts the classes of underlay. */
    public static final Subject<String> UNDERLAY_RESISTANCE =
            add("underlay-resistance", ValueKind.WORD, Limit.AS_PRINTED);
    /** Widths of rolls. */
    public static final Subject<Range<Length>> UNDERLAY_ROLL_WIDTH =
            add("underlay-roll-width", ValueKind.LENGTH_RANGE, Limit.AS_PRINTED);
    /** Wind pressure that an underlay must bear, by zone. */
    public static final Subject<Pressure> UNDERLAY_WIND_PRESSURE =
            add("underlay-wind-pressure", ValueKind.PRESSURE, Limit.AT_LEAST);
    /** How far short of the apex the underlay of a dry ridge stops. */
    public static final Subject<Length> RIDGE_UNDERLAY_STOP =
            add("ridge-underlay-stop", ValueKind.LENGTH, Limit.AS_PRINTED);

    // Fixings
    /** How units of the field are fixed. */
    public static final Subject<String> FIELD_FIXING = add("field-fixing", ValueKind.WORD, Limit.AS_PRINTED);
    /** How units at the edges are fixed. */
    public static final Subject<String> PERIMETER_FIXING = add("perimeter-fixing", ValueKind.WORD, Limit.AS_PRINTED);
    /** How ridge and hip tiles are fixed. */
    public static final Subject<String> RIDGE_FIXING = add("ridge-fixing", ValueKind.WORD, Limit.AS_PRINTED);
    /** Shank of a tile nail. */
    public static final Subject<Length> TILE_NAIL_SHANK = add("tile-nail-shank", ValueKind.LENGTH, Limit.AT_LEAST);
    /** How far a tile nail reaches into the batten. */
    public static final Subject<Length> TILE_NAIL_PENETRATION =
            add("tile-nail-penetration", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Nails to a slate. */
    public static final Subject<Integer> SLATE_NAILS = add("slate-nails", ValueKind.COUNT, Limit.AT_LEAST);
    /** Every how many courses a slate is cheek-nailed. */
    public static final Subject<Integer> CHEEK_NAIL_INTERVAL =
            add("cheek-nail-interval", ValueKind.COUNT, Limit.AT_MOST);
    /** Where a nail hole lies over the batten. */
    public static final Subject<String> NAIL_HOLE_ZONE = add("nail-hole-zone", ValueKind.WORD, Limit.AS_PRINTED);
    /** Mix of roofing mortar. */
    public static final Subject<String> MORTAR_MIX = add("mortar-mix", ValueKind.WORD, Limit.AS_PRINTED);

    // Edges
    /** Overhang over the gutter. */
    public static final Subject<Length> EAVES_OVERHANG = add("eaves-overhang", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Overhang at a verge. */
    public static final Subject<Range<Length>> VERGE_OVERHANG =
            add("verge-overhang", ValueKind.LENGTH_RANGE, Limit.WITHIN);
    /** Width of an undercloak. */
    public static final Subject<Length> UNDERCLOAK_WIDTH = add("undercloak-width", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** When a plain tile may not be the undercloak. */
    public static final Subject<String> UNDERCLOAK_TILE_LIMIT =
            add("undercloak-tile-limit", ValueKind.WORD, Limit.AS_PRINTED);
    /** Cover of the top course by ridge or flashing. */
    public static final Subject<Length> RIDGE_COVER = add("ridge-cover", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Clear channel of a valley. */
    public static final Subject<Length> VALLEY_CHANNEL = add("valley-channel", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Thickness of valley boards. */
    public static final Subject<Length> VALLEY_BOARD_THICKNESS =
            add("valley-board-thickness", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Least roof pitch of a kind of valley. */
    public static final Subject<Pitch> LEAST_VALLEY_PITCH = add("least-valley-pitch", ValueKind.PITCH, Limit.AT_LEAST);
    /** Whole width of a valley lining. */
    public static final Subject<Length> VALLEY_LINING_WIDTH =
            add("valley-lining-width", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Width of a valley lining to each side. */
    public static final Subject<Length> VALLEY_SIDE_WIDTH = add("valley-side-width", ValueKind.LENGTH, Limit.AT_LEAST);
    /** End lap of a valley lining. */
    public static final Subject<Length> VALLEY_LAP = add("valley-lap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Whole width of a valley lining under a covering the library does not lay. */
    public static final Subject<Length> OTHER_VALLEY_LINING_WIDTH =
            add("other-valley-lining-width", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Width of such a lining to each side. */
    public static final Subject<Length> OTHER_VALLEY_SIDE_WIDTH =
            add("other-valley-side-width", ValueKind.LENGTH, Limit.AT_LEAST);
    /** End lap of such a lining. */
    public static final Subject<Length> OTHER_VALLEY_LAP = add("other-valley-lap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Lap of drip edge. */
    public static final Subject<Length> DRIP_EDGE_LAP = add("drip-edge-lap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Ice barrier inside the wall line. */
    public static final Subject<Length> ICE_BARRIER_INSIDE_WALL =
            add("ice-barrier-inside-wall", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Ice barrier up the slope. */
    public static final Subject<Length> ICE_BARRIER_UP_SLOPE =
            add("ice-barrier-up-slope", ValueKind.LENGTH, Limit.AT_LEAST);

    // Lead and flashings
    /** Height of a flashing up the wall. */
    public static final Subject<Length> FLASHING_UPSTAND = add("flashing-upstand", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Cover of a flashing over the units. */
    public static final Subject<Length> FLASHING_COVER = add("flashing-cover", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Cover of a flashing over a covering the library does not lay. */
    public static final Subject<Length> OTHER_FLASHING_COVER =
            add("other-flashing-cover", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Height of a flashing up the wall beside such a covering. */
    public static final Subject<Length> OTHER_FLASHING_UPSTAND =
            add("other-flashing-upstand", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Side lap between lengths of flashing. */
    public static final Subject<Length> FLASHING_SIDE_LAP = add("flashing-side-lap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** End lap of metal flashings. */
    public static final Subject<Length> FLASHING_END_LAP = add("flashing-end-lap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Plumb height behind a lap on the slope. */
    public static final Subject<Length> SLOPE_LAP_HEIGHT = add("slope-lap-height", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Lap on the slope that is never gone below. */
    public static final Subject<Length> LEAST_SLOPE_LAP = add("least-slope-lap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Longest piece of sheet. */
    public static final Subject<Length> LONGEST_PIECE = add("longest-piece", ValueKind.LENGTH, Limit.AT_MOST);
    /** Least code of lead sheet. */
    public static final Subject<Integer> LEAST_LEAD_CODE = add("least-lead-code", ValueKind.COUNT, Limit.AT_LEAST);
    /** Greatest code of lead sheet. */
    public static final Subject<Integer> GREATEST_LEAD_CODE = add("greatest-lead-code", ValueKind.COUNT, Limit.AT_MOST);
    /** Least thickness of a metal. */
    public static final Subject<Length> LEAST_METAL_THICKNESS =
            add("least-metal-thickness", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Metal by weight or gauge. */
    public static final Subject<String> METAL_WEIGHT_RULE = add("metal-weight-rule", ValueKind.WORD, Limit.AS_PRINTED);
    /** Metal turned into a joint or chase. */
    public static final Subject<Length> FLASHING_TUCK = add("flashing-tuck", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Depth of tuck beyond which lead is coated. */
    public static final Subject<Length> COATED_TUCK = add("coated-tuck", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Spacing of wedges. */
    public static final Subject<Length> WEDGE_SPACING = add("wedge-spacing", ValueKind.LENGTH, Limit.AT_MOST);
    /** Spacing of clips on a free edge. */
    public static final Subject<Range<Length>> CLIP_SPACING = add("clip-spacing", ValueKind.LENGTH_RANGE, Limit.WITHIN);
    /** Height of a step flashing's water line above the covering, square to the slope. */
    public static final Subject<Length> WATER_LINE = add("water-line", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Headlap of stepped pieces. */
    public static final Subject<Length> STEP_HEADLAP = add("step-headlap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Leg of a step flashing up the wall, as an old book cuts it. */
    public static final Subject<Length> STEP_WALL_LEG = add("step-wall-leg", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Legs of a flashing at a side wall. */
    public static final Subject<Length> SIDE_WALL_FLASHING =
            add("side-wall-flashing", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Length up the slope in exposures. */
    public static final Subject<BigDecimal> UP_SLOPE_EXPOSURE_MULTIPLE =
            add("up-slope-exposure-multiple", ValueKind.NUMBER, Limit.AT_LEAST);
    /** Downstand of a coping. */
    public static final Subject<Length> COPING_DOWNSTAND = add("coping-downstand", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Soaker turned over the head, beyond gauge and headlap. */
    public static final Subject<Length> SOAKER_TURN_DOWN = add("soaker-turn-down", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Soaker up the wall. */
    public static final Subject<Length> SOAKER_UPSTAND = add("soaker-upstand", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Soaker under the covering. */
    public static final Subject<Length> SOAKER_UNDER_COVER =
            add("soaker-under-cover", ValueKind.LENGTH, Limit.AT_LEAST);
    /** How soakers are counted. */
    public static final Subject<String> SOAKER_COUNT = add("soaker-count", ValueKind.WORD, Limit.AS_PRINTED);
    /** Width of a secret gutter, by what is measured. */
    public static final Subject<Length> SECRET_GUTTER_WIDTH =
            add("secret-gutter-width", ValueKind.LENGTH, Limit.AT_LEAST);
    /** How far from the wall battens stop at a secret gutter. */
    public static final Subject<Range<Length>> SECRET_GUTTER_BATTEN_STOP =
            add("secret-gutter-batten-stop", ValueKind.LENGTH_RANGE, Limit.WITHIN);
    /** Depth of a secret gutter. */
    public static final Subject<Length> SECRET_GUTTER_DEPTH =
            add("secret-gutter-depth", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Upstand of a secret gutter above the tile. */
    public static final Subject<Length> SECRET_GUTTER_UPSTAND =
            add("secret-gutter-upstand", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Gap between tile and wall at a secret gutter. */
    public static final Subject<Length> SECRET_GUTTER_TILE_GAP =
            add("secret-gutter-tile-gap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** How far a flashing runs past a stack. */
    public static final Subject<Length> PAST_THE_STACK = add("past-the-stack", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Sole of a back gutter. */
    public static final Subject<Length> BACK_GUTTER_SOLE = add("back-gutter-sole", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Back gutter up the slope. */
    public static final Subject<Length> BACK_GUTTER_UP_SLOPE =
            add("back-gutter-up-slope", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Width of a stack beyond which a stack cricket is asked. */
    public static final Subject<Length> CRICKET_WIDTH = add("cricket-width", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Drip spacing of a lead gutter. */
    public static final Subject<Length> GUTTER_DRIP_SPACING =
            add("gutter-drip-spacing", ValueKind.LENGTH, Limit.AT_MOST);
    /** Girth of a lead gutter. */
    public static final Subject<Length> GUTTER_GREATEST_GIRTH =
            add("gutter-greatest-girth", ValueKind.LENGTH, Limit.AT_MOST);
    /** Roll spacing of a flat lead bay. */
    public static final Subject<Length> FLAT_BAY_ROLL_SPACING =
            add("flat-bay-roll-spacing", ValueKind.LENGTH, Limit.AT_MOST);
    /** Drip spacing of a flat lead bay. */
    public static final Subject<Length> FLAT_BAY_DRIP_SPACING =
            add("flat-bay-drip-spacing", ValueKind.LENGTH, Limit.AT_MOST);
    /** Thickness of lead sheet by code. */
    public static final Subject<Length> LEAD_THICKNESS = add("lead-thickness", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Thickness of lead sheet by colour. */
    public static final Subject<Range<Length>> LEAD_THICKNESS_RANGE =
            add("lead-thickness-range", ValueKind.LENGTH_RANGE, Limit.AS_PRINTED);
    /** Tolerance on the thickness of lead sheet. */
    public static final Subject<Ratio> LEAD_THICKNESS_TOLERANCE =
            add("lead-thickness-tolerance", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Mass of lead sheet by code. */
    public static final Subject<ArealMass> LEAD_MASS = add("lead-mass", ValueKind.AREAL_MASS, Limit.AS_PRINTED);
    /** Colour of lead sheet by code. */
    public static final Subject<String> LEAD_COLOUR = add("lead-colour", ValueKind.WORD, Limit.AS_PRINTED);
    /** Widths in which lead is sold. */
    public static final Subject<Range<Length>> LEAD_STOCK_WIDTH =
            add("lead-stock-width", ValueKind.LENGTH_RANGE, Limit.AS_PRINTED);
    /** Density of lead, kilograms in a cubic metre. */
    public static final Subject<BigDecimal> LEAD_DENSITY = add("lead-density", ValueKind.NUMBER, Limit.AS_PRINTED);
    /** Expansion of lead, per kelvin. */
    public static final Subject<BigDecimal> LEAD_EXPANSION = add("lead-expansion", ValueKind.NUMBER, Limit.AS_PRINTED);
    /** Lead on a roof that feeds a drinking-water tank. */
    public static final Subject<String> NO_LEAD_ON_DRINKING_WATER_ROOF =
            add("no-lead-on-drinking-water-roof", ValueKind.WORD, Limit.AS_PRINTED);

    // Ventilation
    /** Continuous gap at the eaves, or its equal in free area, each side. */
    public static final Subject<Length> LOW_VENT_GAP = add("low-vent-gap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Continuous gap at the top, or its equal in free area. */
    public static final Subject<Length> HIGH_VENT_GAP = add("high-vent-gap", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Free area at the eaves, per length. */
    public static final Subject<AreaPerLength> LOW_VENT_AREA =
            add("low-vent-area", ValueKind.AREA_PER_LENGTH, Limit.AT_LEAST);
    /** Free area at the top, per length. */
    public static final Subject<AreaPerLength> HIGH_VENT_AREA =
            add("high-vent-area", ValueKind.AREA_PER_LENGTH, Limit.AT_LEAST);
    /** Free area as a share of an area that the row names. */
    public static final Subject<Ratio> VENT_AREA_SHARE = add("vent-area-share", ValueKind.RATIO, Limit.AT_LEAST);
    /** Least share of the vents that is high, or low. */
    public static final Subject<Ratio> LEAST_VENT_SHARE = add("least-vent-share", ValueKind.RATIO, Limit.AT_LEAST);
    /** Share of the vents near the break of a mansard. */
    public static final Subject<Ratio> BREAK_VENT_SHARE = add("break-vent-share", ValueKind.RATIO, Limit.AT_LEAST);
    /** How far below the ridge upper vents may lie, plumb. */
    public static final Subject<Length> UPPER_VENTS_BELOW_RIDGE =
            add("upper-vents-below-ridge", ValueKind.LENGTH, Limit.AT_MOST);
    /** Clear void over the insulation. */
    public static final Subject<Length> VENT_VOID = add("vent-void", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Clear path where insulation passes the eaves. */
    public static final Subject<Length> EAVES_PATH = add("eaves-path", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Clear path over an eaves baffle. */
    public static final Subject<Length> EAVES_BAFFLE = add("eaves-baffle", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Space of counter-battens above a tight deck. */
    public static final Subject<Length> COUNTER_BATTEN_SPACE =
            add("counter-batten-space", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Clear space over the insulation. */
    public static final Subject<Length> INSULATION_CLEARANCE =
            add("insulation-clearance", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Space under wood shingles of an unvented attic. */
    public static final Subject<Length> UNVENTED_SHINGLE_SPACE =
            add("unvented-shingle-space", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Least dimension of a vent opening. */
    public static final Subject<Range<Length>> VENT_OPENING_SIZE =
            add("vent-opening-size", ValueKind.LENGTH_RANGE, Limit.WITHIN);
    /** Climate zones that a draft adds. */
    public static final Subject<String> VENT_CLIMATE_ZONES =
            add("vent-climate-zones", ValueKind.WORD, Limit.AS_PRINTED);
    /** How a standard goes about moisture. */
    public static final Subject<String> MOISTURE_APPROACH = add("moisture-approach", ValueKind.WORD, Limit.AS_PRINTED);

    // Rainwater
    /** Effective area over plan area, by pitch. */
    public static final Subject<Ratio> RAIN_AREA_FACTOR = add("rain-area-factor", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Share of the rise added to the run. */
    public static final Subject<Ratio> RAIN_AREA_RISE_SHARE =
            add("rain-area-rise-share", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Effective area over elevation. */
    public static final Subject<Ratio> RAIN_ELEVATION_SHARE =
            add("rain-elevation-share", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Share of a wall that sheds on the roof. */
    public static final Subject<Ratio> WALL_SHARE = add("wall-share", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Design rainfall. */
    public static final Subject<RainfallIntensity> DESIGN_RAIN_FLOW =
            add("design-rain-flow", ValueKind.RAINFALL, Limit.AS_PRINTED);
    /** Return period of the design storm, years. */
    public static final Subject<Integer> RAIN_RETURN_PERIOD =
            add("rain-return-period", ValueKind.COUNT, Limit.AS_PRINTED);
    /** Return period in lives of the building. */
    public static final Subject<BigDecimal> RAIN_LIFE_MULTIPLE =
            add("rain-life-multiple", ValueKind.NUMBER, Limit.AS_PRINTED);
    /** Factor where no statistics exist. */
    public static final Subject<Ratio> RAIN_RISK_FACTOR = add("rain-risk-factor", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Greatest effective area of a gutter. */
    public static final Subject<Area> GUTTER_GREATEST_AREA = add("gutter-greatest-area", ValueKind.AREA, Limit.AT_MOST);
    /** Outlet of a gutter. */
    public static final Subject<Length> GUTTER_OUTLET = add("gutter-outlet", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Flow of a gutter. */
    public static final Subject<FlowRate> GUTTER_FLOW = add("gutter-flow", ValueKind.FLOW, Limit.AT_MOST);
    /** Constant of a gutter's capacity. */
    public static final Subject<BigDecimal> GUTTER_CAPACITY_CONSTANT =
            add("gutter-capacity-constant", ValueKind.NUMBER, Limit.AS_PRINTED);
    /** Design flow over nominal flow. */
    public static final Subject<Ratio> GUTTER_DESIGN_FACTOR =
            add("gutter-design-factor", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Factor for long gutters. */
    public static final Subject<Ratio> GUTTER_LENGTH_FACTOR =
            add("gutter-length-factor", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Factor for a bend. */
    public static final Subject<Ratio> GUTTER_BEND_FACTOR =
            add("gutter-bend-factor", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Fall up to which a gutter counts as level. */
    public static final Subject<Ratio> GUTTER_LEVEL_FALL = add("gutter-level-fall", ValueKind.RATIO, Limit.AT_MOST);
    /** Fall of a gutter. */
    public static final Subject<Ratio> GUTTER_FALL = add("gutter-fall", ValueKind.RATIO, Limit.AT_LEAST);
    /** Freeboard of a valley or parapet gutter. */
    public static final Subject<Length> GUTTER_FREEBOARD = add("gutter-freeboard", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Freeboard as a share of the depth. */
    public static final Subject<Ratio> GUTTER_FREEBOARD_SHARE =
            add("gutter-freeboard-share", ValueKind.RATIO, Limit.AT_LEAST);
    /** From which area of roof a gutter is asked. */
    public static final Subject<String> GUTTER_FROM_ROOF_AREA =
            add("gutter-from-roof-area", ValueKind.WORD, Limit.AS_PRINTED);
    /** Overflow of a parapet gutter. */
    public static final Subject<String> GUTTER_OVERFLOW = add("gutter-overflow", ValueKind.WORD, Limit.AS_PRINTED);
    /** Constant of an outlet under a low head. */
    public static final Subject<BigDecimal> OUTLET_WEIR_CONSTANT =
            add("outlet-weir-constant", ValueKind.NUMBER, Limit.AS_PRINTED);
    /** Constant of an outlet under a high head. */
    public static final Subject<BigDecimal> OUTLET_ORIFICE_CONSTANT =
            add("outlet-orifice-constant", ValueKind.NUMBER, Limit.AS_PRINTED);
    /** Factor for what covers an outlet. */
    public static final Subject<Ratio> OUTLET_OPENING_FACTOR =
            add("outlet-opening-factor", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Roughness of a pipe. */
    public static final Subject<Length> PIPE_ROUGHNESS = add("pipe-roughness", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Filling of a pipe. */
    public static final Subject<Ratio> PIPE_FILLING = add("pipe-filling", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Plan area of a leader at one inch an hour. */
    public static final Subject<Area> LEADER_AREA_AT_ONE_INCH =
            add("leader-area-at-one-inch", ValueKind.AREA, Limit.AT_MOST);
    /** Plan area of a leader at four inches an hour. */
    public static final Subject<Area> LEADER_AREA_AT_FOUR_INCHES =
            add("leader-area-at-four-inches", ValueKind.AREA, Limit.AT_MOST);
    /** Flow of a leader, US gallons a minute. */
    public static final Subject<BigDecimal> LEADER_FLOW = add("leader-flow", ValueKind.NUMBER, Limit.AT_MOST);
    /** Gutter to each downpipe. */
    public static final Subject<Length> DOWNPIPE_SPACING = add("downpipe-spacing", ValueKind.LENGTH, Limit.AT_MOST);
    /** Discharge from the foundation. */
    public static final Subject<Length> DRAIN_DISCHARGE_DISTANCE =
            add("drain-discharge-distance", ValueKind.LENGTH, Limit.AT_LEAST);

    // Snow, indicative
    /** Basic roof snow factor of a code. */
    public static final Subject<Ratio> SNOW_BASIC_FACTOR = add("snow-basic-factor", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Roof snow that is never gone below. */
    public static final Subject<Pressure> LEAST_ROOF_SNOW = add("least-roof-snow", ValueKind.PRESSURE, Limit.AT_LEAST);
    /** Snow exposure coefficient. */
    public static final Subject<Ratio> SNOW_EXPOSURE_COEFFICIENT =
            add("snow-exposure-coefficient", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Snow thermal coefficient. */
    public static final Subject<Ratio> SNOW_THERMAL_COEFFICIENT =
            add("snow-thermal-coefficient", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Snow importance factor. */
    public static final Subject<Ratio> SNOW_IMPORTANCE = add("snow-importance", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Exceptional over usual ground snow. */
    public static final Subject<Ratio> SNOW_EXCEPTIONAL_COEFFICIENT =
            add("snow-exceptional-coefficient", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Shape coefficient of an undrifted slope, where it is constant. */
    public static final Subject<Ratio> SNOW_SHAPE_1 = add("snow-shape-1", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Shape coefficient where snow cannot slide off. */
    public static final Subject<Ratio> SNOW_SHAPE_HELD = add("snow-shape-held", ValueKind.RATIO, Limit.AT_LEAST);
    /** Weight of drifted snow, kilonewtons in a cubic metre. */
    public static final Subject<BigDecimal> SNOW_DRIFT_WEIGHT =
            add("snow-drift-weight", ValueKind.NUMBER, Limit.AS_PRINTED);
    /** Weight of snow over an edge, kilonewtons in a cubic metre. */
    public static final Subject<BigDecimal> SNOW_OVERHANG_WEIGHT =
            add("snow-overhang-weight", ValueKind.NUMBER, Limit.AS_PRINTED);
    /** Range of a drift coefficient. */
    public static final Subject<Range<Ratio>> SNOW_DRIFT_RANGE =
            add("snow-drift-range", ValueKind.RATIO_RANGE, Limit.WITHIN);
    /** Range of the length of a drift. */
    public static final Subject<Range<Length>> SNOW_DRIFT_LENGTH =
            add("snow-drift-length", ValueKind.LENGTH_RANGE, Limit.WITHIN);
    /** Altitude up to which a document holds. */
    public static final Subject<Length> GREATEST_ALTITUDE = add("greatest-altitude", ValueKind.LENGTH, Limit.AT_MOST);
    /** Snow on the ground by zone. */
    public static final Subject<Pressure> GROUND_SNOW = add("ground-snow", ValueKind.PRESSURE, Limit.AS_PRINTED);
    /** Snow on the ground that a formula never goes below. */
    public static final Subject<Pressure> LEAST_GROUND_SNOW =
            add("least-ground-snow", ValueKind.PRESSURE, Limit.AT_LEAST);

    // Wind, indicative
    /** Roughness length of terrain. */
    public static final Subject<Length> TERRAIN_ROUGHNESS =
            add("terrain-roughness", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Height below which wind on terrain is taken as constant. */
    public static final Subject<Length> TERRAIN_LEAST_HEIGHT =
            add("terrain-least-height", ValueKind.LENGTH, Limit.AT_LEAST);
    /** Density of air, kilograms in a cubic metre. */
    public static final Subject<BigDecimal> AIR_DENSITY = add("air-density", ValueKind.NUMBER, Limit.AS_PRINTED);
    /** Direction factor of a sector. */
    public static final Subject<Ratio> WIND_DIRECTION_FACTOR =
            add("wind-direction-factor", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Pressure coefficient of a duo-pitch for 10 m² and more, wind on the eaves. */
    public static final Subject<Ratio> DUO_PITCH_WIND_10 = add("duo-pitch-wind-10", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Pressure coefficient of a duo-pitch for up to 1 m², wind on the eaves. */
    public static final Subject<Ratio> DUO_PITCH_WIND_1 = add("duo-pitch-wind-1", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Pressure coefficient of a duo-pitch for 10 m² and more, wind on the gable. */
    public static final Subject<Ratio> DUO_PITCH_GABLE_WIND_10 =
            add("duo-pitch-gable-wind-10", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Pressure coefficient of a duo-pitch for up to 1 m², wind on the gable. */
    public static final Subject<Ratio> DUO_PITCH_GABLE_WIND_1 =
            add("duo-pitch-gable-wind-1", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Pressure coefficient of a mono-pitch for 10 m² and more, wind on the high eaves. */
    public static final Subject<Ratio> MONO_PITCH_HIGH_WIND_10 =
            add("mono-pitch-high-wind-10", ValueKind.RATIO, Limit.AS_PRINTED);

    // Weight and imposed load, indicative
    /** Mass of a covering on the slope. */
    public static final Subject<Range<ArealMass>> COVERING_MASS =
            add("covering-mass", ValueKind.AREAL_MASS_RANGE, Limit.AS_PRINTED);
    /** Imposed load of a roof with no access but for upkeep, on plan, where it is constant. */
    public static final Subject<Pressure> IMPOSED_LOAD = add("imposed-load", ValueKind.PRESSURE, Limit.AS_PRINTED);
    /** Imposed point load, kilonewtons. */
    public static final Subject<BigDecimal> IMPOSED_POINT_LOAD =
            add("imposed-point-load", ValueKind.NUMBER, Limit.AS_PRINTED);
    /** Deflection over span that a code names. */
    public static final Subject<Ratio> DEFLECTION_SHARE = add("deflection-share", ValueKind.RATIO, Limit.AT_MOST);

    // Order and tolerances
    /** Allowance for cutting and breakage, a hint. */
    public static final Subject<Range<Ratio>> ALLOWANCE = add("allowance", ValueKind.RATIO_RANGE, Limit.AS_PRINTED);
    /** Squares allowed for a hundred feet of cut work. */
    public static final Subject<BigDecimal> CUT_WORK_SQUARES =
            add("cut-work-squares", ValueKind.NUMBER, Limit.AS_PRINTED);
    /** Width allowed for cutting, each side. */
    public static final Subject<Length> CUTTING_ALLOWANCE =
            add("cutting-allowance", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Width allowed along edges. */
    public static final Subject<Length> EDGE_ALLOWANCE = add("edge-allowance", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Openings deducted from this area on. */
    public static final Subject<Area> OPENING_DEDUCTED_FROM =
            add("opening-deducted-from", ValueKind.AREA, Limit.AS_PRINTED);
    /** Flatness of the support over the span. */
    public static final Subject<Ratio> SUPPORT_FLATNESS_SHARE =
            add("support-flatness-share", ValueKind.RATIO, Limit.AT_MOST);
    /** Cap on the flatness of the support. */
    public static final Subject<Length> SUPPORT_FLATNESS_CAP =
            add("support-flatness-cap", ValueKind.LENGTH, Limit.AT_MOST);
    /** Tolerance on the mean size of a unit, either way. */
    public static final Subject<Ratio> SIZE_TOLERANCE_SHARE =
            add("size-tolerance-share", ValueKind.RATIO, Limit.AS_PRINTED);
    /** Tolerance on the hanging length, either way. */
    public static final Subject<Length> HANGING_LENGTH_TOLERANCE =
            add("hanging-length-tolerance", ValueKind.LENGTH, Limit.AS_PRINTED);
    /** Tolerance on the cover width, either way. */
    public static final Subject<Length> COVER_WIDTH_TOLERANCE =
            add("cover-width-tolerance", ValueKind.LENGTH, Limit.AS_PRINTED);

    private Subjects() {}

    private static <V> Subject<V> add(String id, ValueKind<V> kind, Limit limit) {
        return add(id, kind, limit, null);
    }

    private static <V> Subject<V> add(String id, ValueKind<V> kind, Limit limit, @Nullable Fact<V> measuredBy) {
        Subject<V> subject = new Subject<>(id, id.replace('-', ' '), limit, kind, measuredBy);
        ALL.put(id, subject);
        return subject;
    }

    /** Returns every subject, in a fixed order. */
    public static List<Subject<?>> all() {
        return List.copyOf(ALL.values());
    }

    /**
     * Returns the subject of a table.
     *
     * @param id the name of the table, such as {@code least-pitch}
     * @return the subject; empty if there is none
     */
    public static Optional<Subject<?>> of(String id) {
        return Optional.ofNullable(ALL.get(id));
    }
}
