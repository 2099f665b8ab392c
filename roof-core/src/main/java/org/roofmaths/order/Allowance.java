package org.roofmaths.order;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Ratio;
import org.roofmaths.working.Figure;

/**
 * What is ordered over the net amount for one cause: a share of the net amount, or an amount.
 *
 * <p>The share is the caller's; {@link AllowanceHint} shows what is common. All shares of an item are added and applied once: 3 per
 * cent and 2 per cent of 187 tiles are 9.35 tiles. An amount, such as the 6 tiles that a cutting list asks for, is added as it is.
 *
 * <p>An allowance is checked with the {@link OrderTerms} it becomes part of, so that every problem is told at once. A share must be from 0
 * to 100 per cent: more is nearly always a percentage written as a number (5 for 0.05). Who wants more than twice the net amount
 * gives the extra as an amount.
 *
 * @since 0.1
 */
public final class Allowance implements Serializable {
    private static final long serialVersionUID = 1L;

    /** A share below nothing or above the whole. */
    public static final ProblemCode SHARE_OUT_OF_RANGE = ProblemCode.of(
            "order.allowance-share",
            "Give the share as a percentage, such as percent(5); an extra beyond the net amount is given as an amount.");

    /** An amount below nothing. */
    public static final ProblemCode EXTRA_NEGATIVE =
            ProblemCode.of("order.allowance-amount", "Give the extra amount, or leave the allowance out.");

    private final Cause cause;
    private final @Nullable Figure<Ratio> share;
    private final @Nullable Figure<Amount> extra;

    private Allowance(Cause cause, @Nullable Figure<Ratio> share, @Nullable Figure<Amount> extra) {
        this.cause = Objects.requireNonNull(cause, "cause");
        this.share = share;
        this.extra = extra;
    }

    /**
     * Returns a share of the net amount for a cause.
     *
     * @param cause why
     * @param share how much, from 0 to 100 per cent of the net amount
     * @return the allowance
     */
    public static Allowance of(Cause cause, Figure<Ratio> share) {
        return new Allowance(cause, Objects.requireNonNull(share, "share"), null);
    }

    /**
     * Returns an extra amount for a cause.
     *
     * @param cause why
     * @param extra how much, zero or more, of the same kind as the net amount
     * @return the allowance
     */
    public static Allowance ofAmount(Cause cause, Figure<Amount> extra) {
        return new Allowance(cause, null, Objects.requireNonNull(extra, "extra"));
    }

    /**
     * Returns a share of the net amount for cutting.
     *
     * @param share how much, such as {@code percent(2)}
     * @return the allowance
     */
    public static Allowance cutting(Ratio share) {
        return of(Cause.CUTTING, Figure.given(share));
    }

    /**
     * Returns an extra amount for cutting, such as what a cutting list asks for.
     *
     * @param extra how much
     * @return the allowance
     */
    public static Allowance cutting(Amount extra) {
        return ofAmount(Cause.CUTTING, Figure.given(extra));
    }

    /**
     * Returns a share of the net amount for breakage.
     *
     * @param share how much, such as {@code percent(3)}
     * @return the allowance
     */
    public static Allowance breakage(Ratio share) {
        return of(Cause.BREAKAGE, Figure.given(share));
    }

    /**
     * Returns a share of the net amount to keep for later repairs.
     *
     * @param share how much, such as {@code percent(2)}
     * @return the allowance
     */
    public static Allowance reserve(Ratio share) {
        return of(Cause.RESERVE, Figure.given(share));
    }

    /**
     * Returns an extra amount to keep for later repairs.
     *
     * @param extra how much
     * @return the allowance
     */
    public static Allowance reserve(Amount extra) {
        return ofAmount(Cause.RESERVE, Figure.given(extra));
    }

    /** Returns why. */
    public Cause cause() {
        return cause;
    }

    /** Returns the share of the net amount; empty if the allowance is an amount. */
    public Optional<Figure<Ratio>> share() {
        return Optional.ofNullable(share);
    }

    /** Returns the extra amount; empty if the allowance is a share. */
    public Optional<Figure<Amount>> extra() {
        return Optional.ofNullable(extra);
    }

    void check(Problems problems) {
        if (share != null && (share.value().isNegative() || share.value().toDouble() > 1)) {
            problems.add(Problem.error(
                    SHARE_OUT_OF_RANGE,
                    "allowance for " + cause,
                    percent(share.value()),
                    "be a share of the net amount from 0 % to 100 %"));
        }
        if (extra != null && extra.value().isNegative()) {
            problems.add(Problem.error(EXTRA_NEGATIVE, "allowance for " + cause, extra.value(), "be zero or more"));
        }
    }

    static String percent(Ratio share) {
        return Amount.plain(Amount.shortest(share.toDouble()).movePointRight(2)) + " %";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Allowance a
                && cause == a.cause
                && Objects.equals(share, a.share)
                && Objects.equals(extra, a.extra);
    }

    @Override
    public int hashCode() {
        return Objects.hash(cause, share, extra);
    }

    /** Returns the allowance in words, such as {@code breakage 3 %}; an assumed or sourced share says so. */
    @Override
    public String toString() {
        Figure<?> figure = share != null ? share : Objects.requireNonNull(extra);
        String much = share != null ? percent(share.value()) : figure.value().toString();
        return cause + " " + much
                + (figure.origin().isEmpty() || figure.origin().equals("given") ? "" : " (" + figure.origin() + ")");
    }
}
