package org.nextpull.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;

final class WrittenRowsTest {
    private static final WrittenRows.Shape THREE_FIELDS = new WrittenRows.Shape((byte) ',', 2, 3);

    /** The first and the third of three fields are read. */
    private final WrittenRows rows = new WrittenRows(List.of(column(0), column(2)), NumberStyle.point());

    private static MappedColumn column(int index) {
        return new MappedColumn(
                index, "any", Channel.of(Role.TORQUE), Optional.empty(), 1, MappedColumn.Reading.AS_IT_STANDS);
    }

    private int read(String text) {
        byte[] bytes = (text + "\n").getBytes(StandardCharsets.US_ASCII);
        return rows.plainRows(1, bytes, 0, bytes.length - 1, THREE_FIELDS);
    }

    @Test
    void cellsOfAnyLengthAreReadAsJavaReadsThem() {
        Random random = new Random(11);
        for (int round = 0; round < 20_000; round++) {
            StringBuilder cell = new StringBuilder();
            int digits = 1 + random.nextInt(15);
            for (int digit = 0; digit < digits; digit++) {
                cell.append((char) ('0' + random.nextInt(10)));
            }
            cell.insert(random.nextInt(digits + 1), random.nextBoolean() ? "." : "");
            cell.insert(0, List.of("", "", "", "-", "+", " ").get(random.nextInt(6)));
            String line =
                    "7," + (random.nextBoolean() ? "word" : "12.5") + "," + cell + (random.nextBoolean() ? "\r" : "");
            rows.clear();

            assertThat(read(line)).as(line).isEqualTo(line.length());
            assertThat(rows.rows()).isEqualTo(1);
            assertThat(rows.column(0).value(0)).isEqualTo(7);
            assertThat(rows.column(1).value(0)).as(line).isEqualTo(Double.parseDouble(cell.toString()));
        }
    }

    @Test
    void anEmptyCellAndOneThatIsNotWrittenAreAbsent() {
        assertThat(read("1,2,\n3,4\n,,5")).isEqualTo("1,2,\n3,4\n,,5".length());

        assertThat(rows.rows()).isEqualTo(3);
        assertThat(List.of(
                        rows.column(1).isPresent(0),
                        rows.column(1).isPresent(1),
                        rows.column(1).isPresent(2)))
                .containsExactly(false, false, true);
        assertThat(rows.column(0).isPresent(2)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"1,2,.", "1,2,3.4.5", "1,2,-", "1,2,1e3", "1,2,3,4", "1", "1,\"2\",3", ",,", "x,2,3", "1,2,3;4"})
    void aRowThatIsNotPlainIsLeft(String row) {
        assertThat(read("1,2,3\n" + row)).isEqualTo("1,2,3\n".length());
        assertThat(rows.rows()).isEqualTo(1);
    }
}
