package org.roofmaths.settingout.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.mm;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.roofmaths.problem.Attempt;
import org.roofmaths.roof.Ends;
import org.roofmaths.settingout.Arrangement;
import org.roofmaths.settingout.Columns;
import org.roofmaths.settingout.FaceEnd;
import org.roofmaths.settingout.Piece;
import org.roofmaths.settingout.PieceKind;
import org.roofmaths.settingout.Row;
import org.roofmaths.settingout.Samples;
import org.roofmaths.units.Length;
import org.roofmaths.units.Range;

class ColumnsProperties {
    private static final FaceEnd VERGE = FaceEnd.verge(mm(45), Range.closed(mm(38), mm(50)));

    @Property
    void single_lap_pieces_cover_the_width_without_a_gap(@ForAll @DoubleRange(min = 300, max = 20_000) double wall) {
        Columns columns = Columns.across(mm(wall), Samples.TILE, Ends.both(VERGE));
        List<Piece> pieces = columns.rows().get(0).pieces();

        assertThat(pieces.get(0).from()).isEqualTo(columns.reachGot().left().negated());
        for (int i = 1; i < pieces.size(); i++) {
            assertThat(pieces.get(i).from()).isEqualTo(pieces.get(i - 1).to());
        }
        Length end = pieces.get(pieces.size() - 1).to();
        boolean cutAtRight = pieces.get(pieces.size() - 1).kind().isCut();
        assertThat(end.plus(cutAtRight ? Length.ZERO : mm(30)))
                .isEqualTo(mm(wall).plus(columns.reachGot().right()));
        assertThat(VERGE.room().contains(columns.reachGot().left())).isTrue();
        assertThat(VERGE.room().contains(columns.reachGot().right())).isTrue();
        assertThat(columns.working().disagreements()).isEmpty();
    }

    @Property
    void covers_stay_inside_the_shunt_and_cuts_are_wide_enough(@ForAll @IntRange(min = 300, max = 20_000) int wall) {
        Attempt<Columns> attempt = Columns.attemptAcross(mm(wall), Samples.TILE, Ends.both(VERGE));
        Columns columns = attempt.orThrow();

        for (Piece piece : columns.rows().get(0).pieces()) {
            if (piece.kind() == PieceKind.WHOLE) {
                // the share of one unit is stored to the nearest nanometre
                assertThat(piece.width().meetsLeast(mm(297)) && piece.width().meetsGreatest(mm(303)))
                        .isTrue();
            } else if (piece.kind().isCut()) {
                assertThat(piece.width().meetsLeast(mm(150))).isTrue();
            }
        }
        assertThat(attempt.problems()).isEmpty();
    }

    @Property
    void whole_units_are_found_whenever_a_search_of_every_millimetre_finds_them(
            @ForAll @IntRange(min = 300, max = 9000) int wall) {
        Columns columns = Columns.across(mm(wall), Samples.TILE, Ends.both(VERGE));

        boolean found = false;
        boolean half = false;
        for (int overhangs = 76; overhangs <= 100; overhangs++) {
            for (int n = 1; n <= 31; n++) {
                // in units of a millimetre over n, so that no cover between whole millimetres is missed
                int forUnits = wall + overhangs - 30;
                found |= forUnits >= 297 * n && forUnits <= 303 * n;
                half |= forUnits - 150 >= 297 * n && forUnits - 150 <= 303 * n;
            }
        }
        assertThat(columns.arrangement() == Arrangement.WHOLE_UNITS).isEqualTo(found);
        assertThat(columns.arrangement() == Arrangement.HALF_UNIT).isEqualTo(half && !found);
    }

    @Property
    void slates_keep_joints_bond_and_edges(@ForAll @DoubleRange(min = 1100, max = 20_000) double width) {
        Columns columns = Columns.across(mm(width), Samples.SLATE);

        for (Row row : columns.rows()) {
            List<Piece> pieces = row.pieces();
            assertThat(pieces.get(0).from()).isEqualTo(Length.ZERO);
            // joints share what the units leave, each stored to the nearest nanometre
            assertThat(pieces.get(pieces.size() - 1).to().minus(mm(width)).abs().compareTo(Length.ofNanometres(1)))
                    .isLessThanOrEqualTo(0);
            for (int i = 1; i < pieces.size(); i++) {
                Length joint = pieces.get(i).from().minus(pieces.get(i - 1).to());
                assertThat(joint.meetsLeast(mm(3)) && joint.meetsGreatest(mm(5)))
                        .isTrue();
            }
        }
        // half bond, less the play that joints of 3 to 5 mm give over the width and what a cut edge takes
        if (columns.arrangement() == Arrangement.WHOLE_UNITS) {
            assertThat(columns.sidelap().orElseThrow().meetsLeast(mm(250 / 3.0)))
                    .isTrue();
        }
        assertThat(columns.working().disagreements()).isEmpty();
    }

    @Property
    void the_sidelap_is_the_nearest_pair_of_joints(@ForAll @DoubleRange(min = 1100, max = 6000) double width) {
        Columns columns = Columns.across(mm(width), Samples.SLATE);

        List<Piece> a = columns.rows().get(0).pieces();
        List<Piece> b = columns.rows().get(1).pieces();
        Length least = mm(1e6);
        for (int i = 1; i < a.size(); i++) {
            for (int j = 1; j < b.size(); j++) {
                Length right = b.get(j - 1).to().minus(a.get(i).from());
                Length left = a.get(i - 1).to().minus(b.get(j).from());
                least = least.min(right.max(left));
            }
        }
        assertThat(columns.sidelap()).contains(least);
    }

    @Property
    void mirroring_the_ends_mirrors_the_row(@ForAll @IntRange(min = 1100, max = 12_000) int wall) {
        FaceEnd gap = FaceEnd.abutment(Range.closed(mm(0), mm(10)));
        Row here = Columns.across(mm(wall), Samples.SLATE, Ends.of(gap, VERGE))
                .rows()
                .get(0);
        Row there = Columns.across(mm(wall), Samples.SLATE, Ends.of(VERGE, gap))
                .rows()
                .get(0);

        List<Length> widths = here.pieces().stream().map(Piece::width).toList();
        List<Length> mirrored =
                new ArrayList<>(there.pieces().stream().map(Piece::width).toList());
        Collections.reverse(mirrored);
        boolean sameBond = here.pieces().stream().allMatch(piece -> piece.kind() == PieceKind.WHOLE)
                || here.cut().isPresent();
        if (sameBond) {
            assertThat(mirrored).isEqualTo(widths);
        } else {
            assertThat(mirrored).hasSameSizeAs(widths);
        }
    }
}
