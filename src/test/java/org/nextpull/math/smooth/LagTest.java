package org.nextpull.math.smooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.math.Series;

class LagTest {
    private static Series edge(double at, double gain) {
        return Series.generate(200, index -> gain / (1 + Math.exp(-(index - at) / 3)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, 7, 12.5, 20.3})
    void aDelayedEdgeIsFound(double delay) {
        Lag lag = Lag.between(edge(80, 1), edge(80 + delay, 0.02), 40).orElseThrow();
        assertThat(lag.samples()).isCloseTo(delay, within(0.02));
        assertThat(lag.correlation()).isGreaterThan(0.999);
    }

    @Test
    void aFollowerThatFallsIsFoundToo() {
        Lag lag = Lag.between(edge(80, 1), edge(91, -3), 40).orElseThrow();
        assertThat(lag.samples()).isCloseTo(11, within(0.02));
        assertThat(lag.correlation()).isLessThan(-0.999);
    }

    @Test
    void aDelayBeyondTheSearchIsNotInvented() {
        assertThat(Lag.between(edge(80, 1), edge(100, 1), 10)).isEmpty();
        assertThat(Lag.between(edge(80, 1), Series.constant(200, 5), 10)).isEmpty();
    }

    /** Seeded noise: the stated error must be near the real one, which 400 repeats give within 4 %. */
    @Test
    void theStatedErrorIsTheRealOne() {
        SplittableRandom random = new SplittableRandom(17);
        double squares = 0;
        double stated = 0;
        int rounds = 400;
        for (int round = 0; round < rounds; round++) {
            Series follower = edge(92, 1).map(value -> value + 0.05 * random.nextGaussian());
            Lag lag = Lag.between(edge(80, 1), follower, 40).orElseThrow();
            squares += (lag.samples() - 12) * (lag.samples() - 12);
            stated += lag.standardError();
        }
        assertThat(stated / rounds / Math.sqrt(squares / rounds)).isBetween(0.6, 1.7);
    }

    @Test
    void shortSignalsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Lag.between(Series.constant(6, 1), Series.constant(6, 1), 3));
    }
}
