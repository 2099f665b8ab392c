package org.roofmaths.working;

import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

/** A small calculation of the usual shape, for the tests of this package. */
final class Rafter implements HasWorking {
    static final Term<Length> RUN = Term.of("test run", "r", Length.class);
    static final Term<Pitch> PITCH = Term.of("test pitch", "p", Pitch.class);
    static final Term<Length> RISE = Term.of("test rise", "h", Length.class);
    static final Term<Length> LENGTH = Term.of("test length", "L", Length.class);
    private static final Formula RISE_BY_PITCH = Formula.of(RISE, RUN.times(PITCH.tan()));
    private static final Formula LENGTH_BY_SIDES =
            Formula.of(LENGTH, RUN.squared().plus(RISE.squared()).squareRoot());

    private final Figure<Length> run;
    private final Figure<Pitch> pitch;
    private final Length length;

    Rafter(Figure<Length> run, Figure<Pitch> pitch) {
        this.run = run;
        this.pitch = pitch;
        this.length = compute(Recorder.off());
    }

    private Length compute(Recorder r) {
        Length level = r.use(RUN, run);
        Pitch slope = r.use(PITCH, pitch);
        Length rise = r.record(RISE, slope.riseOver(level), RISE_BY_PITCH);
        r.note("to the ridge line; no allowance for the ridge board");
        return r.record(LENGTH, Length.ofMetres(StrictMath.hypot(level.toMetres(), rise.toMetres())), LENGTH_BY_SIDES);
    }

    Length length() {
        return length;
    }

    static Worked<Length> lengthOf(Figure<Length> run, Figure<Pitch> pitch) {
        return Worked.by(LENGTH, r -> new Rafter(run, pitch).compute(r));
    }

    @Override
    public Working working() {
        return Working.of(this::compute);
    }
}
