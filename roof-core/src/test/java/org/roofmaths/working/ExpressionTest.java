package org.roofmaths.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.roofmaths.working.Expression.number;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.roofmaths.units.Length;
import org.roofmaths.units.Ratio;
import org.roofmaths.units.Rounding;

class ExpressionTest {
    private static final Term<Ratio> A = Term.of("a", "a", Ratio.class);
    private static final Term<Ratio> B = Term.of("b", "b", Ratio.class);
    private static final Map<Term<?>, Double> VALUES = Map.of(A, 3.0, B, 4.0);

    private static double value(Expression expression) {
        return expression.evaluate(VALUES::get);
    }

    @Test
    void brackets_only_where_the_reader_needs_them() {
        assertThat(A.plus(B).times(2).toText()).isEqualTo("(a + b) × 2");
        assertThat(A.times(B).plus(2).toText()).isEqualTo("a × b + 2");
        assertThat(A.minus(B.minus(1)).toText()).isEqualTo("a − (b − 1)");
        assertThat(A.minus(B).minus(1).toText()).isEqualTo("a − b − 1");
        assertThat(A.over(B.over(2)).toText()).isEqualTo("a ÷ (b ÷ 2)");
        assertThat(A.over(B.times(2)).toText()).isEqualTo("a ÷ (b × 2)");
        assertThat(A.plus(B).squared().toText()).isEqualTo("(a + b)²");
        assertThat(A.plus(B).negated().toText()).isEqualTo("−(a + b)");
        assertThat(A.squared().squareRoot().toText()).isEqualTo("√(a²)");
        assertThat(A.squareRoot().toText()).isEqualTo("√a");
        assertThat(A.plus(B).tan().toText()).isEqualTo("tan(a + b)");
        assertThat(A.arcTanOver(B).toText()).isEqualTo("arctan(a ÷ b)");
        assertThat(A.plus(B).timesToCover(A).toText()).isEqualTo("whole number up from ((a + b) ÷ a)");
        assertThat(A.least(B).toText()).isEqualTo("least of (a; b)");
        assertThat(A.times(0.5).toText()).isEqualTo("a × 0.5");
        assertThat(A.plus(B).toThe(1.25).toText()).isEqualTo("(a + b)^1.25");
        assertThat(A.toThe(B.minus(1)).times(2).toText()).isEqualTo("a^(b − 1) × 2");
        assertThat(A.over(B).naturalLog().toText()).isEqualTo("ln(a ÷ b)");
    }

    @Test
    void evaluates_every_operation() {
        assertThat(value(A.plus(B))).isEqualTo(3.0 + 4.0);
        assertThat(value(A.minus(B))).isEqualTo(3.0 - 4.0);
        assertThat(value(A.times(B))).isEqualTo(3.0 * 4.0);
        assertThat(value(A.over(B))).isEqualTo(3.0 / 4.0);
        assertThat(value(A.negated())).isEqualTo(-3.0);
        assertThat(value(A.squared().plus(B.squared()).squareRoot())).isEqualTo(5.0);
        assertThat(value(A.over(B).arcTan().tan())).isCloseTo(0.75, within(1e-15)); // rounding of the formula
        assertThat(value(A.arcTanOver(B).sin())).isCloseTo(0.6, within(1e-15));
        assertThat(value(A.arcTanOver(B).cos())).isCloseTo(0.8, within(1e-15));
        assertThat(value(A.negated().arcTanOver(B.negated()).tan())).isCloseTo(0.75, within(1e-15));
        assertThat(value(number(0.6).arcSin().sin())).isCloseTo(0.6, within(1e-15));
        assertThat(value(number(0.6).arcCos().cos())).isCloseTo(0.6, within(1e-15));
        assertThat(value(A.toThe(B))).isEqualTo(81.0);
        assertThat(value(B.toThe(0.5))).isEqualTo(2.0);
        assertThat(value(A.naturalLog())).isEqualTo(StrictMath.log(3));
        assertThat(value(A.least(B))).isEqualTo(3.0);
        assertThat(value(A.greatest(B))).isEqualTo(4.0);
        assertThat(value(A.over(B).roundedUp())).isEqualTo(1.0);
        assertThat(value(A.over(B).roundedDown())).isEqualTo(0.0);
    }

    @Test
    void counts_steps_at_the_storage_resolution() {
        // 3 m in steps of 0.3 m is 10; 100 nm more is still 10, 101 nm more is 11
        assertThat(value(number(3.0).timesToCover(number(0.3)))).isEqualTo(10);
        assertThat(value(number(3.0 + 1e-7 * 0.99).timesToCover(number(0.3)))).isEqualTo(10);
        assertThat(value(number(3.0 + 1.01e-7).timesToCover(number(0.3)))).isEqualTo(11);
        assertThat(value(number(3.0 - 0.99e-7).timesIn(number(0.3)))).isEqualTo(10);
        assertThat(value(number(3.0 - 1.01e-7).timesIn(number(0.3)))).isEqualTo(9);
    }

    @Test
    void rounds_a_length_by_a_named_rule() {
        Rounding<Length> upToFive = Rounding.upToMultipleOf(Length.ofMillimetres(5));

        assertThat(value(number(0.151).rounded(upToFive))).isEqualTo(0.155);
        assertThat(A.plus(B).rounded(upToFive).toText()).isEqualTo("a + b, rounded " + upToFive);
    }

    @Test
    void refuses_a_number_that_is_not_finite() {
        assertThatThrownBy(() -> number(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a number in a formula must be finite, but was NaN");
    }

    @Test
    void refuses_a_term_without_a_name() {
        assertThatThrownBy(() -> Term.of(" ", "x", Length.class))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a term needs a name and a symbol, but was \" \", \"x\"");
    }
}
