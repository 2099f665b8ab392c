package org.roofmaths.order;

/**
 * What matters more where rows are joined: few joints or little stock.
 *
 * @since 0.1
 */
public enum Joining {
    /** Every row has as few joints as its length allows; among such plans the one with least stock is sought. */
    FEWEST_JOINTS("fewest joints"),
    /** A row may have one joint more than its length needs, if that saves stock. */
    LEAST_STOCK("least stock");

    private final String words;

    Joining(String words) {
        this.words = words;
    }

    /** Returns the choice in words. */
    @Override
    public String toString() {
        return words;
    }
}
