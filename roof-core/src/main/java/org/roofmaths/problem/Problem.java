package org.roofmaths.problem;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * One thing that is wrong with an input, or one thing that sound input does not allow.
 *
 * <p>The message says what it is, what it must be, what it was, and the way on; its numbers print as their types print, so that
 * they can be pasted back.
 *
 * @since 0.1
 */
public final class Problem implements Serializable {
    private static final long serialVersionUID = 1L;

    private final ProblemCode code;
    private final Severity severity;
    private final String where;
    private final String given;
    private final String allowed;
    private final String message;
    private final List<Mend> mends;

    private Problem(
            ProblemCode code,
            Severity severity,
            String where,
            String given,
            String allowed,
            String message,
            List<Mend> mends) {
        this.code = Objects.requireNonNull(code, "code");
        this.severity = Objects.requireNonNull(severity, "severity");
        this.where = Objects.requireNonNull(where, "where");
        this.given = Objects.requireNonNull(given, "given");
        this.allowed = Objects.requireNonNull(allowed, "allowed");
        this.message = Objects.requireNonNull(message, "message");
        this.mends = List.copyOf(mends);
    }

    /**
     * Returns an error: a wrong input. The message is made from the parts:
     * {@code pitch must be above 0° and below 90°, but was 95°}.
     *
     * @param code the kind of problem
     * @param where the argument's name, or the JSON Pointer of the field
     * @param given the value as given, with its unit
     * @param allowed what it must be, to follow the word "must", such as {@code be above 0° and below 90°}
     * @return the problem
     */
    public static Problem error(ProblemCode code, String where, Object given, String allowed) {
        return new Problem(
                code,
                Severity.ERROR,
                where,
                given.toString(),
                allowed,
                where + " must " + allowed + ", but was " + given,
                List.of());
    }

    /**
     * Returns a finding: the input is sound but something does not fit.
     *
     * @param code the kind of problem
     * @param where what it concerns, such as the name of a face
     * @param given the figure that does not fit, with its unit
     * @param allowed the limit it misses
     * @param message the whole sentence
     * @param mends ways to mend it, the caller's preferred one first
     * @return the problem
     */
    public static Problem finding(
            ProblemCode code, String where, Object given, Object allowed, String message, List<Mend> mends) {
        return new Problem(code, Severity.FINDING, where, given.toString(), allowed.toString(), message, mends);
    }

    /**
     * Returns a notice: nothing is wrong, but a person should know.
     *
     * @param code the kind of notice
     * @param where what it concerns
     * @param given the figure, with its unit
     * @param message the whole sentence
     * @return the problem
     */
    public static Problem notice(ProblemCode code, String where, Object given, String message) {
        return new Problem(code, Severity.NOTICE, where, given.toString(), "", message, List.of());
    }

    /** Returns the kind of problem. */
    public ProblemCode code() {
        return code;
    }

    /** Returns how much it stops. */
    public Severity severity() {
        return severity;
    }

    /** Returns the argument's name, the JSON Pointer of the field, or the name of the thing it concerns. */
    public String where() {
        return where;
    }

    /** Returns the value as given, with its unit. */
    public String given() {
        return given;
    }

    /** Returns what was allowed; empty for a notice. */
    public String allowed() {
        return allowed;
    }

    /** Returns the whole sentence. */
    public String message() {
        return message;
    }

    /** Returns ways to mend it, the preferred one first; empty if none is known. */
    public List<Mend> mends() {
        return mends;
    }

    /**
     * Returns the same problem found at another place, such as a field of a form instead of an argument. An error's message is made
     * anew with the new place.
     *
     * @param place the new place
     * @return the problem at that place
     */
    public Problem at(String place) {
        String moved = severity == Severity.ERROR ? place + " must " + allowed + ", but was " + given : message;
        return new Problem(code, severity, place, given, allowed, moved, mends);
    }

    /**
     * Returns the same problem with one more way to mend it.
     *
     * @param mend the way
     * @return the problem with it, last
     */
    public Problem withMend(Mend mend) {
        List<Mend> more = new ArrayList<>(mends);
        more.add(mend);
        return new Problem(code, severity, where, given, allowed, message, more);
    }

    /** Returns the problem as plain maps, lists and strings, ready for any JSON writer. */
    public Map<String, Object> toTree() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("code", code.id());
        map.put("severity", severity.toString());
        map.put("where", where);
        map.put("given", given);
        map.put("allowed", allowed);
        map.put("message", message);
        map.put("remedy", code.remedy());
        List<Object> ways = new ArrayList<>();
        for (Mend mend : mends) {
            Map<String, Object> way = new LinkedHashMap<>();
            way.put("what", mend.what());
            way.put("change", mend.change());
            mend.by().ifPresent(by -> way.put("by", by.toString()));
            way.put("result", mend.result());
            ways.add(Collections.unmodifiableMap(way));
        }
        map.put("mends", Collections.unmodifiableList(ways));
        return Collections.unmodifiableMap(map);
    }

    /**
     * Returns a list of problems as plain maps, lists and strings.
     *
     * @param problems the problems
     * @return a list of their trees, in order
     */
    public static List<Map<String, Object>> toTree(List<Problem> problems) {
        return problems.stream().map(Problem::toTree).toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Problem p
                && code.equals(p.code)
                && severity == p.severity
                && where.equals(p.where)
                && given.equals(p.given)
                && allowed.equals(p.allowed)
                && message.equals(p.message)
                && mends.equals(p.mends);
    }

    @Override
    public int hashCode() {
        return Objects.hash(code, where, message);
    }

    /** Returns the message and the ways to mend it, one a line. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(message);
        mends.forEach(mend -> text.append("\n  mend: ").append(mend));
        return text.toString();
    }
}
