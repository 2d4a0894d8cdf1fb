package org.nextpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.unit.UnitSystem;

class FindingLinesTest {
    private static final FindingLines LINES = new FindingLines(FindingText.in(new Shown(UnitSystem.METRIC)));

    @Test
    void whatCanHurtComesFirstThenErrorsWarningsAndNotes() {
        Place file = Place.inFile("day.csv");
        List<Finding> found = List.of(
                Finding.note(FindingCode.FILE_IS_TABLE, file),
                Finding.warning(FindingCode.PLAN_WITHOUT_BAND, Place.nowhere()),
                Finding.error(FindingCode.FILE_EMPTY, file),
                Finding.warning(
                        FindingCode.LIMIT_NOT_WATCHED,
                        file,
                        Detail.of("limit", "oil_c"),
                        Detail.of("channel", "oil_temperature")));
        assertThat(LINES.said(found))
                .extracting(FindingLines.Line::severity)
                .hasToString("[WARNING, ERROR, WARNING, NOTE]");
        assertThat(LINES.lines(found).get(0)).startsWith("warning: ").contains("oil_c");
    }

    @Test
    void fourHundredEqualOnesAreOneLineWithTheFirstPlace() {
        List<Finding> found = new ArrayList<>();
        for (int line = 2; line < 402; line++) {
            found.add(Finding.warning(
                    FindingCode.TABLE_ROW_BROKEN,
                    Place.atLine("table.csv", line).withKey("lambda"),
                    Detail.of("header", "lambda"),
                    Detail.of("value", "x")));
        }
        assertThat(LINES.lines(found))
                .singleElement()
                .asString()
                .startsWith("warning: table.csv, line 2")
                .endsWith(" (and 399 more like it)");
    }

    @Test
    void pullsThatFollowEachOtherAreNamedAsARange() {
        List<Finding> found = new ArrayList<>();
        for (int pull = 1; pull <= 400; pull++) {
            found.add(Finding.warning(FindingCode.SETTING_ASSUMED, Place.ofPull(pull)));
        }
        assertThat(LINES.lines(found)).singleElement().asString().endsWith("(likewise pulls 2-400)");
    }
}
