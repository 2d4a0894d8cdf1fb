package org.nextpull.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberReaderTest {
    private final NumberReader points = new NumberReader(NumberStyle.point());
    private final NumberReader commas = new NumberReader(NumberStyle.comma());

    /** The outside value is the platform's own conversion, bit for bit. */
    @Test
    void everyNumberEqualsTheConversionOfThePlatform() {
        Random random = new Random(4711);
        for (int round = 0; round < 200_000; round++) {
            String text = randomNumber(random);
            assertThat(points.read(text)).as(text).isEqualTo(NumberReader.Kind.NUMBER);
            assertThat(Double.doubleToRawLongBits(points.value()))
                    .as(text)
                    .isEqualTo(Double.doubleToRawLongBits(Double.parseDouble(text)));
            assertThat(commas.read(text.replace('.', ','))).as(text).isEqualTo(NumberReader.Kind.NUMBER);
            assertThat(commas.value()).as(text).isEqualTo(points.value());
        }
    }

    private static String randomNumber(Random random) {
        String sign = random.nextInt(3) == 0 ? "-" : random.nextInt(8) == 0 ? "+" : "";
        String digits = Long.toString(random.nextLong() >>> (1 + random.nextInt(62)));
        String number = switch (random.nextInt(4)) {
            case 0 -> digits;
            case 1 -> digits + "." + random.nextInt(Integer.MAX_VALUE);
            case 2 -> "0." + "0".repeat(random.nextInt(25)) + digits;
            default ->
                String.format(Locale.ROOT, "%.6e", random.nextGaussian() * 1e5).replace("-", "");
        };
        return sign + number.replace("+", random.nextBoolean() ? "+" : "-");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1d", "1f", "0x1p3", "0x10", "1.2.3", "1e", "e5", "--1", "1-", "+", ".", "1e99999", "12a", "1_000", "٣"
            })
    void whatOnlyAProgrammingLanguageCallsANumberIsNone(String text) {
        assertThat(points.read(text)).isNotEqualTo(NumberReader.Kind.NUMBER);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "  ",
                "NaN",
                "nan",
                "-nan",
                "n/a",
                "#N/A",
                "-",
                "--",
                "Inf",
                "-Infinity",
                "1e400",
                "null",
                "#DIV/0!"
            })
    void wordsForNothingAndNumbersBeyondAllNumbersAreAbsent(String text) {
        assertThat(points.read(text)).isEqualTo(NumberReader.Kind.ABSENT);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,234.5 | 1234.5",
                "12,345,678 | 12345678",
                "1'234.5 | 1234.5",
                "1\u00a0234.5 | 1234.5",
                "1\u202f234 | 1234",
                "-1,234 | -1234"
            })
    void marksBetweenThousandsAreUnderstoodAndCounted(String text, double value) {
        assertThat(points.read(text)).isEqualTo(NumberReader.Kind.NUMBER);
        assertThat(points.value()).isEqualTo(value);
        assertThat(points.groupedCells()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,23", "1,2345", "1,234,56", ",234", "1,234'567", "1234,567"})
    void marksThatDoNotPartThousandsMakeNoNumber(String text) {
        assertThat(points.read(text)).isEqualTo(NumberReader.Kind.TEXT);
    }

    @Test
    void aFieldAmongOthersIsReadAsTextIsAndEndsAtItsSeparator() {
        Random random = new Random(7);
        for (int round = 0; round < 20_000; round++) {
            int digits = 1 + random.nextInt(15);
            StringBuilder text = new StringBuilder();
            for (int digit = 0; digit < digits; digit++) {
                text.append((char) ('0' + random.nextInt(10)));
            }
            text.insert(random.nextInt(digits + 1), random.nextBoolean() ? "." : "");
            text.insert(0, List.of("", "", "-", "+", " ", "  -").get(random.nextInt(6)));
            String before = "x".repeat(random.nextInt(3));
            char end = ",\n\r".charAt(random.nextInt(3));
            byte[] bytes = line(before + text + end + "12.5,9,7");

            int after = points.plain(bytes, before.length(), (byte) ',');

            assertThat(after).as(text.toString()).isEqualTo(before.length() + text.length());
            assertThat(points.value()).as(text.toString()).isEqualTo(Double.parseDouble(text.toString()));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1.2.3,4567890",
                "12x,4567890",
                "1234:56,7890",
                ".,345678",
                "12;345678,1",
                "1/2,34567",
                "123456.7.8,9"
            })
    void aFieldThatIsNoPlainNumberIsLeftToOthers(String text) {
        byte[] bytes = line(text);
        assertThat(points.plain(bytes, 0, (byte) ',')).isNegative();
    }

    private static byte[] line(String text) {
        return (text + "\n").getBytes(StandardCharsets.US_ASCII);
    }
}
