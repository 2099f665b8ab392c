package org.roofmaths.working;

/**
 * Listens to a calculation while it runs.
 *
 * <p>The calculation says which figures it uses and which steps it reaches; a recorder that is {@link #off()} hears nothing and
 * costs next to nothing.
 *
 * <pre>{@code
 * private static Length compute(Figure<Length> run, Figure<Pitch> pitch, Recorder r) {
 *     Length level = r.use(RUN, run);
 *     Pitch slope = r.use(PITCH, pitch);
 *     return r.record(LENGTH, slope.slopeOver(level), LENGTH_FORMULA);
 * }
 * }</pre>
 *
 * @since 0.1
 */
public sealed interface Recorder permits Recording, Recorder.Off {

    /**
     * Uses a figure under a term; later steps whose formula names the term rest on this figure.
     *
     * @param <T> the type of the value
     * @param term the term it stands for from here on
     * @param figure the figure
     * @return the figure's value
     */
    <T> T use(Term<T> term, Figure<? extends T> figure);

    /**
     * Uses a plain value, which means that the caller gave it.
     *
     * @param <T> the type of the value
     * @param term the term it stands for from here on
     * @param value the value
     * @return the value
     */
    default <T> T use(Term<T> term, T value) {
        return isOn() ? use(term, Given.of(value)) : value;
    }

    /**
     * Records a step: a term got its value by a formula from terms used or recorded before.
     *
     * @param <T> the type of the value
     * @param term the term reached
     * @param value its value
     * @param formula how it was reached
     * @return the value
     * @throws IllegalStateException if the formula names a term that was neither used nor recorded
     */
    <T> T record(Term<T> term, T value, Formula formula);

    /**
     * Adds a remark to the next step recorded.
     *
     * @param remark one sentence
     */
    void note(String remark);

    /**
     * Returns a recorder for one place of several: what it records is kept under the term at that place, and what it looks up it
     * finds there first and here otherwise.
     *
     * @param place which of several, such as {@code left}
     * @return the recorder for the place
     */
    Recorder at(String place);

    /** Tells whether anyone listens; a calculation may skip work that only a listener would see. */
    boolean isOn();

    /** Returns the recorder that hears nothing. */
    static Recorder off() {
        return Off.INSTANCE;
    }

    /** The recorder that hears nothing. */
    final class Off implements Recorder {
        private static final Off INSTANCE = new Off();

        private Off() {}

        @Override
        public <T> T use(Term<T> term, Figure<? extends T> figure) {
            return figure.value();
        }

        @Override
        public <T> T record(Term<T> term, T value, Formula formula) {
            return value;
        }

        @Override
        public void note(String remark) {
            // nobody listens
        }

        @Override
        public Recorder at(String place) {
            return this;
        }

        @Override
        public boolean isOn() {
            return false;
        }
    }
}
