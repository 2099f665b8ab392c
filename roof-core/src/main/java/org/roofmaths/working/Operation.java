package org.roofmaths.working;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Length;
import org.roofmaths.units.Rounding;

/** An operator with its one or two operands, or a length with the rule by which it is rounded. */
final class Operation implements Expression {
    private static final long serialVersionUID = 1L;

    private final Operator operator;
    private final List<Expression> operands;
    private final @Nullable Rounding<?> rounding;

    private Operation(Operator operator, List<Expression> operands, @Nullable Rounding<?> rounding) {
        this.operator = operator;
        this.operands = operands;
        this.rounding = rounding;
    }

    static Operation of(Operator operator, Expression... operands) {
        return new Operation(operator, List.of(operands), null);
    }

    static Operation rounded(Expression operand, Rounding<?> rounding) {
        return new Operation(Operator.ROUNDED, List.of(operand), Objects.requireNonNull(rounding, "rounding"));
    }

    @Override
    public double evaluate(ToDoubleFunction<Term<?>> values) {
        double a = operands.get(0).evaluate(values);
        if (rounding != null) {
            // the only rounded quantities in formulas are lengths: marks, pieces, heights
            @SuppressWarnings("unchecked")
            Rounding<Length> ofLengths = (Rounding<Length>) rounding;
            return ofLengths.apply(Length.ofMetres(a)).toSi();
        }
        return operator.apply(a, operands.size() > 1 ? operands.get(1).evaluate(values) : 0);
    }

    @Override
    public void collectTerms(Set<Term<?>> into) {
        operands.forEach(operand -> operand.collectTerms(into));
    }

    @Override
    public String toText() {
        return switch (operator) {
            case PLUS, TIMES -> inner(0, false) + operator.sign + inner(1, false);
            case MINUS, OVER -> inner(0, false) + operator.sign + inner(1, true);
            case NEGATED -> operator.sign + inner(0, true);
            case SQUARED -> inner(0, true) + operator.sign;
            case POWER -> inner(0, true) + operator.sign + inner(1, true);
            case SQUARE_ROOT -> operands.get(0) instanceof Operation ? "√(" + text(0) + ")" : "√" + text(0);
            case TIMES_TO_COVER, TIMES_IN ->
                operator.sign + " (" + inner(0, Operator.OVER, false) + " ÷ " + inner(1, Operator.OVER, true) + ")";
            case ARC_TAN_2 ->
                operator.sign + "(" + inner(0, Operator.OVER, false) + " ÷ " + inner(1, Operator.OVER, true) + ")";
            case LEAST, GREATEST -> operator.sign + " (" + text(0) + "; " + text(1) + ")";
            case ROUNDED_UP, ROUNDED_DOWN -> operator.sign + " (" + text(0) + ")";
            case ROUNDED -> text(0) + ", rounded " + rounding;
            default -> operator.sign + "(" + text(0) + ")";
        };
    }

    private String text(int index) {
        return operands.get(index).toText();
    }

    private String inner(int index, boolean bracketEqual) {
        return inner(index, operator, bracketEqual);
    }

    private String inner(int index, Operator outer, boolean bracketEqual) {
        Expression operand = operands.get(index);
        if (operand instanceof Operation o
                && (o.operator.binding < outer.binding || (bracketEqual && o.operator.binding == outer.binding))) {
            return "(" + o.toText() + ")";
        }
        return operand.toText();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Operation o
                && operator == o.operator
                && operands.equals(o.operands)
                && Objects.equals(rounding, o.rounding);
    }

    @Override
    public int hashCode() {
        return Objects.hash(operator, operands, rounding);
    }

    @Override
    public String toString() {
        return toText();
    }
}
