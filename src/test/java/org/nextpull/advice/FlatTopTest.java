package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Whether the printed 90 % intervals of a spark sweep hold where the top or the day is not as the fit assumes.
 * {@code -Dnextpull.days=200} runs more days of each kind.
 */
class FlatTopTest {
    private static final int DAYS = Integer.getInteger("nextpull.days", 40);
    private static final double LEAST = 0.85;

    @ParameterizedTest
    @EnumSource(TopShape.class)
    void printedIntervalsHold(TopShape shape) {
        List<TopShape.Swept> printed = LongStream.rangeClosed(1, DAYS)
                .mapToObj(shape::sweep)
                .filter(day -> day.optimum().isPresent())
                .toList();

        assertThat(printed).hasSizeGreaterThan(DAYS / 2);
        assertThat(share(printed, TopShape.Swept::holdsBest))
                .as("MBT of %d days", printed.size())
                .isGreaterThanOrEqualTo(LEAST);
        assertThat(share(printed, TopShape.Swept::holdsTop)).as("peak").isGreaterThanOrEqualTo(LEAST);
    }

    private static double share(List<TopShape.Swept> days, Predicate<TopShape.Swept> holds) {
        return days.stream().filter(holds).count() / (double) days.size();
    }
}
