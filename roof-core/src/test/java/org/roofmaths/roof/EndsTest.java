package org.roofmaths.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.roofmaths.units.Quantities.mm;

import org.junit.jupiter.api.Test;
import org.roofmaths.units.Length;

class EndsTest {
    private final Ends<Length> ends = Ends.of(mm(3912), mm(3897));

    @Test
    void keeps_left_and_right_apart() {
        assertThat(ends.at(End.LEFT)).isEqualTo(mm(3912));
        assertThat(ends.at(End.RIGHT)).isEqualTo(mm(3897));
        assertThat(ends.isEqual()).isFalse();
        assertThat(ends).hasToString("3912 mm left, 3897 mm right");
        assertThat(ends.mirrored()).isEqualTo(Ends.of(mm(3897), mm(3912)));
    }

    @Test
    void works_out_each_end_from_its_own() {
        assertThat(ends.map(length -> length.dividedBy(3))).isEqualTo(Ends.of(mm(1304), mm(1299)));
        assertThat(ends.combine(Ends.of(mm(12), mm(-3)), Length::minus)).isEqualTo(Ends.both(mm(3900)));
    }

    @Test
    void two_equal_ends_say_so() {
        assertThat(Ends.both(mm(326)).isEqual()).isTrue();
        assertThat(Ends.both(mm(326))).hasToString("326 mm at both ends");
    }

    @Test
    void each_end_knows_the_other() {
        assertThat(End.LEFT.opposite()).isEqualTo(End.RIGHT).hasToString("right");
        assertThat(End.RIGHT.opposite()).isEqualTo(End.LEFT).hasToString("left");
    }

    @Test
    void an_end_without_anything_is_refused() {
        assertThatThrownBy(() -> Ends.of(null, mm(1)))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("left");
        assertThatThrownBy(() -> Ends.of(mm(1), null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("right");
    }
}
