package org.roofmaths.checks.hand;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roofmaths.examples.JobFile;
import org.roofmaths.sheet.Job;
import org.roofmaths.sheet.SheetSection;
import org.roofmaths.sheet.SheetSentence;
import org.roofmaths.sheet.SheetStep;
import org.roofmaths.sheet.SiteSheet;

/** Each step of the trade's chain stands on the sheet of each job, or the sheet says that it does not apply and why. */
class ChainTest {

    @ParameterizedTest
    @ValueSource(strings = {"fernside", "tollbar"})
    void every_step_of_the_chain_is_answered_or_does_not_apply(String job) throws IOException {
        SiteSheet sheet =
                SiteSheet.of(Job.attemptFromTree(JobFile.read(job).orThrow()).orThrow());
        List<NamedCsvRecord> chain;
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(Path.of("data/hand/chain.csv"))) {
            chain = csv.stream()
                    .filter(line -> line.getField("job").equals(job))
                    .toList();
        }

        assertThat(chain).hasSize(SheetStep.values().length);
        assertThat(sheet.sections()).extracting(SheetSection::step).containsExactly(SheetStep.values());
        for (NamedCsvRecord line : chain) {
            SheetStep step =
                    SheetStep.values()[Integer.parseInt(line.getField("step").substring(1)) - 1];
            SheetSection section = sheet.section(step);
            boolean saysWhyNot = section.items().stream()
                    .anyMatch(item -> item instanceof SheetSentence sentence
                            && sentence.kind() == SheetSentence.Kind.DOES_NOT_APPLY
                            && !sentence.text().isBlank());
            assertThat(section.items()).as(step.title()).isNotEmpty();
            assertThat(saysWhyNot)
                    .as(step.title() + " of " + job)
                    .isEqualTo(line.getField("answer").equals("does not apply"));
        }
    }
}
