package org.nextpull.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimeTextTest {
    /** The outside value is the platform's own reading of ISO 8601. */
    @ParameterizedTest
    @ValueSource(strings = {"2026-05-01T10:15:30.500Z", "1999-12-31T23:59:59Z", "2024-02-29T00:00:00.125Z"})
    void isoTimesAreSecondsSince1970(String text) {
        assertThat(TimeText.seconds(text)).hasValue(Instant.parse(text).toEpochMilli() / 1000.0);
        assertThat(TimeText.seconds(text.replace('T', ' ').replace("Z", "")))
                .hasValue(Instant.parse(text).toEpochMilli() / 1000.0);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-05-01T12:15:30+02:00, 1777630530",
        "2026-05-01T05:15:30-0500, 1777630530",
        "01.05.2026 10:15:30, 1777630530",
        "05/01/2026 10:15:30, 36930",
        "10:15:30, 36930",
        "10:15:30.25 PM, 80130.25",
        "12:00:01 AM, 1",
        "100:00:00, 360000",
        "90:05.5, 5405.5"
    })
    void clocksAndDatesOfOtherFormsAreRead(String text, double seconds) {
        assertThat(TimeText.seconds(text)).hasValue(seconds);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "12",
                "12:61:00",
                "2026-13-01 10:00:00",
                "2026-02-30T10:00:00Z",
                "10:15:99",
                "a:b",
                "13:00:00 PM",
                "::"
            })
    void whatIsNoTimeGivesNone(String text) {
        assertThat(TimeText.seconds(text)).isEmpty();
    }

    /** A zone that moves nothing sends a time through the patterns, which read every form. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "0:00:00",
                "7:05:09.1",
                "23:59:60.999999999",
                "123:45:06",
                "10:15:30.123456789",
                "10:60:00",
                "10:15:61",
                "10:15:3",
                "10:5:30",
                "1000:00:00",
                "10:15:30.",
                "10:15:30.1234567890"
            })
    void aPlainClockIsReadAsThePatternsReadIt(String clock) {
        OptionalDouble dated = TimeText.seconds("2026-05-01T" + clock);
        assertThat(dated).isEqualTo(TimeText.seconds("2026-05-01T" + clock + "Z"));
        OptionalDouble alone = TimeText.seconds(clock);
        assertThat(alone).isEqualTo(TimeText.seconds("05/01/2026 " + clock));
    }
}
