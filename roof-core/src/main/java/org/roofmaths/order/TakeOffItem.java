package org.roofmaths.order;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.roofmaths.units.Mass;
import org.roofmaths.working.Figure;

/**
 * One thing taken off a layout: what it is, how much of it, and the mass of one where the layout knows it.
 *
 * @since 0.1
 */
public final class TakeOffItem implements Serializable {
    private static final long serialVersionUID = 1L;

    private final String name;
    private final Figure<Amount> net;
    private final @Nullable Mass massOfOne;

    TakeOffItem(String name, Figure<Amount> net, @Nullable Mass massOfOne) {
        this.name = name;
        this.net = net;
        this.massOfOne = massOfOne;
    }

    /** Returns what it is, such as {@code roll tile, half unit}. */
    public String name() {
        return name;
    }

    /** Returns how much of it is laid, with the trail to the layouts. */
    public Figure<Amount> net() {
        return net;
    }

    /** Returns the mass of one; empty for battens and underlay, whose layout knows none. */
    public Optional<Mass> massOfOne() {
        return Optional.ofNullable(massOfOne);
    }

    /**
     * Returns the order line of this item; the mass of one is filled in unless the terms give their own.
     *
     * @param terms on which terms it is ordered
     * @return the line
     */
    public OrderLine on(OrderTerms terms) {
        if (massOfOne == null || terms.massOfOne().isPresent()) {
            return OrderLine.of(name, net, terms);
        }
        return OrderLine.of(
                name, net, OrderTerms.builder().from(terms).massOfOne(massOfOne).build());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TakeOffItem t
                && name.equals(t.name)
                && net.equals(t.net)
                && Objects.equals(massOfOne, t.massOfOne);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, net.value(), massOfOne);
    }

    /** Returns for example {@code roll tile: 187}. */
    @Override
    public String toString() {
        return name + ": " + net.value();
    }
}
