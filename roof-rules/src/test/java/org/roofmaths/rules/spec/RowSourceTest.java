package org.roofmaths.rules.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.pitch;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.rules.Check;
import org.roofmaths.rules.Edition;
import org.roofmaths.rules.Facts;
import org.roofmaths.rules.Outcome;
import org.roofmaths.rules.RowSource;
import org.roofmaths.rules.Rules;
import org.roofmaths.rules.Situation;
import org.roofmaths.rules.Subjects;
import org.roofmaths.units.Pitch;

/** A caller's own rows. All figures here are invented for this test. */
class RowSourceTest {
    private static final String COLUMNS =
            "id,subject,unit_kind,pitch,value,unit,as_printed,locus,provenance,source,source_edition,source_kind\n";
    private static final String SOURCE = ",page 2,read,Data sheet (invented),2026,trade-practice\n";
    private static final String GOOD =
            COLUMNS + "own.pitch,least-pitch,concrete-single-lap-tile,any,17.5,deg,17.5°" + SOURCE;

    private static RowSource read(String text) {
        return RowSource.of("own-tiles", new StringReader(text));
    }

    private static List<String> problemsOf(String text) {
        return RowSource.attempt("own-tiles", new StringReader(text)).problems().stream()
                .map(Problem::message)
                .toList();
    }

    @Test
    void own_rows_are_a_document_beside_ours_with_their_own_source() {
        Rules rules = Rules.of("gb").including(read(GOOD));
        Edition own = rules.edition("own-tiles", "own");
        Check<Pitch> check = own.check(
                Subjects.LEAST_PITCH,
                Situation.of(UnitKind.CONCRETE_SINGLE_LAP_TILE).withPitch(pitch("20°")));
        assertThat(check)
                .hasToString("Meets row own.pitch by 2.5° (14.3 %): pitch 20°, at least 17.5° asked."
                        + " Data sheet (invented), edition 2026, page 2 (trade practice; read).");
        assertThat(rules.edition("nhbc-standards", "2020"))
                .isEqualTo(Rules.of("gb").edition("nhbc-standards", "2020"));
    }

    @Test
    void own_rows_are_asked_before_ours_only_where_the_caller_puts_them_there() {
        RowSource own = read(GOOD);
        Edition ours = Rules.of("gb").edition("nhbc-standards", "2020");
        Situation roof = Situation.of(UnitKind.CONCRETE_SINGLE_LAP_TILE).withPitch(pitch("20°"));
        assertThat(ours.check(Subjects.LEAST_PITCH, roof).outcome()).isEqualTo(Outcome.FALLS_SHORT);
        assertThat(own.edition()
                        .backedBy(ours)
                        .check(Subjects.LEAST_PITCH, roof)
                        .outcome())
                .isEqualTo(Outcome.MEETS);
        assertThat(ours.backedBy(own.edition())
                        .check(Subjects.LEAST_PITCH, roof)
                        .outcome())
                .isEqualTo(Outcome.FALLS_SHORT);
    }

    @Test
    void own_rows_may_not_take_the_name_of_a_document_of_ours() {
        RowSource own = RowSource.of("bs-5534", new StringReader(GOOD));
        assertThatThrownBy(() -> Rules.of("gb").including(own))
                .isInstanceOf(ProblemsException.class)
                .hasMessage("name of own rows must not be that of a document there is already, but was bs-5534");
    }

    @Test
    void the_name_must_be_a_short_one() {
        assertThatThrownBy(() -> RowSource.of("Own Tiles", new StringReader(GOOD)))
                .hasMessage(
                        "name must be lower-case words parted by hyphens, such as own-tiles, but was \"Own Tiles\"");
    }

    @Test
    void a_byte_order_mark_line_ends_of_both_kinds_quotes_blanks_and_comments_are_read() {
        String text = "\uFEFF# invented rows\r\n" + COLUMNS.replace("\n", "\r\n")
                + "own.a,least-pitch,\"clay-plain-tile/concrete-plain-tile\",any,\"36\",deg,\"36, as said\",page 2 ,read,"
                + "\"Data \"\"sheet\"\"\",2026,standard\r\n\r\n";
        RowSource own = read(text);
        assertThat(own).hasToString("own-tiles: 1 row");
        assertThat(own.edition().rows(Subjects.LEAST_PITCH).get(0))
                .hasToString("least pitch: 36° (own.a; Data \"sheet\", edition 2026, page 2 (standard; read))");
        assertThat(own.edition().rows(Subjects.LEAST_PITCH).get(0).asPrinted()).isEqualTo("36, as said");
    }

    @Test
    void the_reader_is_left_open() throws IOException {
        Reader reader = new StringReader(GOOD);
        RowSource.of("own-tiles", reader);
        assertThat(reader.read()).isEqualTo(-1);
    }

    @Test
    void every_bad_cell_is_reported_with_line_and_column() {
        String text = COLUMNS
                + "own.a,least-pitch,slab,[35°..30°),17.5,furlong,17.5°,page 2,seen,Data sheet,2026,leaflet\n"
                + "own.b,least-peach,any,any,17.5,deg,17.5°" + SOURCE
                + "own.c,least-pitch,any,any,steep,deg,17.5°" + SOURCE;
        assertThat(problemsOf(text))
                .containsExactly(
                        "own-tiles, line 2, column unit_kind must be any, or concrete-single-lap-tile,"
                                + " clay-single-lap-tile, clay-pantile, concrete-plain-tile, clay-plain-tile,"
                                + " natural-slate, fibre-cement-slate, concrete-slate, stone-slate,"
                                + " several parted by /, but was slab",
                        "own-tiles, line 2, column pitch must be any, or a pitch or a range such as [30°..35°),"
                                + " but was [35°..30°)",
                        "own-tiles, line 2, column provenance must be one of read, quoted, memory, practice, derived,"
                                + " but was seen",
                        "own-tiles, line 2, column source_kind must be one of law, guidance-to-law, standard,"
                                + " warranty-condition, trade-practice, historic, but was leaflet",
                        "own-tiles, line 2, column unit must be one of deg, %, for least pitch, but was furlong",
                        "own-tiles, line 3, column subject must be one of "
                                + Subjects.all().stream()
                                        .map(subject -> subject.id())
                                        .sorted()
                                        .collect(Collectors.joining(", "))
                                + ", but was least-peach",
                        "own-tiles, line 4, column value must be a pitch in deg, or none, but was steep");
    }

    @Test
    void one_bad_cell_refuses_the_whole() {
        assertThat(RowSource.attempt("own-tiles", new StringReader(GOOD + "own.b,least-pitch,any,any,x,deg,x" + SOURCE))
                        .value())
                .isEmpty();
    }

    @Test
    void a_blank_is_an_error() {
        assertThat(problemsOf(COLUMNS + "own.a,least-pitch,,any,17.5,deg,17.5°" + SOURCE))
                .containsExactly(
                        "own-tiles, line 2, column unit_kind must not be blank; write - for nothing, but was \"\"");
    }

    @Test
    void a_missing_and_an_unknown_column_are_reported() {
        String text = GOOD.replace("unit_kind", "colour").replace(",locus", "").replace(",page 2", "");
        assertThat(problemsOf(text))
                .containsExactly(
                        "own-tiles, line 1 must have a column locus, but was id, subject, colour, pitch, value, unit,"
                                + " as_printed, provenance, source, source_edition, source_kind",
                        "own-tiles, line 1, column 3 must be one of id, value, unit, as_printed, locus, provenance, subject,"
                                + " source, source_edition, source_kind, confirm, note or a fact: "
                                + Facts.all().stream()
                                        .map(fact -> fact.id())
                                        .sorted()
                                        .collect(Collectors.joining(", "))
                                + ", but was \"colour\"");
    }

    @Test
    void a_column_named_twice_is_refused() {
        assertThat(problemsOf(GOOD.replace("pitch,value", "unit_kind,value")))
                .containsExactly(
                        "own-tiles, line 1 must name every column once, but was id, subject, unit_kind, unit_kind,"
                                + " value, unit, as_printed, locus, provenance, source, source_edition, source_kind");
    }

    @Test
    void a_row_with_another_number_of_cells_is_refused() {
        assertThat(problemsOf(GOOD + "own.b,least-pitch,any\n"))
                .containsExactly("own-tiles, line 3 must have 12 cells, as the first line has, but was 3 cells");
    }

    @Test
    void duplicate_ids_are_refused() {
        String text = COLUMNS
                + "own.a,least-pitch,clay-plain-tile,any,36,deg,36" + SOURCE
                + "own.a,least-pitch,concrete-plain-tile,any,36,deg,36" + SOURCE;
        assertThat(problemsOf(text))
                .containsExactly(
                        "own-tiles, line 3, column id must be an id of its own (line 2 has it), but was own.a");
    }

    @Test
    void overlapping_ranges_are_refused_and_ranges_that_join_are_not() {
        String text = COLUMNS
                + "own.a,least-headlap,any,[20°..30°],100,mm,100" + SOURCE
                + "own.b,least-headlap,any,[30°..45°),80,mm,80" + SOURCE;
        assertThat(problemsOf(text))
                .containsExactly(
                        "own-tiles, line 3 must not hold in a case in which own.a of line 2 holds, but was own.b");
        assertThat(read(text.replace("30°]", "30°)"))).hasToString("own-tiles: 2 rows");
    }

    @Test
    void quotes_that_do_not_close_are_refused() {
        assertThat(problemsOf(GOOD + "own.b,\"least-pitch,any\n"))
                .containsExactly(
                        "own-tiles must be rows of comma-separated cells, but was a cell after line 2 whose quotes"
                                + " do not close or with more than 65536 characters");
        assertThat(problemsOf(COLUMNS + "own.a,\"least\"x,any\n"))
                .containsExactly(
                        "own-tiles must be rows of comma-separated cells, but was a cell after line 0 whose quotes"
                                + " do not close or with more than 65536 characters");
    }

    @Test
    void no_rows_are_refused() {
        assertThat(problemsOf(COLUMNS))
                .containsExactly("own-tiles must have a line of column names and at least one row, but was no row");
        assertThat(problemsOf("")).isEqualTo(problemsOf(COLUMNS));
    }

    @Test
    void more_rows_than_the_stated_count_are_refused_without_reading_them_all() {
        EndlessRows endless = new EndlessRows();
        assertThat(RowSource.attempt("own-tiles", endless).problems())
                .extracting(Problem::message)
                .containsExactly("own-tiles must be rows of comma-separated cells, but was more than "
                        + RowSource.GREATEST_ROW_COUNT + " rows");
        assertThat(endless.rows).isLessThan(2 * RowSource.GREATEST_ROW_COUNT);
    }

    @Test
    void a_cell_without_end_is_refused_in_bounded_memory() {
        Reader endless = new Reader() {
            @Override
            public int read(char[] into, int from, int count) {
                java.util.Arrays.fill(into, from, from + count, 'x');
                return count;
            }

            @Override
            public void close() {}
        };
        assertThat(RowSource.attempt("own-tiles", endless).problems())
                .extracting(Problem::message)
                .containsExactly(
                        "own-tiles must be rows of comma-separated cells, but was a cell after line 0 whose quotes"
                                + " do not close or with more than 65536 characters");
    }

    /** A million rows would be no different: the text has no end. */
    private static final class EndlessRows extends Reader {
        private StringReader line = new StringReader(COLUMNS);
        private int rows;

        @Override
        public int read(char[] into, int from, int count) throws IOException {
            int got = line.read(into, from, count);
            if (got >= 0) {
                return got;
            }
            rows++;
            line = new StringReader("own." + rows + ",least-pitch,any,any,17.5,deg,17.5°" + SOURCE);
            return line.read(into, from, count);
        }

        @Override
        public void close() {}
    }
}
