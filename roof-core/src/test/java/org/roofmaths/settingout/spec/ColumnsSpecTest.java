package org.roofmaths.settingout.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.units.Quantities.kg;
import static org.roofmaths.units.Quantities.metres;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.onSlope;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.roofmaths.covering.PartUnit;
import org.roofmaths.covering.SingleLapUnit;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.problem.Attempt;
import org.roofmaths.problem.Problem;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.FlatShape;
import org.roofmaths.settingout.Arrangement;
import org.roofmaths.settingout.ColumnChoice;
import org.roofmaths.settingout.Columns;
import org.roofmaths.settingout.CourseKind;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.FaceLayout;
import org.roofmaths.settingout.LayoutScheme;
import org.roofmaths.settingout.PieceKind;
import org.roofmaths.settingout.Row;
import org.roofmaths.settingout.Samples;
import org.roofmaths.units.Range;
import org.roofmaths.working.Figure;

class ColumnsSpecTest {
    private static final FaceEnd VERGE = FaceEnd.verge(mm(45), Range.closed(mm(38), mm(50)));
    private static final FaceEnd WALL = FaceEnd.abutment(Range.closed(mm(0), mm(10)));

    private static SingleLapUnit tileWithLeftVergeUnit() {
        return SingleLapUnit.builder()
                .name("roll tile")
                .kind(UnitKind.CLAY_SINGLE_LAP_TILE)
                .length(mm(420))
                .hangingLength(mm(395))
                .overallWidth(mm(330))
                .coverWidth(mm(300))
                .leastHeadlap(mm(75))
                .thickness(mm(20))
                .mass(kg(4))
                .coverRange(Range.closed(mm(297), mm(303)))
                .halfUnit(new PartUnit(mm(150), kg(2.6)))
                .leftVergeUnit(new PartUnit(mm(270), kg(4)))
                .build();
    }

    @Test
    void whole_units_between_two_verges() {
        // a roofing consultancy's article series, Tips 5 and 13: 30 tiles of 301.53 to 302.33
        Columns columns = Columns.across(metres(9), Samples.TILE, Ends.both(VERGE));

        assertThat(columns.arrangement()).isEqualTo(Arrangement.WHOLE_UNITS);
        assertThat(columns.columnCount()).isEqualTo(30);
        assertThat(columns.coverGot()).isEqualTo(mm((9000 + 45 + 45 - 30) / 30.0));
        assertThat(columns.reachGot()).isEqualTo(Ends.both(mm(45)));
        assertThat(columns.narrowestCut()).isEmpty();
        assertThat(columns).hasToString("30 whole units; cover 302 mm; left overhang 45 mm, right overhang 45 mm");
        assertThat(columns.working().disagreements()).isEmpty();
    }

    @Test
    void a_half_unit_where_whole_ones_do_not_fit() {
        // wall 7320, overhangs 38 to 50, left verge unit 270, 30 shown beyond the last cover
        Columns columns = Columns.across(mm(7320), tileWithLeftVergeUnit(), Ends.both(VERGE));

        assertThat(columns.arrangement()).isEqualTo(Arrangement.HALF_UNIT);
        assertThat(columns.rows().get(0)).hasToString("1 left-hand verge unit, 1 half unit, 23 whole units");
        assertThat(columns.coverGot()).isEqualTo(mm((7320 + 90 - 270 - 30 - 150) / 23.0));
        assertThat(columns.considered().stream().map(ColumnChoice::toString))
                .startsWith(
                        "23 whole units: want a cover from 308.521739 mm to 309.565217 mm, but the unit gives 297 mm to 303 mm",
                        "24 whole units: want a cover from 295.666667 mm to 296.666667 mm, but the unit gives 297 mm to 303 mm",
                        "23 whole units and a half unit: fits");
        assertThat(columns.working().disagreements()).isEmpty();
    }

    @Test
    void the_shunt_ends_where_it_ends() {
        // with both overhangs at 50 the half unit wants 303.04, with both at 38 302.0: hard against the end of the
        // shunt
        Columns columns = Columns.across(
                mm(7320), tileWithLeftVergeUnit(), Ends.both(FaceEnd.verge(mm(50), Range.closed(mm(38), mm(50)))));

        assertThat(columns.coverGot()).isEqualTo(mm(303));
        assertThat(columns.coveredWidth()).isEqualTo(mm(270 + 150 + 23 * 303 + 30));
        assertThat(columns.reachGot()).isEqualTo(Ends.both(mm((7419 - 7320) / 2.0)));
    }

    @Test
    void a_wall_at_one_end_takes_the_half_unit() {
        Columns columns = Columns.across(mm(5200), Samples.TILE, Ends.of(WALL, VERGE));

        assertThat(columns.rows().get(0)).hasToString("1 half unit, 17 whole units");
        assertThat(columns.coverGot()).isEqualTo(mm((5200 - 5 + 45 - 30 - 150) / 17.0));
        assertThat(columns.marks(columns.rows().get(0)))
                .startsWith(mm(155), mm(453), mm(750))
                .endsWith(mm(5215));
        assertThat(columns.marksFromLeftEdge(columns.rows().get(0))).startsWith(mm(150));
        assertThat(Columns.across(mm(5200), Samples.TILE, Ends.of(VERGE, WALL))
                        .rows()
                        .get(0))
                .hasToString("17 whole units, 1 half unit");
    }

    @Test
    void two_cuts_rather_than_a_sliver() {
        // 3130 = 10 x 300 + 30 + 100: one cut of 100 or 130 would be under half a unit
        Columns columns = Columns.across(mm(3130), Samples.TILE_WITHOUT_HALF);

        assertThat(columns.arrangement()).isEqualTo(Arrangement.CUT_AT_BOTH_ENDS);
        assertThat(columns.rows().get(0)).hasToString("1 cut unit 215 mm wide, 9 whole units, 1 cut unit 215 mm wide");
        assertThat(columns.working().disagreements()).isEmpty();
    }

    @Test
    void one_cut_where_it_is_wide_enough() {
        Columns columns = Columns.across(mm(3230), Samples.TILE_WITHOUT_HALF);

        assertThat(columns.arrangement()).isEqualTo(Arrangement.ONE_CUT);
        assertThat(columns.rows().get(0)).hasToString("1 cut unit 200 mm wide, 10 whole units");
        assertThat(columns.working().disagreements()).isEmpty();
    }

    @Test
    void a_sliver_is_laid_out_and_said() {
        LayoutScheme scheme = LayoutScheme.builder()
                .unit(Samples.TILE_WITHOUT_HALF)
                .headlap(Figure.given(mm(75)))
                .overhangIntoGutter(onSlope(mm(50)))
                .topDistance(mm(30))
                .left(FaceEnd.verge(mm(0)))
                .right(FaceEnd.verge(mm(0)))
                .smallestCut(Figure.given(mm(200)))
                .build();
        // 350 less 30 and 300 leaves 20; two cuts would be 175 each
        Attempt<Columns> attempt =
                FaceLayout.on(FlatShape.rectangle(mm(350), mm(3000)), scheme).columns();

        assertThat(attempt.orThrow().rows().get(0)).hasToString("1 cut unit 20 mm wide, 1 whole unit");
        assertThat(attempt.problems()).singleElement().hasToString("""
                        a cut of 20 mm at the left end cannot be avoided, 180 mm under the smallest cut of 200 mm
                          mend: covered width: 180 mm more; a cut of 200 mm
                          mend: covered width: 20 mm less; no cut
                          mend: cut: bonded or fixed to its neighbour; held although narrow""");
    }

    @Test
    void a_width_under_one_unit_is_a_finding() {
        assertThat(Columns.attemptAcross(mm(250), Samples.TILE, Ends.both(FaceEnd.verge(mm(0))))
                        .problems())
                .singleElement()
                .hasToString("""
                        the face is too narrow for a whole unit: at most 250 mm can be covered, and one unit covers 297 mm at least
                          mend: width: 47 mm more; 1 whole unit
                          mend: unit: one unit cut to 250 mm in each course; held at both sides""");
    }

    @Test
    void a_width_under_the_bond_is_a_finding() {
        assertThat(Columns.attemptAcross(mm(300), Samples.SLATE, Ends.both(FaceEnd.verge(mm(0))))
                        .problems())
                .singleElement()
                .hasToString("""
                        the face is too narrow for units in bond: at most 300 mm can be covered, and one unit covers 250 mm
                          mend: unit: a narrower one; joints broken in every course""");
    }

    @Test
    void a_width_that_is_no_width_is_an_error() {
        assertThat(Columns.attemptAcross(mm(-1), Samples.TILE, Ends.both(VERGE)).problems())
                .extracting(Problem::message)
                .containsExactly("width must be above 0 mm and at most 1000000 mm, but was -1 mm");
    }

    @Test
    void an_end_needs_room_round_what_is_wanted() {
        assertThatThrownBy(() -> FaceEnd.verge(mm(60), Range.closed(mm(38), mm(50))))
                .hasMessage("verge overhang must lie in [38 mm..50 mm], but was 60 mm");
        assertThatThrownBy(() -> FaceEnd.abutment(Range.atLeast(mm(5))))
                .hasMessage("gap at the abutment must have a least and a greatest size, but was [5 mm..)");
    }

    @Test
    void slates_keep_the_overhang_and_open_their_joints() {
        Columns columns = Columns.across(metres(6), Samples.SLATE, Ends.both(FaceEnd.verge(mm(50))));

        Row odd = columns.row(CourseKind.FULL, 1);
        Row even = columns.row(CourseKind.FULL, 2);
        assertThat(odd).hasToString("24 whole units");
        assertThat(even).hasToString("1 unit-and-a-half, 21 whole units, 1 unit-and-a-half");
        assertThat(columns.row(CourseKind.UNDER_EAVES, 0)).isEqualTo(even);
        assertThat(odd.joint()).contains(mm((6100 - 24 * 250) / 23.0));
        assertThat(even.joint()).contains(mm((6100 - 2 * 375 - 21 * 250) / 22.0));
        // the least sidelap: where the slate-and-a-half meets the first joint below, to the nanometre of storage
        assertThat(columns.sidelap().orElseThrow().toMillimetres()).isCloseTo(375 - (250 + 100 / 23.0), within(1e-6));
        assertThat(columns.marksFromLeftEdge(even)).startsWith(mm(375), mm(630)).endsWith(mm(5720), mm(6100));
        assertThat(columns.working().disagreements()).isEmpty();
    }

    @Test
    void an_odd_number_of_half_slates_ends_the_other_way_round() {
        Columns columns = Columns.across(mm(24 * 250 + 125 + 23 * 4), Samples.SLATE);

        assertThat(columns.row(CourseKind.FULL, 1)).hasToString("23 whole units, 1 unit-and-a-half");
        assertThat(columns.row(CourseKind.FULL, 2)).hasToString("1 unit-and-a-half, 23 whole units");
        assertThat(columns.working().disagreements()).isEmpty();
    }

    @Test
    void a_width_between_the_bonds_is_cut_from_wide_slates() {
        Columns columns = Columns.across(mm(3100), Samples.SLATE);

        assertThat(columns.row(CourseKind.FULL, 1)).hasToString("1 cut unit-and-a-half 317 mm wide, 11 whole units");
        assertThat(columns.row(CourseKind.FULL, 2))
                .hasToString("1 cut unit 192 mm wide, 10 whole units, 1 unit-and-a-half");
        assertThat(columns.narrowestCut().orElseThrow().width()).isEqualTo(mm(192));
        assertThat(columns.narrowestCut().orElseThrow().kind()).isEqualTo(PieceKind.CUT);
        assertThat(columns.working().disagreements()).isEmpty();
    }

    @Test
    void pieces_lie_side_by_side_from_edge_to_edge() {
        Columns columns = Columns.across(mm(7320), tileWithLeftVergeUnit(), Ends.both(VERGE));
        Row row = columns.rows().get(0);

        assertThat(row.pieces().get(0).from())
                .isEqualTo(columns.reachGot().left().negated());
        assertThat(IntStream.range(1, row.pieces().size()))
                .allMatch(i -> row.pieces()
                        .get(i)
                        .from()
                        .equals(row.pieces().get(i - 1).to()));
        assertThat(row.pieces().get(24).to()).isEqualTo(mm(7320 + 45 - 30));
    }
}
