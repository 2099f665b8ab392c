package org.roofmaths.problem;

import java.io.Serializable;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * The fixed name of a kind of problem, for programs, with the general remedy, for people.
 *
 * <p>Codes are public constants of the class that reports them, such as {@code courses.no-equal-division}. A code never changes its
 * meaning.
 *
 * @since 0.1
 */
public final class ProblemCode implements Serializable {
    private static final long serialVersionUID = 1L;
    private static final Pattern FORM = Pattern.compile("[a-z][a-z0-9-]*(\\.[a-z][a-z0-9-]*)+");

    private final String id;
    private final String remedy;

    private ProblemCode(String id, String remedy) {
        this.id = id;
        this.remedy = remedy;
    }

    /**
     * Returns a code.
     *
     * @param id lower-case words with hyphens, subject and problem parted by a dot
     * @param remedy one sentence on what to do about this kind of problem
     * @return the code
     */
    public static ProblemCode of(String id, String remedy) {
        if (!FORM.matcher(id).matches()) {
            throw new IllegalArgumentException(
                    "a problem code must be lower-case words parted by dots, such as courses.no-equal-division, but was \""
                            + id + "\"");
        }
        return new ProblemCode(id, Objects.requireNonNull(remedy, "remedy"));
    }

    /** Returns the identifier, such as {@code courses.no-equal-division}. */
    public String id() {
        return id;
    }

    /** Returns what to do about this kind of problem, in one sentence. */
    public String remedy() {
        return remedy;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ProblemCode c && id.equals(c.id);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }

    /** Returns the identifier. */
    @Override
    public String toString() {
        return id;
    }
}
