package org.roofmaths.rules.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.roofmaths.units.Quantities.mm;
import static org.roofmaths.units.Quantities.pitch;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.io.StringReader;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.roofmaths.covering.UnitKind;
import org.roofmaths.rules.Edition;
import org.roofmaths.rules.Exposure;
import org.roofmaths.rules.Facts;
import org.roofmaths.rules.RowSource;
import org.roofmaths.rules.RuleSet;
import org.roofmaths.rules.Rules;
import org.roofmaths.rules.Situation;
import org.roofmaths.rules.Subjects;
import org.roofmaths.rules.Suitability;

/** Every value travels between machines and arrives equal. */
class SerialFormTest {
    private static final Situation ROOF = Situation.of(UnitKind.CONCRETE_SINGLE_LAP_TILE)
            .withPitch(pitch("32°"))
            .withExposure(Exposure.SHELTERED)
            .withHeadlap(mm(80));

    @TestFactory
    Stream<DynamicTest> values_arrive_equal() {
        Edition edition = Rules.of("gb").edition("nhbc-standards", "2020");
        RuleSet order = Rules.of("gb").inOrder("nhbc-standards/2021", "nhbc-standards/2020");
        RowSource own = RowSource.of("own", new StringReader("""
                id,subject,value,unit,as_printed,locus,provenance,source,source_edition,source_kind
                own.a,least-pitch,20,deg,20°,page 1,read,Invented,1,standard
                """));
        return Stream.<Serializable>of(
                        Facts.PITCH,
                        Subjects.LEAST_PITCH,
                        ROOF,
                        edition,
                        order,
                        own.edition(),
                        edition.rows(Subjects.LEAST_PITCH).get(0),
                        edition.find(Subjects.LEAST_PITCH, ROOF),
                        edition.check(Subjects.LEAST_PITCH, ROOF),
                        order.check(Subjects.LEAST_HEADLAP, ROOF),
                        Suitability.of(edition, ROOF))
                .map(value -> DynamicTest.dynamicTest(
                        value.getClass().getSimpleName(),
                        () -> assertThat(there(value)).isEqualTo(value)));
    }

    private static Object there(Serializable value) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(value);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return in.readObject();
        }
    }
}
