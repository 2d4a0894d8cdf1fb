package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.TorqueLeft;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Torque;

/** Days of a map that follow the advice on an invented engine: what must be known before a day ends, and before a peak is stated. */
class EndingRulesTest {
    private static final SweepPlan PLAN = Pulls.plan("""
            [band]
            from_rpm = 3000
            to_rpm = 6000
            rows_every_rpm = 500
            [timing]
            least_deg = 10
            most_deg = 40
            sets = 'map'
            """);
    /** At most this may be left, percent of torque, and with this chance over half a percent: what a day ends at. */
    private static final TorqueLeft LITTLE = new TorqueLeft(0.11, 0.015);

    private static final int DAYS = 6;
    private static final int MOST_PULLS = 14;
    /** Standard deviations from 5 to 95 % of a normal distribution, and by how much a reported interval is wider. */
    private static final double NINETY_SDS = 2 * 1.645 * 1.06;
    /** Standard deviations by which clean pulls lie beyond a peak where the chance is three quarters: 0.67, and less where tails are heavy. */
    private static final double SURELY_SDS = 0.4;

    private static final List<Verdict> VERDICTS = new ArrayList<>();

    /** Best advance rises from 24 deg at 3,000 rpm to 36 at 6,000; 0.03 % are lost a degree squared beside it. */
    private static MeasuredPull run(int number, DoubleUnaryOperator advance, Random noise) {
        double whole = 200 * (1 + 0.002 * noise.nextGaussian());
        List<Figures.AtSpeed> rows = new ArrayList<>();
        for (double rpm = 3000; rpm <= 6000; rpm += 500) {
            double deg = advance.applyAsDouble(rpm);
            double off = deg - (24 + (rpm - 3000) / 250);
            double torque = whole * (1 + 0.001 * noise.nextGaussian()) * (1 - 3e-4 * off * off);
            rows.add(new Figures.AtSpeed(rpm, Torque.ofNewtonMetres(torque), Optional.of(Advance.ofDeg(deg))));
        }
        return Pulls.ofRows(number, advance.applyAsDouble(4500), Torque.ofNewtonMetres(whole), rows);
    }

    @BeforeAll
    static void runDays() {
        for (int seed = 1; seed <= DAYS; seed++) {
            Random noise = new Random(seed);
            List<MeasuredPull> pulls = new ArrayList<>();
            Optional<SparkMap> next = Optional.empty();
            do {
                DoubleUnaryOperator advance =
                        next.<DoubleUnaryOperator>map(map -> map::degAt).orElse(rpm -> 20 + (rpm - 3000) / 250);
                pulls.add(run(pulls.size() + 1, advance, noise));
                Verdict verdict = Advisor.judge(
                        new Day(PLAN, List.copyOf(pulls), Set.of(), Optional.empty(), PresentConditions.unknown()));
                VERDICTS.add(verdict);
                next = verdict.advice().setting().flatMap(EngineSetting::map);
            } while (next.isPresent() && pulls.size() < MOST_PULLS);
        }
    }

    private static boolean ends(Verdict verdict) {
        AdviceCode code = verdict.advice().code();
        return code == AdviceCode.CONFIRM || code == AdviceCode.SETTLED;
    }

    private static TorqueLeft left(Verdict verdict) {
        return verdict.map().orElseThrow().leftAtPeak();
    }

    @Test
    void eachDaySettles() {
        assertThat(VERDICTS.stream()
                        .filter(verdict -> verdict.advice().code() == AdviceCode.SETTLED)
                        .count())
                .isEqualTo(DAYS);
    }

    @Test
    void noDayEndsBeforeLittleIsLeftInTheMeanAndByChance() {
        assertThat(VERDICTS)
                .as("days that little chance alone keeps going")
                .anyMatch(verdict -> !ends(verdict)
                        && left(verdict).expectedPercent() <= LITTLE.expectedPercent()
                        && left(verdict).chanceOfMuch() > LITTLE.chanceOfMuch());
        assertThat(VERDICTS.stream().filter(EndingRulesTest::ends)).isNotEmpty().allSatisfy(verdict -> {
            assertThat(left(verdict).expectedPercent()).isLessThanOrEqualTo(LITTLE.expectedPercent());
            assertThat(left(verdict).chanceOfMuch()).isLessThanOrEqualTo(LITTLE.chanceOfMuch());
        });
    }

    @Test
    void aPeakIsStatedOnlyWhereCleanPullsSurelyLieBeyondIt() {
        List<AnswerRow> stated = VERDICTS.stream()
                .flatMap(verdict -> verdict.map().orElseThrow().rows().stream())
                .filter(AnswerRow::isBracketed)
                .toList();
        assertThat(stated).hasSizeGreaterThan(DAYS).allSatisfy(row -> {
            double sd = row.answer().orElseThrow().interval().orElseThrow().width() / NINETY_SDS;
            double peak = row.answer().orElseThrow().peakDeg().orElseThrow();
            assertThat(row.runDeg().orElseThrow() - peak).isGreaterThan(SURELY_SDS * sd);
        });
    }
}
