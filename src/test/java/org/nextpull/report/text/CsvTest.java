package org.nextpull.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** RFC 4180, section 2, rules 1, 6 and 7. */
class CsvTest {
    @Test
    void cellsWithCommasQuotesAndBreaksStandInQuotes() {
        assertThat(Csv.line(List.of("aaa", "b\r\nbb", "c,c"))).isEqualTo("aaa,\"b\r\nbb\",\"c,c\"\r\n");
        assertThat(Csv.line(List.of("aaa", "b\"bb", "ccc"))).isEqualTo("aaa,\"b\"\"bb\",ccc\r\n");
    }

    @Test
    void textThatASpreadsheetWouldRunGetsAnApostrophe() {
        assertThat(Csv.line(List.of("=1+1", "+cmd|x", "-2+3", "@sum"))).isEqualTo("'=1+1,'+cmd|x,'-2+3,'@sum\r\n");
    }

    @Test
    void numbersKeepTheirSign() {
        assertThat(Csv.line(List.of("-2.50", "+1.0", "-.5", "-1e-3", ""))).isEqualTo("-2.50,+1.0,-.5,-1e-3,\r\n");
    }
}
