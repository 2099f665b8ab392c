package org.roofmaths.order;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.Objects;

/**
 * What one of the things sold costs: a pack, a roll, a length, or a single piece.
 *
 * <p>Exact: 198 nails at 0.0125 are 2.475, and no cent is rounded away here. Tax and carriage are the caller's. A price is checked with
 * the {@link OrderTerms} it becomes part of.
 *
 * @param amount the sum, zero or more
 * @param currency its currency
 * @since 0.1
 */
public record Price(BigDecimal amount, Currency currency) implements Serializable {
    /** Keeps the two parts. */
    public Price {
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(currency, "currency");
    }

    /**
     * Returns a price.
     *
     * @param amount the sum
     * @param currency its currency
     * @return the price
     */
    public static Price of(BigDecimal amount, Currency currency) {
        return new Price(amount, currency);
    }

    Price times(BigDecimal count) {
        return new Price(amount.multiply(count), currency);
    }

    /** Returns the sum with at least the decimals of its currency, and the currency's code: {@code 12.50 GBP}. */
    @Override
    public String toString() {
        BigDecimal shown = amount.signum() == 0 ? BigDecimal.ZERO : amount.stripTrailingZeros();
        int decimals = Math.max(0, currency.getDefaultFractionDigits());
        return (shown.scale() < decimals ? shown.setScale(decimals) : shown).toPlainString() + " "
                + currency.getCurrencyCode();
    }
}
