package org.roofmaths.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.working.Rafter.LENGTH;
import static org.roofmaths.working.Rafter.PITCH;
import static org.roofmaths.working.Rafter.RISE;
import static org.roofmaths.working.Rafter.RUN;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

class WorkingTest {
    // 3-4-5: a rise of 3 in a run of 4 gives a length of 5, so a run of 4000 mm gives 3000 and 5000 mm
    private static final Length FOUR_METRES = Length.ofMillimetres(4000);
    private static final Pitch THREE_IN_FOUR = Pitch.ofRiseAndRun(Length.ofMillimetres(3), Length.ofMillimetres(4));
    private static final Citation CITATION = Citation.builder()
            .kind(SourceKind.STANDARD)
            .title("Example code")
            .edition("2018")
            .locus("table 4 row 2")
            .rowId("pitch.example")
            .asPrinted("3 in 4")
            .provenance(Provenance.QUOTED)
            .build();

    private final Rafter rafter = new Rafter(Given.of(FOUR_METRES), Sourced.of(THREE_IN_FOUR, CITATION));

    @Test
    void replays_the_stored_value_with_its_steps() {
        Worked<Length> length = rafter.working().at(LENGTH);

        assertThat(length.value()).isEqualTo(rafter.length()).isEqualTo(Length.ofMillimetres(5000));
        assertThat(rafter.working().at(RISE).value()).isEqualTo(Length.ofMillimetres(3000));
        assertThat(length.formula().toText()).isEqualTo("test length = √(test run² + test rise²)");
        assertThat(length.inputs()).extracting(Input::term).containsExactly(RUN, RISE);
        assertThat(rafter.working().disagreements()).isEmpty();
    }

    @Test
    void prints_each_step_under_the_number_it_leads_to() {
        assertThat(rafter.working().toText()).isEqualTo("""
                test length = √(test run² + test rise²)
                  test run = 4000 mm  (given)
                  test rise = test run × tan(test pitch)
                    test run = 4000 mm  (given)
                    test pitch = %s  (Example code, edition 2018, table 4 row 2 (standard; quoted))
                  = 3000 mm
                  note: to the ridge line; no allowance for the ridge board
                = 5000 mm
                """.formatted(THREE_IN_FOUR));
    }

    @Test
    void prints_markdown_as_nested_lists() {
        assertThat(rafter.working().toMarkdown()).isEqualTo("""
                - test length = `√(test run² + test rise²)`
                  - test run = 4000 mm  (given)
                  - test rise = `test run × tan(test pitch)`
                    - test run = 4000 mm  (given)
                    - test pitch = %s  (Example code, edition 2018, table 4 row 2 (standard; quoted))
                    - **= 3000 mm**
                  - note: to the ridge line; no allowance for the ridge board
                  - **= 5000 mm**
                """.formatted(THREE_IN_FOUR));
    }

    @Test
    void letters_the_blanks_and_keeps_their_answers_in_the_key() {
        Working sheet = rafter.working().blanked(RISE, LENGTH);

        assertThat(sheet.toText()).isEqualTo("""
                test length = √(test run² + test rise²)
                  test run = 4000 mm  (given)
                  test rise = test run × tan(test pitch)
                    test run = 4000 mm  (given)
                    test pitch = %s  (Example code, edition 2018, table 4 row 2 (standard; quoted))
                  = (a) ________
                  note: to the ridge line; no allowance for the ridge board
                = (b) ________
                """.formatted(THREE_IN_FOUR));
        assertThat(sheet.key())
                .containsExactly(
                        new Blank("a", RISE, Length.ofMillimetres(3000)),
                        new Blank("b", LENGTH, Length.ofMillimetres(5000)));
        assertThat(sheet.toTree().toString()).doesNotContain("5000").doesNotContain("3000");
    }

    @Test
    void refuses_to_blank_a_term_that_does_not_occur() {
        Term<Length> other = Term.of("test other", "o", Length.class);

        assertThatThrownBy(() -> rafter.working().blanked(other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no \"test other\" in this working; it has: test length, test run, test rise, test pitch");
    }

    @Test
    void names_the_terms_there_are_when_asked_for_another() {
        assertThatThrownBy(() -> rafter.working().at(RUN.at("left")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no \"test run (left)\" in this working; it has: test length, test rise");
    }

    @Test
    void lists_the_figures_that_were_not_worked_out_and_the_weakest_ground() {
        assertThat(rafter.working().inputs())
                .containsExactly(
                        new Input(RUN, Given.of(FOUR_METRES)), new Input(PITCH, Sourced.of(THREE_IN_FOUR, CITATION)));
        assertThat(rafter.working().weakestProvenance()).contains(Provenance.QUOTED);
    }

    @Test
    void carries_an_earlier_answer_into_a_later_sum() {
        Rafter second = new Rafter(rafter.working().at(LENGTH), Given.of(THREE_IN_FOUR));

        // 5000 × 5/4
        assertThat(second.length()).isEqualTo(Length.ofMillimetres(6250));
        assertThat(second.working().weakestProvenance()).contains(Provenance.QUOTED);
        assertThat(second.working().toText()).contains("""
                  test run = test length
                    test length = √(test run² + test rise²)
                """);
        assertThat(second.working().toText()).contains("test run = test length = 5000 mm  (above)");
        assertThat(second.working().disagreements()).isEmpty();
    }

    @Test
    void writes_a_tree_of_plain_maps() {
        Map<String, Object> tree = rafter.working().toTree();

        assertThat(tree)
                .containsEntry("format", "roof-maths working")
                .containsEntry("version", 1)
                .containsEntry("weakestProvenance", "quoted");
        assertThat(tree.get("results"))
                .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.LIST)
                .hasSize(1);
        @SuppressWarnings("unchecked")
        Map<String, Object> length = ((List<Map<String, Object>>) tree.get("results")).get(0);
        assertThat(length)
                .containsEntry("term", "test length")
                .containsEntry("symbol", "L")
                .containsEntry("value", "5000 mm")
                .containsEntry("si", 5.0)
                .containsEntry("kind", "worked")
                .containsEntry("formula", "test length = √(test run² + test rise²)")
                .containsEntry("notes", List.of("to the ridge line; no allowance for the ridge board"));
    }

    @Test
    void keeps_numbers_of_two_places_apart() {
        Working both = Working.of(r -> {
            r.use(PITCH, THREE_IN_FOUR);
            for (String place : List.of("left", "right")) {
                Recorder at = r.at(place);
                at.use(RUN, place.equals("left") ? FOUR_METRES : FOUR_METRES.times(2));
                at.record(
                        RISE,
                        THREE_IN_FOUR.riseOver(place.equals("left") ? FOUR_METRES : FOUR_METRES.times(2)),
                        Formula.of(RISE, RUN.times(PITCH.tan())));
            }
        });

        assertThat(both.at(RISE.at("left")).value()).isEqualTo(Length.ofMillimetres(3000));
        assertThat(both.at(RISE.at("right")).value()).isEqualTo(Length.ofMillimetres(6000));
        assertThat(both.disagreements()).isEmpty();
        assertThat(both.toText())
                .startsWith("test rise (left) = test run × tan(test pitch)\n  test run (left) = 4000 mm  (given)\n");
    }

    @Test
    void finds_a_formula_that_does_not_give_the_recorded_value() {
        Working wrong = Working.of(r -> {
            r.use(RUN, FOUR_METRES);
            r.record(LENGTH, FOUR_METRES, Formula.of(LENGTH, RUN.times(2)));
        });

        assertThat(wrong.disagreements())
                .containsExactly("test length: recorded 4000 mm (4.0 in SI units), but the formula"
                        + " \"test length = test run × 2\" gives 8.0");
    }

    @Test
    void refuses_a_formula_whose_symbol_has_no_figure() {
        assertThatThrownBy(() -> Working.of(r -> r.record(LENGTH, FOUR_METRES, Formula.of(LENGTH, RUN.times(2)))))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage(
                        "the formula \"test length = test run × 2\" names \"test run\", which was neither used nor recorded before");
    }

    @Test
    void a_single_number_shows_the_same_working_as_the_thing_it_belongs_to() {
        Worked<Length> single = Rafter.lengthOf(Given.of(FOUR_METRES), Sourced.of(THREE_IN_FOUR, CITATION));

        assertThat(single.value()).isEqualTo(Length.ofMillimetres(5000));
        assertThat(single.working().toText()).isEqualTo(rafter.working().toText());
        assertThat(single)
                .isEqualTo(rafter.working().at(LENGTH))
                .hasSameHashCodeAs(rafter.working().at(LENGTH));
        assertThat(single).hasToString("test length = 5000 mm");
    }

    @Test
    void survives_serialization() throws Exception {
        Working working = rafter.working();

        assertThat(copy(working)).isEqualTo(working).hasToString(working.toText());
        Worked<Length> single = Rafter.lengthOf(Given.of(FOUR_METRES), Sourced.of(THREE_IN_FOUR, CITATION));
        assertThat(copy(single)).isEqualTo(single);
    }

    @SuppressWarnings("unchecked")
    private static <T> T copy(T value) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(value);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (T) in.readObject();
        }
    }
}
