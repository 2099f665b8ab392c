package org.roofmaths.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.units.RainfallIntensity;
import org.roofmaths.units.Ratio;

/**
 * Everything a row may depend on. Each constant is a column that rule data may have.
 *
 * @since 0.1
 */
public final class Facts {
    private static final Map<String, Fact<?>> ALL = new LinkedHashMap<>();

    /** What kind of covering unit. */
    public static final Fact<UnitKind> UNIT_KIND = add(Fact.choice("unit_kind", "kind of unit", UnitKind.class));
    /** A covering that the library does not lay, of which documents speak. */
    public static final Fact<String> OTHER_COVERING = add(Fact.word(
            "other_covering",
            "other covering",
            "asphalt-shingle",
            "wood-shingle",
            "wood-shake",
            "metal-shingle",
            "metal-tile",
            "metal-sheet"));
    /** Whether the unit has the sizes its product standard asks. */
    public static final Fact<UnitGeometry> UNIT_GEOMETRY =
            add(Fact.choice("unit_geometry", "geometry of the unit", UnitGeometry.class));
    /** Whether the tile has nibs. */
    public static final Fact<Nibs> NIBS = add(Fact.choice("nibs", "nibs", Nibs.class));
    /** How hard driving rain reaches the site. */
    public static final Fact<Exposure> EXPOSURE = add(Fact.choice("exposure", "exposure", Exposure.class));
    /** The rafter pitch at its flattest part. */
    public static final Fact<Pitch> PITCH = add(Fact.pitch("pitch", "pitch"));
    /** The headlap got. */
    public static final Fact<Length> HEADLAP = add(Fact.length("headlap", "headlap"));
    /** The gauge got. */
    public static final Fact<Length> GAUGE = add(Fact.length("gauge", "gauge"));
    /** The headlap got over the length of the unit. */
    public static final Fact<Ratio> HEADLAP_SHARE = add(Fact.ratio("headlap_share", "headlap over length of unit"));
    /** The length of the rafter along the slope. */
    public static final Fact<Length> RAFTER_LENGTH = add(Fact.length("rafter_length", "rafter length"));
    /** The run of the roof on plan. */
    public static final Fact<Length> PLAN_LENGTH = add(Fact.length("plan_length", "length on plan"));
    /** Rafter centres. */
    public static final Fact<Length> RAFTER_CENTRES = add(Fact.length("rafter_centres", "rafter centres"));
    /** What lies under the underlay. */
    public static final Fact<UnderlaySupport> SUPPORT =
            add(Fact.choice("support", "support of the underlay", UnderlaySupport.class));
    /** How well the underlay lets vapour through. */
    public static final Fact<UnderlayClass> UNDERLAY =
            add(Fact.choice("underlay", "class of underlay", UnderlayClass.class));
    /** Where the insulation lies. */
    public static final Fact<Insulation> INSULATION =
            add(Fact.choice("insulation", "place of the insulation", Insulation.class));
    /** How tight the ceiling is. */
    public static final Fact<Ceiling> CEILING = add(Fact.choice("ceiling", "ceiling", Ceiling.class));
    /** Whether the ceiling is level. */
    public static final Fact<CeilingForm> CEILING_FORM =
            add(Fact.choice("ceiling_form", "form of the ceiling", CeilingForm.class));
    /** Whether air passes through the covering. */
    public static final Fact<CoveringAir> COVERING_AIR =
            add(Fact.choice("covering_air", "air through the covering", CoveringAir.class));
    /** The form of the roof. */
    public static final Fact<RoofForm> ROOF_FORM = add(Fact.choice("roof_form", "form of the roof", RoofForm.class));
    /** The span between the plates. */
    public static final Fact<Length> SPAN = add(Fact.length("span", "span"));
    /** Whether the plan is a rectangle. */
    public static final Fact<PlanShape> PLAN_SHAPE = add(Fact.choice("plan_shape", "shape on plan", PlanShape.class));
    /** The width of the roof. */
    public static final Fact<Length> ROOF_WIDTH = add(Fact.length("roof_width", "width of the roof"));
    /** The area of the roof on plan. */
    public static final Fact<Area> ROOF_AREA = add(Fact.area("roof_area", "area of the roof on plan"));
    /** The place on the roof. */
    public static final Fact<Detail> DETAIL = add(Fact.choice("detail", "detail", Detail.class));
    /** The metal of a flashing. */
    public static final Fact<Metal> METAL = add(Fact.choice("metal", "metal", Metal.class));
    /** The code of lead sheet. */
    public static final Fact<Integer> LEAD_CODE = add(Fact.number("lead_code", "code of lead sheet"));
    /** The colour of lead sheet. */
    public static final Fact<String> LEAD_COLOUR = add(Fact.word(
            "lead_colour", "colour of lead sheet", "green", "yellow", "blue", "red", "black", "white", "orange"));
    /** How a nail is driven. */
    public static final Fact<Nailing> NAILING = add(Fact.choice("nailing", "nailing", Nailing.class));
    /** The height of an edge above the ground. */
    public static final Fact<Length> EDGE_HEIGHT = add(Fact.length("edge_height", "height of the edge"));
    /** Between which points a secret gutter is measured. */
    public static final Fact<String> MEASURED =
            add(Fact.word("measured", "what is measured", "channel-wall-to-fillet", "slates-clear"));
    /** Whether an open valley is shallow. */
    public static final Fact<String> VALLEY_PITCH_CLASS =
            add(Fact.word("valley_pitch_class", "steepness of the valley", "shallow", "steep"));
    /** How a valley is made. */
    public static final Fact<String> VALLEY_KIND =
            add(Fact.word("valley_kind", "kind of valley", "open", "bedded", "mitred", "swept-or-laced"));
    /** Whether a roof is steep or ordinary, as an old book says it. */
    public static final Fact<String> PITCH_CLASS = add(Fact.word("pitch_class", "steepness", "ordinary", "steep"));
    /** A zone of a map of wind, numbered. */
    public static final Fact<Integer> ZONE = add(Fact.number("zone", "zone of wind"));
    /** The climate zone of a code, numbered. */
    public static final Fact<Integer> CLIMATE_ZONE = add(Fact.number("climate_zone", "climate zone"));
    /** The wind zone of a New Zealand site. */
    public static final Fact<WindZone> WIND_ZONE = add(Fact.choice("wind_zone", "wind zone", WindZone.class));
    /** Whether a retarder lies on the warm side. */
    public static final Fact<VapourRetarder> VAPOUR_RETARDER =
            add(Fact.choice("vapour_retarder", "vapour retarder", VapourRetarder.class));
    /** The share of the vent area that is high. */
    public static final Fact<Ratio> UPPER_SHARE = add(Fact.ratio("upper_share", "upper share of the vent area"));
    /** How far the upper vents lie above the eaves vents. */
    public static final Fact<Length> UPPER_ABOVE_EAVES =
            add(Fact.length("upper_above_eaves", "height of the upper vents above the eaves vents"));
    /** Which vents. */
    public static final Fact<String> PLACE_OF_VENT =
            add(Fact.word("place_of_vent", "place of the vents", "high", "low"));
    /** Whether purlins hold the covering. */
    public static final Fact<String> PURLINS = add(Fact.word("purlins", "purlins", "with-purlins", "without-purlins"));
    /** The class of cover of a flashing. */
    public static final Fact<String> COVER_CLASS = add(Fact.word("cover_class", "class of cover", "a", "b", "c"));
    /** Whether a lap is sealed. */
    public static final Fact<String> SEALED = add(Fact.word("sealed", "sealing of the lap", "sealed", "unsealed"));
    /** The soil at the foundation. */
    public static final Fact<String> SOIL = add(Fact.word("soil", "soil", "expansive-or-collapsible", "other"));
    /** What surface sheds the rain. */
    public static final Fact<String> SURFACE =
            add(Fact.word("surface", "surface", "flat", "roof", "steep-roof-or-wall"));
    /** Whether rain is taken as wind-driven. */
    public static final Fact<String> WIND_DRIVEN =
            add(Fact.word("wind_driven", "wind with the rain", "wind-driven", "no-wind"));
    /** Where it rains. */
    public static final Fact<String> PLACE = add(Fact.word("place", "place", "london", "fort-william"));
    /** The design rainfall. */
    public static final Fact<RainfallIntensity> RAINFALL = add(Fact.rainfall("rainfall", "rainfall"));
    /** The nominal size of a gutter. */
    public static final Fact<Length> GUTTER_SIZE = add(Fact.length("gutter_size", "size of the gutter"));
    /** The depth of a gutter. */
    public static final Fact<Length> GUTTER_DEPTH = add(Fact.length("gutter_depth", "depth of the gutter"));
    /** The shape of a gutter. */
    public static final Fact<String> GUTTER_SHAPE =
            add(Fact.word("gutter_shape", "shape of the gutter", "half-round", "rectangular"));
    /** Where a gutter lies. */
    public static final Fact<String> GUTTER_KIND = add(Fact.word("gutter_kind", "kind of gutter", "eaves", "box"));
    /** The category of a gutter, numbered. */
    public static final Fact<Integer> GUTTER_CATEGORY = add(Fact.number("gutter_category", "category of the gutter"));
    /** What an overflow would do. */
    public static final Fact<String> GUTTER_RISK = add(Fact.word(
            "gutter_risk",
            "what an overflow would do",
            "eaves",
            "eaves-overflow-hurts",
            "inside-building",
            "exceptional"));
    /** The drained run of a gutter over its water depth. */
    public static final Fact<Ratio> LENGTH_TO_DEPTH =
            add(Fact.ratio("length_to_depth", "run of the gutter over its depth"));
    /** What covers an outlet. */
    public static final Fact<String> OUTLET_COVER =
            add(Fact.word("outlet_cover", "cover of the outlet", "open", "grating"));
    /** The size of a leader. */
    public static final Fact<Length> LEADER_SIZE = add(Fact.length("leader_size", "size of the leader"));
    /** What an allowance is for. */
    public static final Fact<String> ITEM =
            add(Fact.word("item", "item", "tiles", "slates", "reclaimed", "battens", "underlay"));

    /** How a site lies to the wind, for snow. */
    public static final Fact<String> TOPOGRAPHY =
            add(Fact.word("topography", "topography", "windswept", "normal", "sheltered"));
    /** The roughness of the terrain, by the names of the document asked. */
    public static final Fact<String> TERRAIN =
            add(Fact.word("terrain", "terrain", "0", "i", "ii", "iii", "iv", "b", "c", "d"));
    /** How a roof lies to the wind, for snow. */
    public static final Fact<String> ROOF_EXPOSURE =
            add(Fact.word("roof_exposure", "exposure of the roof", "fully-exposed", "partially-exposed", "sheltered"));
    /** How warm a roof is, for snow. */
    public static final Fact<String> THERMAL = add(
            Fact.word("thermal", "warmth of the roof", "ordinary", "cold-ventilated", "unheated", "heated-greenhouse"));
    /** The risk category of a building, numbered. */
    public static final Fact<Integer> RISK_CATEGORY = add(Fact.number("risk_category", "risk category"));
    /** A zone of a map of snow, by the names of the document asked. */
    public static final Fact<String> SNOW_ZONE =
            add(Fact.word("snow_zone", "zone of snow", "1", "2", "3", "i-alpine", "i-mediterranean", "ii", "iii"));
    /** The altitude of the site. */
    public static final Fact<Length> ALTITUDE = add(Fact.length("altitude", "altitude"));
    /** Where snow drifts. */
    public static final Fact<String> PLACE_OF_DRIFT =
            add(Fact.word("place_of_drift", "place of the drift", "beside-taller-building", "at-obstruction"));
    /** The zone of a roof under wind. */
    public static final Fact<String> ROOF_ZONE =
            add(Fact.word("roof_zone", "zone of the roof", "f", "g", "h", "i", "j"));
    /** Which of the two sets of wind coefficients. */
    public static final Fact<String> PRESSURE_SET =
            add(Fact.word("pressure_set", "set of coefficients", "suction", "pressure"));
    /** The sector that the wind blows from, in degrees from north. */
    public static final Fact<Integer> SECTOR = add(Fact.number("sector", "sector of the wind"));
    /** A form of covering, as a table of weights names it. */
    public static final Fact<String> COVERING_FORM = add(Fact.word(
            "covering_form",
            "form of covering",
            "slate-4-to-6-mm",
            "slate-9-to-13-mm",
            "slate-19-to-25-mm",
            "plain-tile",
            "barrel-tile",
            "interlocking-tile",
            "s-tile"));
    /** The finish of a ceiling. */
    public static final Fact<String> CEILING_FINISH =
            add(Fact.word("ceiling_finish", "finish of the ceiling", "plaster", "other", "none"));
    /** Which loads act. */
    public static final Fact<String> LOAD_CASE =
            add(Fact.word("load_case", "loads that act", "live-or-snow", "dead-and-live"));

    /** Facts that say which thing a row is about, not when it holds. */
    static final List<Fact<?>> NAMES_THE_THING = List.of(UNIT_KIND, OTHER_COVERING, DETAIL, METAL);

    private Facts() {}

    private static <T> Fact<T> add(Fact<T> fact) {
        ALL.put(fact.id(), fact);
        return fact;
    }

    /** Returns every fact, in a fixed order. */
    public static List<Fact<?>> all() {
        return List.copyOf(ALL.values());
    }

    /**
     * Returns the fact of a column.
     *
     * @param id the name of the column, such as {@code unit_kind}
     * @return the fact; empty if there is none
     */
    public static Optional<Fact<?>> of(String id) {
        return Optional.ofNullable(ALL.get(id));
    }
}
