package org.roofmaths.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalsTest {
    @ParameterizedTest
    @CsvSource({
        "0.0, 0",
        "-0.0, 0",
        "35.0, 35",
        "-35.0, -35",
        "15.46, 15.46",
        "0.1, 0.1",
        "1E-9, 0.000000001",
        "9.99E-10, 9.99E-10",
        "1E-10, 1E-10",
        "-1E-10, -1E-10",
        "999999999999999.0, 999999999999999",
        "1E15, 1E15",
        "1.5E15, 1.5E15",
        "123456789012345.6, 123456789012345.6",
        "1E300, 1E300",
        "-1.25E300, -1.25E300",
        "0.30000000000000004, 0.30000000000000004",
        "2E-323, 2E-323",
        "4.9E-324, 5E-324",
        "NaN, NaN",
        "Infinity, Infinity",
        "1.7976931348623157E308, 1.7976931348623157E308"
    })
    void prints_a_double_the_shortest_way_that_reads_back(double value, String text) {
        assertThat(Decimals.text(value)).isEqualTo(text);
    }

    @Test
    void prints_what_older_machines_print_too_long() {
        // Double.toString prints these with other digits before Java 19 than after.
        assertThat(Decimals.text(Double.parseDouble("2E23"))).isEqualTo("2E23");
        assertThat(Decimals.exact(0x1p-44)).isEqualByComparingTo(new BigDecimal("5.684341886080802E-14"));
    }
}
