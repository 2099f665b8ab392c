package org.roofmaths.units.property;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;

/** What the properties are tried on. */
final class Lengths {
    static final List<Locale> LOCALES = List.of(
            Locale.ROOT,
            Locale.UK,
            Locale.GERMANY,
            Locale.FRANCE,
            Locale.forLanguageTag("de-CH"),
            Locale.forLanguageTag("tr"),
            Locale.forLanguageTag("fa"),
            Locale.forLanguageTag("sv"));

    /** A kilometre. */
    private static final long FAR = 1_000_000_000_000L;

    private Lengths() {}

    static Arbitrary<Length> any() {
        return Arbitraries.longs()
                .between(-Long.MAX_VALUE, Long.MAX_VALUE)
                .map(Length::ofNanometres)
                .edgeCases(e -> e.add(
                        Length.ZERO,
                        Length.ofNanometres(1),
                        Length.ofNanometres(Long.MAX_VALUE),
                        Length.ofInches(0, 1, 64)));
    }

    static Arbitrary<Length> upToAKilometre() {
        return Arbitraries.longs().between(-FAR, FAR).map(Length::ofNanometres);
    }

    static Arbitrary<Length> between(Length lower, Length upper) {
        return Arbitraries.longs()
                .between(lower.toNanometres(), upper.toNanometres())
                .map(Length::ofNanometres);
    }

    static Arbitrary<Pitch> pitches() {
        return Arbitraries.doubles()
                .between(0, false, 90, false)
                .ofScale(12)
                .filter(degrees -> degrees > 0)
                .map(Pitch::ofDegrees);
    }
}
