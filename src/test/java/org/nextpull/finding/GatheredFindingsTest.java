package org.nextpull.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class GatheredFindingsTest {
    private static Finding row(long line, String header) {
        return Finding.warning(
                FindingCode.TABLE_ROW_BROKEN,
                Place.atLine("table.csv", line).withKey(header),
                Detail.of("header", header),
                Detail.of("value", "row " + line));
    }

    @Test
    void equalOnesAreOneWithTheirCountAndTheFirstPlace() {
        GatheredFindings gathering = new GatheredFindings();
        for (long line = 2; line < 400_002; line++) {
            gathering.add(row(line, "lambda"));
        }
        gathering.add(row(7, "torque_nm"));
        assertThat(gathering.findings()).containsExactly(row(2, "lambda").withCount(400_000), row(7, "torque_nm"));
    }

    @Test
    void theSameFindingTwiceIsOne() {
        Finding found = Finding.note(FindingCode.FILE_IS_TABLE, Place.inFile("table.csv"));
        assertThat(GatheredFindings.of(List.of(found, row(3, "lambda"), found, row(3, "lambda"))))
                .containsExactly(found, row(3, "lambda"));
    }

    @Test
    void whatHasNoLineStaysApartWhereItSaysSomethingElse() {
        Finding coolant =
                Finding.warning(FindingCode.LIMIT_NOT_WATCHED, Place.inFile("a"), Detail.of("limit", "oil_c"));
        Finding oil =
                Finding.warning(FindingCode.LIMIT_NOT_WATCHED, Place.inFile("a"), Detail.of("limit", "coolant_c"));
        assertThat(GatheredFindings.of(List.of(coolant, oil))).containsExactly(coolant, oil);
    }
}
