package org.nextpull.pull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.unit.SpeedBand;

class LambdaAlignmentTest {
    private static final int DAYS = 60;
    private static final PullRules RULES = Rules.over(new SpeedBand(3000, 6500));

    /** Mixture over speed in the log's pulls: 0.85 at 3000 and 0.90 at 6500 rpm; 1.0 off load. */
    private static double burnt(double rpm, double throttle) {
        return throttle > 0.9 ? 0.85 + 0.05 * (rpm - 3000) / 3500 : 1.0;
    }

    /** A pull whose lambda shows what was burnt so long before. */
    private static BenchLog late(double hz, double delayS, long seed) {
        BenchLog log = new BenchLog(hz, seed).noise(3, 1).pull(2500, 7000, 300);
        int rows = (int) Math.round(delayS * hz);
        Random random = new Random(seed);
        int[] row = {0};
        return log.with(BenchLog.LAMBDA, cells -> {
            int source = Math.max(0, row[0]++ - rows);
            return burnt(log.value(source, BenchLog.SPEED), log.value(source, BenchLog.THROTTLE))
                    + 0.004 * random.nextGaussian();
        });
    }

    /** Mean of lambda less what was burnt at the speed of its row. */
    private static double misalignment(Candidate pull) {
        double sum = 0;
        int count = 0;
        for (int row : pull.samples().presentRows(BenchLog.LAMBDA)) {
            double rpm = pull.samples().value(BenchLog.SPEED, row);
            if (rpm > 2800 && rpm < 6800) {
                sum += pull.samples().value(BenchLog.LAMBDA, row) - burnt(rpm, 1);
                count++;
            }
        }
        return sum / count;
    }

    @ParameterizedTest
    @CsvSource({"50, 0.3", "50, 0.8", "20, 0.5", "100, 0.06", "10, 1.0"})
    void theDelayIsReadOffTheThrottleEdge(double hz, double delayS) {
        Candidate pull = late(hz, delayS, 7).found(RULES).usable().get(0);
        assertThat(pull.lambda()).isInstanceOfSatisfying(Candidate.LambdaAlignment.Estimated.class, estimate -> {
            assertThat(estimate.appliedS()).isCloseTo(delayS, within(Math.max(0.05, 1 / hz)));
            assertThat(estimate.errorS()).isBetween(0.001, 0.2);
        });
        assertThat(pull.findings()).extracting(Finding::code).contains(FindingCode.LAMBDA_DELAY_ESTIMATED);
        assertThat(misalignment(pull)).isCloseTo(0, within(0.001));
    }

    /** A sensor of first order behind a pipe: its lag is the time in the pipe and its time constant, as a ramp through such a sensor shows. */
    @Test
    void theStatedErrorHoldsForASensorThatBlursWhatItShows() {
        Random random = new Random(16);
        int held = 0;
        for (int seed = 1; seed <= DAYS; seed++) {
            double hz = random.nextBoolean() ? 20 : 50;
            double constantS = 0.02 + 0.1 * random.nextDouble();
            int rows = (int) Math.round((0.05 + 0.5 * random.nextDouble()) * hz);
            Candidate pull =
                    blurred(hz, rows, constantS, seed).found(RULES).usable().get(0);
            if (pull.lambda() instanceof Candidate.LambdaAlignment.Estimated estimate) {
                held += Math.abs(estimate.appliedS() - rows / hz - constantS) <= estimate.errorS() ? 1 : 0;
            }
        }
        assertThat(held).isGreaterThanOrEqualTo((int) (0.9 * DAYS));
    }

    private static BenchLog blurred(double hz, int rows, double constantS, long seed) {
        BenchLog log = new BenchLog(hz, seed).noise(3, 1).pull(2500, 7000, 300);
        Random random = new Random(seed);
        int[] row = {0};
        double[] shown = {1};
        return log.with(BenchLog.LAMBDA, cells -> {
            int source = Math.max(0, row[0]++ - rows);
            double burnt = burnt(log.value(source, BenchLog.SPEED), log.value(source, BenchLog.THROTTLE));
            shown[0] += (burnt - shown[0]) * (1 - Math.exp(-1 / hz / constantS));
            return shown[0] + 0.004 * random.nextGaussian();
        });
    }

    @Test
    void aGivenDelayIsAppliedAsItIs() {
        BenchLog log = late(50, 0.6, 8);
        Candidate given = log.found(Rules.withLambdaDelayS(RULES, 0.6)).usable().get(0);
        assertThat(given.lambda()).isEqualTo(new Candidate.LambdaAlignment.Given(0.6));
        assertThat(misalignment(given)).isCloseTo(0, within(0.0006));
        Candidate none = log.found(Rules.withLambdaDelayS(RULES, 0)).usable().get(0);
        // 0.6 s at 300 rpm/s is 180 rpm, over which the mixture changes by 0.0026
        assertThat(misalignment(none)).isCloseTo(-0.0026, within(0.0006));
        assertThat(given.findings()).isEmpty();
    }

    @Test
    void withoutAnAnswerToTheThrottleNothingIsMoved() {
        BenchLog log = new BenchLog(50, 9).pull(2500, 7000, 300);
        Random random = new Random(9);
        log.with(BenchLog.LAMBDA, cells -> 0.87 + 0.01 * random.nextGaussian());
        Candidate pull = log.found(RULES).usable().get(0);
        assertThat(pull.lambda()).isEqualTo(new Candidate.LambdaAlignment.NotApplied());
        assertThat(pull.findings()).extracting(Finding::code).containsExactly(FindingCode.LAMBDA_DELAY_NOT_APPLIED);
    }

    @Test
    void theLastRowsAreReadFromAfterThePull() {
        BenchLog log = late(50, 0.6, 10);
        Candidate pull = log.found(Rules.withLambdaDelayS(RULES, 0.6)).usable().get(0);
        assertThat(pull.samples().presentRows(BenchLog.LAMBDA))
                .hasSize(pull.samples().rows());
    }

    @Test
    void severalSensorsAreMovedAndKeptApart() {
        Channel second = new Channel(Role.LAMBDA, 2);
        BenchLog log = late(50, 0.6, 11);
        log.with(second, cells -> Objects.requireNonNull(cells.get(BenchLog.LAMBDA)) + 0.02);
        Candidate pull = log.found(Rules.withLambdaDelayS(RULES, 0.6)).usable().get(0);
        double[] one = pull.samples().presentValues(BenchLog.LAMBDA);
        double[] other = pull.samples().presentValues(second);
        assertThat(other).hasSameSizeAs(one);
        for (int row = 0; row < one.length; row++) {
            assertThat(other[row] - one[row]).isCloseTo(0.02, within(1e-9));
        }
    }
}
