package org.roofmaths.working;

/**
 * What standing a document has: law, guidance to a law, standard, contract condition, trade practice or history.
 *
 * @since 0.1
 */
public enum SourceKind {
    /** Law: it binds. */
    LAW("law"),
    /** Guidance to a law: one accepted way to meet it. */
    GUIDANCE_TO_LAW("guidance to law"),
    /** A published standard or code of practice: binding only where a law or a contract names it. */
    STANDARD("standard"),
    /** A condition of a warranty body: a term of its contract. */
    WARRANTY_CONDITION("warranty body's condition"),
    /** What the trade does, without a document that asks for it. */
    TRADE_PRACTICE("trade practice"),
    /** A superseded or old handbook: for comparison and teaching. */
    HISTORIC("historic");

    private final String words;

    SourceKind(String words) {
        this.words = words;
    }

    /** Returns the kind in words, such as {@code warranty body's condition}. */
    @Override
    public String toString() {
        return words;
    }
}
