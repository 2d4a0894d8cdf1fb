package org.nextpull.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.Limit;

class PullLifeTest {
    private static final int ROWS = 40;
    private static final double ZERO_C = 273.15;
    private static final double NOTHING = Double.NaN;

    private static PullLife of(Limit limit, Rows rows) {
        return PullLife.of(rows.samples(), true, List.of(limit));
    }

    private static ChannelLife.Life life(Limit limit, Role role, IntToDoubleFunction value) {
        PullLife life = of(limit, Rows.ofPull(ROWS).with(role, value));
        return life.unwatched().containsKey(limit) ? life.unwatched().get(limit).life() : ChannelLife.Life.LIVE;
    }

    private static List<FindingCode> said(PullLife life) {
        return life.findings(Place.nowhere()).stream().map(Finding::code).toList();
    }

    /** A sensor about its value, as it is logged to three places. */
    private static IntToDoubleFunction about(double value, double noise) {
        Random random = new Random(7);
        double[] drawn = random.doubles(ROWS, value - noise, value + noise).toArray();
        return row -> Math.rint(drawn[row] * 1000) / 1000;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.8, 1.99})
    void aLambdaThatReadsOneValueInEveryRowIsDead(double value) {
        assertThat(life(Limit.LEAN, Role.LAMBDA, row -> value)).isNotEqualTo(ChannelLife.Life.LIVE);
    }

    @ParameterizedTest
    @CsvSource({"0.88, LIVE", "1.05, LIVE", "0.7, LIVE", "1.99, IMPLAUSIBLE", "0.5, IMPLAUSIBLE", "12.6, IMPLAUSIBLE"})
    void aLambdaIsHeldAgainstWhatAnEngineRunsOn(double value, ChannelLife.Life life) {
        assertThat(life(Limit.LEAN, Role.LAMBDA, about(value, 0.006))).isEqualTo(life);
    }

    @ParameterizedTest
    @CsvSource({"20, IMPLAUSIBLE", "88, IMPLAUSIBLE", "700, LIVE", "1999, OUT_OF_RANGE", "2000, OUT_OF_RANGE"})
    void anExhaustSensorIsHeldAgainstWhatAnExhaustHas(double celsius, ChannelLife.Life life) {
        assertThat(life(Limit.EXHAUST, Role.EXHAUST_TEMPERATURE, row -> celsius + ZERO_C + row))
                .isEqualTo(life);
    }

    @Test
    void anExhaustThatStandsStillThroughASweepIsFrozenAndOnAHeldSpeedItMayBeSettled() {
        Rows rows = Rows.ofPull(ROWS).with(Role.EXHAUST_TEMPERATURE, row -> 700 + ZERO_C);
        assertThat(PullLife.of(rows.samples(), true, List.of(Limit.EXHAUST)).unwatched())
                .containsKey(Limit.EXHAUST);
        assertThat(PullLife.of(rows.samples(), false, List.of(Limit.EXHAUST)).unwatched())
                .isEmpty();
    }

    @Test
    void waterOilAndFuelPressureMayStandStill() {
        assertThat(life(Limit.COOLANT, Role.COOLANT_TEMPERATURE, row -> 86 + ZERO_C))
                .isEqualTo(ChannelLife.Life.LIVE);
        assertThat(life(Limit.FUEL_PRESSURE, Role.FUEL_PRESSURE, row -> 300e3)).isEqualTo(ChannelLife.Life.LIVE);
        assertThat(life(Limit.COOLANT, Role.COOLANT_TEMPERATURE, row -> -40 + ZERO_C))
                .isEqualTo(ChannelLife.Life.IMPLAUSIBLE);
        assertThat(life(Limit.OIL_PRESSURE, Role.OIL_PRESSURE, row -> 400e3)).isEqualTo(ChannelLife.Life.FROZEN);
        assertThat(life(Limit.INJECTOR_DUTY, Role.INJECTOR_DUTY, row -> 0)).isEqualTo(ChannelLife.Life.IMPLAUSIBLE);
        assertThat(life(Limit.BOOST, Role.MANIFOLD_PRESSURE, row -> 20e3)).isEqualTo(ChannelLife.Life.IMPLAUSIBLE);
    }

    /** Blank from a row on, or stuck from a row on. */
    @ParameterizedTest
    @CsvSource({"40, LIVE", "35, LIVE", "25, BLANK", "0, BLANK"})
    void aSensorThatDiesInMidPullIsTold(int rowsAlive, ChannelLife.Life life) {
        IntToDoubleFunction alive = about(0.88, 0.006);
        PullLife pull = of(
                Limit.LEAN,
                Rows.ofPull(ROWS).with(Role.LAMBDA, row -> row < rowsAlive ? alive.applyAsDouble(row) : NOTHING));
        assertThat(said(pull))
                .isEqualTo(life == ChannelLife.Life.LIVE ? List.of() : List.of(FindingCode.CHANNEL_BLANK));
        assertThat(pull.dead()).hasSize(life == ChannelLife.Life.LIVE ? 0 : 1);
        assertThat(life(Limit.LEAN, Role.LAMBDA, row -> row < 20 ? alive.applyAsDouble(row) : 0.682))
                .isEqualTo(ChannelLife.Life.FROZEN);
    }

    @Test
    void aSensorThatIsLoggedSlowlyLives() {
        assertThat(life(Limit.EXHAUST, Role.EXHAUST_TEMPERATURE, row -> row % 10 == 0 ? 900 + row : NOTHING))
                .isEqualTo(ChannelLife.Life.LIVE);
    }

    /** The sensor that died may be on the cylinder that suffers; a column that is always empty belongs to none. */
    @Test
    void everySensorOfALimitMustLive() {
        Rows rows = Rows.ofPull(ROWS)
                .with(Role.EXHAUST_TEMPERATURE, row -> 900 + row)
                .with(new Channel(Role.EXHAUST_TEMPERATURE, 2), row -> 20 + ZERO_C)
                .with(new Channel(Role.EXHAUST_TEMPERATURE, 3), row -> NOTHING);
        PullLife life = of(Limit.EXHAUST, rows);
        assertThat(life.dead()).containsExactly(new Channel(Role.EXHAUST_TEMPERATURE, 2));
        assertThat(life.unwatched()).containsKey(Limit.EXHAUST);

        Rows unfitted = Rows.ofPull(ROWS)
                .with(Role.EXHAUST_TEMPERATURE, row -> 900 + row)
                .with(new Channel(Role.EXHAUST_TEMPERATURE, 2), row -> NOTHING);
        assertThat(of(Limit.EXHAUST, unfitted).unwatched()).isEmpty();
    }

    @Test
    void aLimitWithoutAColumnIsNotWatchedAndSaysNothingForEachPull() {
        PullLife life = of(Limit.EXHAUST, Rows.ofPull(ROWS));
        assertThat(life.unwatched())
                .hasEntrySatisfying(
                        Limit.EXHAUST, gap -> assertThat(gap.life()).isEqualTo(ChannelLife.Life.NOT_LOGGED));
        assertThat(said(life)).isEmpty();
    }
}
