package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.Reason;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.SourceDescription;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonRequest;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.Goal;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Torque;

/** A day that decides between two fuels, run as the advice asks for it. All of it is invented. */
class CandidateDayTest {
    private static final double GAIN_PERCENT = 2;
    private static final int MOST_PULLS = 60;
    private static final SweepPlan PLAN = Days.plan("""
            [[candidate]]
            label = "pump"
            fuel = "e10"
            price_per_l = 2.0

            [[candidate]]
            label = "alcohol"
            fuel = "e85"
            price_per_l = 1.0

            [band]
            from_rpm = 3000
            to_rpm = 5500

            [timing]
            start_deg = 20
            least_deg = 10
            most_deg = 46
            """);

    private final SplittableRandom random = new SplittableRandom(5);
    private final List<ResultTable.Row> rows = new ArrayList<>();
    private final List<Advice> said = new ArrayList<>();

    /** 200 N.m at 28 deg on pump fuel, 2 % more at 31 deg on alcohol, with 0.15 % of scatter. */
    private void run(double deg, String label) {
        boolean alcohol = label.equals("alcohol");
        double off = deg - (alcohol ? 31 : 28);
        double torque = 200
                * (alcohol ? 1 + GAIN_PERCENT / 100 : 1)
                * (1 - 5e-4 * off * off)
                * (1 + 0.0015 * random.nextGaussian());
        rows.add(new ResultTable.Row(
                rows.size() + 2L,
                OptionalInt.empty(),
                Optional.of(Advance.ofDeg(deg)),
                Optional.empty(),
                Optional.of(Torque.ofNewtonMetres(torque)),
                Optional.empty(),
                Optional.of(label),
                Optional.empty(),
                KnockMark.NONE,
                true));
    }

    private SessionResult result() {
        return Session.evaluate(SessionInput.of(PLAN, List.of(), rows.isEmpty() ? List.of() : List.of(table(rows))));
    }

    private static ResultTable table(List<ResultTable.Row> rows) {
        return table("table.csv", rows);
    }

    private static ResultTable table(String name, List<ResultTable.Row> rows) {
        return new ResultTable(
                new SourceDescription(name, "UTF-8", ",", '.', List.of()),
                rows,
                new BlockReader.RowCount(rows.size(), 0));
    }

    private SessionResult wholeDay() {
        String fitted = "pump";
        SessionResult day = result();
        Advice next = day.verdict().map(Verdict::advice).orElseThrow();
        while (next.action() != Action.STOP && rows.size() < MOST_PULLS) {
            said.add(next);
            if (next.reason() instanceof Reason.ChangeOver to) {
                fitted = to.label();
            }
            run(next.setting().orElseThrow().advance().orElseThrow().deg(), fitted);
            day = result();
            next = day.verdict().map(Verdict::advice).orElseThrow();
        }
        said.add(next);
        return day;
    }

    @Test
    void theDayIsGuidedToItsAnswer() {
        SessionResult day = wholeDay();
        CandidateDay answer = day.candidates().orElseThrow();
        List<AdviceCode> codes = said.stream().map(Advice::code).toList();
        assertThat(codes.get(0)).isEqualTo(AdviceCode.BASELINE);
        assertThat(codes.get(codes.size() - 1)).isEqualTo(AdviceCode.DECIDED);
        // what the first fuel allowed is not allowed on the second: it starts where the plan does
        Advice change = said.get(codes.indexOf(AdviceCode.CHANGE_OVER));
        assertThat(change.setting().orElseThrow().advance()).contains(Advance.ofDeg(20));
        assertThat(codes.get(codes.indexOf(AdviceCode.CHANGE_OVER) + 1)).isEqualTo(AdviceCode.BASELINE);

        List<MeasuredPull> flushing = day.pulls().stream()
                .filter(pull -> pull.standing() == MeasuredPull.Status.THROWN_AWAY)
                .toList();
        assertThat(flushing)
                .hasSize((int) codes.stream()
                        .filter(code -> code == AdviceCode.CHANGE_OVER)
                        .count())
                .allSatisfy(pull ->
                        assertThat(pull.findings()).extracting(Finding::code).contains(FindingCode.PULL_FLUSHES));
        assertThat(day.pulls().get(0).setting().fuel()).contains("e10");
        assertThat(flushing.get(0).setting().fuel()).contains("e85");

        Comparison gain = answer.comparison()
                .orElseThrow()
                .by(Goal.Response.TORQUE)
                .of("alcohol")
                .orElseThrow();
        assertThat(gain.verdict()).isEqualTo(Comparison.Verdict.MORE);
        assertThat(GAIN_PERCENT)
                .isBetween(
                        gain.difference().interval().low(),
                        gain.difference().interval().high());
        assertThat(answer.isDecided()).isTrue();
        assertThat(answer.runs()).hasSizeBetween(4, answer.order().size());
        // the least good advance is some 2 deg below each peak
        assertThat(day.verdict()
                        .orElseThrow()
                        .chosen()
                        .orElseThrow()
                        .setting()
                        .advance()
                        .orElseThrow()
                        .deg())
                .isBetween(27.0, 32.0);
        knowsTheScatterOfTheSweeps(answer, gain);
        isTaughtAndNoBolder(day, answer);
        joinsWithAnotherDay(rows, answer);
        isSplit(answer, gain);
        isDearerInLitres(answer);
        aDayByPullSaysTheSame(day);
    }

    /** Whoever runs one fuel where another was asked for is asked for the other still. */
    @Test
    void aRunOutOfTurnTakesNoOthersPlace() {
        String fitted = "pump";
        CandidateDay day = result().candidates().orElseThrow();
        while (!day.isDeciding()) {
            Advice next = result().verdict().orElseThrow().advice();
            if (next.reason() instanceof Reason.ChangeOver to) {
                fitted = to.label();
            }
            run(next.setting().orElseThrow().advance().orElseThrow().deg(), fitted);
            day = result().candidates().orElseThrow();
        }
        int planned = day.order().size();
        double pumpDeg = day.candidates()
                .get(0)
                .chosen()
                .orElseThrow()
                .setting()
                .advance()
                .orElseThrow()
                .deg();
        while (day.done() < planned) {
            run(pumpDeg, "pump");
            day = result().candidates().orElseThrow();
        }
        assertThat(day.isDecided()).isFalse();
        assertThat(day.order().subList(planned, day.order().size()))
                .isNotEmpty()
                .containsOnly("alcohol");
        assertThat(result().verdict().orElseThrow().advice().code()).isEqualTo(AdviceCode.CHANGE_OVER);
    }

    private static void knowsTheScatterOfTheSweeps(CandidateDay answer, Comparison gain) {
        assertThat(answer.scatters())
                .containsOnlyKeys("pump", "alcohol")
                .allSatisfy((label, scatter) -> assertThat(scatter.percent()).isBetween(0.1, 0.4));
        Comparison alone = MeasuredComparison.of(answer.runs(), ComparisonRequest.once("pump", 1), Goal.Response.TORQUE)
                .value()
                .orElseThrow()
                .by(Goal.Response.TORQUE)
                .of("alcohol")
                .orElseThrow();
        assertThat(gain.difference().interval().halfWidth())
                .isLessThan(0.9 * alone.difference().interval().halfWidth());
    }

    /** A second day of the same runs, 3 % up as a whole, tells more and no other. */
    private static void joinsWithAnotherDay(List<ResultTable.Row> rows, CandidateDay alone) {
        List<ResultTable.Row> higher = rows.stream()
                .map(row -> new ResultTable.Row(
                        row.line(),
                        row.order(),
                        row.advance(),
                        row.lambda(),
                        row.torque().map(torque -> Torque.ofNewtonMetres(1.03 * torque.newtonMetres())),
                        row.power(),
                        row.label(),
                        row.fuel(),
                        row.knock(),
                        row.used()))
                .toList();
        CandidateDay joined = Session.evaluate(SessionInput.of(
                        PLAN, List.of(), List.of(table("2026-05-03.csv", rows), table("2026-05-17.csv", higher))))
                .candidates()
                .orElseThrow();
        assertThat(joined.runs()).hasSize(2 * alone.runs().size());
        assertThat(joined.done()).isEqualTo(alone.done());
        Comparison.Difference both = gain(joined).difference();
        Comparison.Difference one = gain(alone).difference();
        assertThat(both.percent()).isCloseTo(one.percent(), within(0.25));
        assertThat(both.interval().halfWidth()).isLessThan(one.interval().halfWidth());
    }

    private static Comparison gain(CandidateDay day) {
        return day.gain(day.candidates().get(1), Goal.Response.TORQUE).orElseThrow();
    }

    /** The second sweep knows the curve of the first, yet goes no further than one that begins with nothing, and starts no further on. */
    private static void isTaughtAndNoBolder(SessionResult day, CandidateDay answer) {
        List<ResultTable.Row> own = day.tables().get(0).rows().stream()
                .filter(row -> row.label().equals(Optional.of("alcohol")))
                .skip(1)
                .toList();
        double furthest = 20;
        assertThat(deg(own.get(0))).isEqualTo(furthest);
        int count = 1;
        Verdict alone = verdict(own.subList(0, count));
        while (alone.advice().action() != Action.STOP && count < own.size()) {
            double usual = alone.advice()
                    .setting()
                    .orElseThrow()
                    .advance()
                    .orElseThrow()
                    .deg();
            assertThat(deg(own.get(count))).isLessThanOrEqualTo(Math.max(furthest, usual));
            furthest = Math.max(furthest, deg(own.get(count)));
            count++;
            alone = verdict(own.subList(0, count));
        }
        Verdict taught = answer.candidates().get(1).swept().orElseThrow();
        assertThat(taught.teaches().orElseThrow().lnCurvature().sd())
                .isLessThan(0.95 * alone.teaches().orElseThrow().lnCurvature().sd());
    }

    private static double deg(ResultTable.Row row) {
        return row.advance().orElseThrow().deg();
    }

    /** Of a day of one fuel alone. */
    private static Verdict verdict(List<ResultTable.Row> rows) {
        return Session.evaluate(SessionInput.of(Days.timing(), List.of(), List.of(table(rows))))
                .verdict()
                .orElseThrow();
    }

    /** What its own setting makes on the alcohol is known from its curve; the rest of the gain is the fuel. */
    private static void isSplit(CandidateDay answer, Comparison gain) {
        double own = 31 - left(answer.candidates().get(1));
        double reference = 31 - left(answer.candidates().get(0));
        CandidateDay.Shares shares = answer.candidates().get(1).shares().orElseThrow();
        assertThat(0.05 * (reference * reference - own * own))
                .isBetween(
                        shares.setting().interval().low(),
                        shares.setting().interval().high());
        assertThat(shares.setting().percent() + shares.itself().percent())
                .isCloseTo(gain.difference().percent(), within(1e-9));
        assertThat(shares.itself().interval().halfWidth())
                .isGreaterThan(gain.difference().interval().halfWidth());
        assertThat(answer.candidates().get(0).shares()).isEmpty();
    }

    private static double left(CandidateDay.State state) {
        return state.chosen().orElseThrow().setting().advance().orElseThrow().deg();
    }

    /**
     * Alternative Fuels Data Center, fuel properties: E85 holds 73 to 83 % of the energy of petrol by volume, so the same power takes a fifth
     * to a third more of it, and a few percent on top since it commonly runs richer; at half the price it costs less.
     */
    private static void isDearerInLitres(CandidateDay answer) {
        CandidateDay.Consumption used = answer.consumption(answer.candidates().get(1), Goal.Response.TORQUE)
                .orElseThrow();
        assertThat(used.volume().orElseThrow()).isBetween(1 / 0.83, 1.05 / 0.73);
        assertThat(used.cost().orElseThrow()).isEqualTo(used.volume().orElseThrow() / 2);
        assertThat(used.energy().orElseThrow()).isBetween(0.95, 1.05);
        assertThat(answer.consumption(answer.candidates().get(0), Goal.Response.TORQUE))
                .isEmpty();
    }

    /** After each pull it says what was said live. */
    private void aDayByPullSaysTheSame(SessionResult whole) {
        DayByPull byPull = DayByPull.of(SessionInput.of(PLAN, List.of(), whole.tables()));
        int change = said.stream().map(Advice::code).toList().indexOf(AdviceCode.CHANGE_OVER);
        assertThat(byPull.after(change).verdict().orElseThrow().advice()).isEqualTo(said.get(change));
        assertThat(byPull.after(rows.size() - 1).verdict().orElseThrow().advice())
                .isEqualTo(said.get(said.size() - 2));
    }
}
