package org.roofmaths.working;

/** What an operation does, how tightly it binds, and how it is written. */
enum Operator {
    PLUS(1, " + "),
    MINUS(1, " − "),
    TIMES(2, " × "),
    OVER(2, " ÷ "),
    NEGATED(3, "−"),
    SQUARED(4, "²"),
    POWER(4, "^"),
    SQUARE_ROOT(5, "√"),
    SIN(5, "sin"),
    COS(5, "cos"),
    TAN(5, "tan"),
    ARC_SIN(5, "arcsin"),
    ARC_COS(5, "arccos"),
    ARC_TAN(5, "arctan"),
    ARC_TAN_2(5, "arctan"),
    NATURAL_LOG(5, "ln"),
    LEAST(5, "least of"),
    GREATEST(5, "greatest of"),
    ROUNDED_UP(5, "whole number up from"),
    ROUNDED_DOWN(5, "whole number down from"),
    TIMES_TO_COVER(5, "whole number up from"),
    TIMES_IN(5, "whole number down from"),
    ROUNDED(0, ", rounded ");

    /** Lengths nearer than this to a whole count are that count: the storage resolution of a length, in metres. */
    private static final double RESOLUTION = org.roofmaths.units.Length.STORAGE_RESOLUTION.toMetres();

    final int binding;
    final String sign;

    Operator(int binding, String sign) {
        this.binding = binding;
        this.sign = sign;
    }

    double apply(double a, double b) {
        return switch (this) {
            case PLUS -> a + b;
            case MINUS -> a - b;
            case TIMES -> a * b;
            case OVER -> a / b;
            case NEGATED -> -a;
            case SQUARED -> a * a;
            case POWER -> StrictMath.pow(a, b);
            case SQUARE_ROOT -> StrictMath.sqrt(a);
            case SIN -> StrictMath.sin(a);
            case COS -> StrictMath.cos(a);
            case TAN -> StrictMath.tan(a);
            case ARC_SIN -> StrictMath.asin(a);
            case ARC_COS -> StrictMath.acos(a);
            case ARC_TAN -> StrictMath.atan(a);
            case ARC_TAN_2 -> StrictMath.atan2(a, b);
            case NATURAL_LOG -> StrictMath.log(a);
            case LEAST -> StrictMath.min(a, b);
            case GREATEST -> StrictMath.max(a, b);
            case ROUNDED_UP -> StrictMath.ceil(a);
            case ROUNDED_DOWN -> StrictMath.floor(a);
            case TIMES_TO_COVER -> StrictMath.ceil((a - RESOLUTION) / b);
            case TIMES_IN -> StrictMath.floor((a + RESOLUTION) / b);
            case ROUNDED -> throw new IllegalStateException("a rounding is applied to a length, not to a bare number");
        };
    }
}
