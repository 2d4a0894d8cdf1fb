package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.SparkMap;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.fit.Belief;
import org.nextpull.fit.CarriedShape;
import org.nextpull.fit.Experience;
import org.nextpull.fit.SpeedRows;
import org.nextpull.fit.SurfaceKnowledge;
import org.nextpull.fit.SurfacePriors;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.Figures;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Torque;

/** Days whose ignition holds a map, at the level of the whole advice. */
class DayReadingsTest {
    private static final SweepPlan PLAN = plan("sets = 'map'");
    private static final double NOTHING = 1e-9;

    private static SweepPlan plan(String sets) {
        return Pulls.plan("""
                [band]
                from_rpm = 3000
                to_rpm = 6000
                rows_every_rpm = 500
                [timing]
                least_deg = 10
                most_deg = 40
                %s
                """.formatted(sets));
    }

    private static MeasuredPull pull(int number, DoubleUnaryOperator advance, DoubleUnaryOperator torque) {
        List<Figures.AtSpeed> rows = new ArrayList<>();
        for (double rpm = 3000; rpm <= 6000; rpm += 500) {
            rows.add(new Figures.AtSpeed(
                    rpm,
                    Torque.ofNewtonMetres(torque.applyAsDouble(rpm)),
                    Optional.of(Advance.ofDeg(advance.applyAsDouble(rpm)))));
        }
        return Pulls.ofRows(number, advance.applyAsDouble(4500), Torque.ofNewtonMetres(200), rows);
    }

    /** An engine whose best advance rises from 24 deg at 3,000 rpm to 36 at 6,000 and which loses 0.03 % a degree squared beside it. */
    private static MeasuredPull run(int number, DoubleUnaryOperator advance) {
        return pull(number, advance, rpm -> {
            double off = advance.applyAsDouble(rpm) - (24 + (rpm - 3000) / 250);
            return 200 * (1 - 3e-4 * off * off);
        });
    }

    private static MeasuredPull knocking(MeasuredPull pull, double rpm) {
        KnockHeard.KnockAt at = new KnockHeard.KnockAt(OptionalDouble.of(rpm), Optional.empty(), Optional.empty(), 1);
        return pull.withKnock(new KnockHeard(
                KnockMark.HEARD,
                OptionalDouble.of(1),
                OptionalDouble.empty(),
                List.of(at),
                List.of(),
                List.of(),
                false));
    }

    private static DoubleUnaryOperator rising(double deg) {
        return rpm -> deg + (rpm - 3000) / 500;
    }

    private static Day day(SweepPlan plan, MeasuredPull... pulls) {
        return new Day(plan, List.of(pulls), Set.of(), Optional.empty(), PresentConditions.unknown());
    }

    private static SparkMap next(Day day) {
        return Advisor.judge(day).advice().setting().flatMap(EngineSetting::map).orElseThrow();
    }

    @Test
    void eachSpeedClimbsByNoMoreThanAStep() {
        SparkMap next = next(day(PLAN, run(1, rising(16))));
        for (SparkMap.Cell cell : next.cells()) {
            double before = rising(16).applyAsDouble(cell.rpm());
            assertThat(cell.advance().deg()).isGreaterThan(before).isLessThanOrEqualTo(before + 2 + NOTHING);
        }
    }

    @Test
    void knockAtASpeedHoldsItAndItsNeighboursAloneAndForGood() {
        Day day = day(PLAN, run(1, rising(16)), run(2, rising(18)), knocking(run(3, rising(20)), 4500));
        SparkMap next = next(day);
        assertThat(next.degAt(4500)).isLessThanOrEqualTo(rising(18).applyAsDouble(4500) + NOTHING);
        assertThat(next.degAt(3000)).isGreaterThan(rising(20).applyAsDouble(3000));
        assertThat(next.degAt(6000)).isGreaterThan(rising(20).applyAsDouble(6000));
        assertThat(Advisor.judge(day).map().orElseThrow().knockLimits())
                .extracting(MapState.KnockAtRow::pull)
                .isNotEmpty()
                .containsOnly(3);
    }

    @Test
    void knockWhoseSpeedNobodyKnowsHoldsEverySpeed() {
        MeasuredPull heard = run(3, rising(20)).withKnock(KnockHeard.marked(KnockMark.HEARD));
        Advice advice = Advisor.judge(day(PLAN, run(1, rising(16)), run(2, rising(18)), heard))
                .advice();
        SparkMap set = advice.setting()
                .or(() -> advice.leave().map(Chosen::setting))
                .flatMap(EngineSetting::map)
                .orElseThrow();
        for (SparkMap.Cell cell : set.cells()) {
            assertThat(cell.advance().deg()).isLessThanOrEqualTo(rising(18).applyAsDouble(cell.rpm()) + NOTHING);
        }
    }

    @Test
    void aSpeedThatACellWithKnockHoldsIsDecidedByKnock() {
        SweepPlan coarse = plan("sets = 'map'\nmap_rpm = [3000, 4500, 6000]");
        List<MeasuredPull> pulls = new ArrayList<>();
        for (int step = 0; step < 8; step++) {
            double deg = 16 + 2 * step;
            DoubleUnaryOperator map =
                    rpm -> rpm <= 4500 ? 16 + (deg - 16) * (rpm - 3000) / 1500 : deg + (rpm - 4500) / 500;
            pulls.add(run(step + 1, map));
        }
        pulls.set(0, knocking(run(1, rpm -> 18 + (rpm - 3000) / 500), 3000));
        Map<Double, ChosenBy> by =
                Advisor.judge(day(coarse, pulls.toArray(MeasuredPull[]::new))).map().orElseThrow().rows().stream()
                        .collect(Collectors.toMap(AnswerRow::rpm, AnswerRow::by));
        assertThat(by)
                .containsEntry(3000.0, ChosenBy.KNOCK_LIMIT)
                .containsEntry(3500.0, ChosenBy.KNOCK_LIMIT)
                .containsEntry(5000.0, ChosenBy.PEAK);
    }

    @Test
    void aLoneFlagIsLookedAtAgainOnlyWhereThePlanAllowsItAndTwoCleanLooksStrikeIt() {
        SweepPlan allowed = plan("""
                sets = 'map'
                [limits]
                look_again = true
                """);
        List<MeasuredPull> pulls =
                new ArrayList<>(List.of(run(1, rising(16)), run(2, rising(18)), knocking(run(3, rising(20)), 4500)));
        Advice refused =
                Advisor.judge(day(PLAN, pulls.toArray(MeasuredPull[]::new))).advice();
        assertThat(refused.code()).isNotEqualTo(AdviceCode.LOOK_AGAIN);
        for (int look = 0; look < 2; look++) {
            Advice advice = Advisor.judge(day(allowed, pulls.toArray(MeasuredPull[]::new)))
                    .advice();
            SparkMap next = advice.setting().flatMap(EngineSetting::map).orElseThrow();
            assertThat(advice.code()).isEqualTo(AdviceCode.LOOK_AGAIN);
            assertThat(next.degAt(4500)).isEqualTo(rising(20).applyAsDouble(4500) - 1 + look);
            pulls.add(run(pulls.size() + 1, next::degAt));
        }
        Verdict cleared = Advisor.judge(day(allowed, pulls.toArray(MeasuredPull[]::new)));
        assertThat(cleared.map().orElseThrow().knockLimits()).isEmpty();
        assertThat(Advisor.judge(day(PLAN, pulls.toArray(MeasuredPull[]::new)))
                        .map()
                        .orElseThrow()
                        .knockLimits())
                .isNotEmpty();
    }

    @Test
    void aMapIsToldFromTheLogAndSaid() {
        Day flat = day(plan("start_deg = 16"), run(1, rpm -> 16), run(2, rpm -> 18));
        assertThat(Ignition.of(flat)).isEqualTo(Ignition.FLAT);
        Verdict verdict = Advisor.judge(day(plan("start_deg = 16"), run(1, rising(16)), run(2, rising(18))));
        assertThat(verdict.advice().setting().flatMap(EngineSetting::map)).isPresent();
        assertThat(verdict.findings()).extracting(Finding::code).containsExactly(FindingCode.MAP_TOLD_BY_LOG);
    }

    @Test
    void anAdvanceThatIsStuckGivesAFindingAndNoMap() {
        Day stuck = day(PLAN, run(1, rpm -> 20), run(2, rpm -> 20));
        assertThat(Advisor.hindrance(stuck)).map(Finding::code).contains(FindingCode.MAP_ADVANCE_STUCK);
        assertThat(Advisor.hindrance(day(PLAN, run(1, rpm -> 20), run(2, rpm -> 22))))
                .isEmpty();
    }

    @Test
    void anAdvanceThatSticksInTheMiddleOfADayGivesAFindingAndNoMap() {
        MeasuredPull first = run(1, rising(18));
        assertThat(Advisor.hindrance(day(PLAN, first, run(2, rising(20)), run(3, rpm -> 18), run(4, rpm -> 18))))
                .hasValueSatisfying(finding -> {
                    assertThat(finding.code()).isEqualTo(FindingCode.MAP_ADVANCE_STICKS);
                    assertThat(finding.place().pull()).hasValue(3);
                });
        assertThat(Advisor.hindrance(day(PLAN, first, run(2, rpm -> 18), run(3, rpm -> 20))))
                .as("flat maps that differ were set")
                .isEmpty();
        assertThat(Advisor.hindrance(day(PLAN, first, run(2, rpm -> 18)))).isEmpty();
        assertThat(Advisor.hindrance(day(PLAN, first, run(2, rpm -> 40), run(3, rpm -> 40))))
                .as("the most that the plan allows at every speed")
                .isEmpty();
    }

    @Test
    void anAdvanceFarBesideThePlanGivesAFindingAndNoMap() {
        DoubleUnaryOperator afterTop = rpm -> -rising(18).applyAsDouble(rpm);
        assertThat(Advisor.hindrance(day(PLAN, run(1, afterTop))))
                .map(Finding::code)
                .contains(FindingCode.MAP_ADVANCE_OUTSIDE);
        assertThat(Advisor.hindrance(day(PLAN, run(1, rpm -> rising(18).applyAsDouble(rpm) - 8))))
                .isEmpty();
    }

    @Test
    void anAdvanceThatWrapsGivesAFindingAndNoMap() {
        DoubleUnaryOperator wrapped = rpm -> rising(22).applyAsDouble(rpm) > 25.5
                ? rising(22).applyAsDouble(rpm) - 25.6
                : rising(22).applyAsDouble(rpm);
        assertThat(Advisor.hindrance(day(PLAN, run(1, rising(18)), run(2, wrapped))))
                .hasValueSatisfying(finding -> {
                    assertThat(finding.code()).isEqualTo(FindingCode.MAP_ADVANCE_JUMPS);
                    assertThat(finding.place().pull()).hasValue(2);
                });
        MeasuredPull struck = run(2, wrapped).withStanding(MeasuredPull.Status.STRUCK);
        assertThat(Advisor.hindrance(day(PLAN, run(1, rising(18)), struck, run(3, rising(20)))))
                .isEmpty();
    }

    @Test
    void pullsThatShareNoSpeedGiveAFindingAndNoMap() {
        MeasuredPull whole = run(1, rising(18));
        List<Figures.AtSpeed> rows = whole.figures().orElseThrow().rows();
        Day apart =
                day(PLAN, whole.withRows(rows.subList(0, 3)), run(2, rising(20)).withRows(rows.subList(3, 7)));
        assertThat(Advisor.hindrance(apart)).map(Finding::code).contains(FindingCode.MAP_SPEEDS_NOT_SHARED);
    }

    @Test
    void theDayEndsWithAMapThatWasRunAndLiesWithinItsOwnIntervals() {
        List<MeasuredPull> pulls = new ArrayList<>(List.of(run(1, rising(16))));
        Verdict verdict = Advisor.judge(day(PLAN, pulls.toArray(MeasuredPull[]::new)));
        while (verdict.advice().action() != Action.STOP && pulls.size() < 12) {
            SparkMap next =
                    verdict.advice().setting().flatMap(EngineSetting::map).orElseThrow();
            pulls.add(run(pulls.size() + 1, next::degAt));
            verdict = Advisor.judge(day(PLAN, pulls.toArray(MeasuredPull[]::new)));
        }
        assertThat(verdict.advice().action()).isEqualTo(Action.STOP);
        SparkMap left = verdict.chosen().orElseThrow().setting().map().orElseThrow();
        assertThat(pulls)
                .anySatisfy(pull -> assertThat(pull.figures().orElseThrow().rows())
                        .allSatisfy(row ->
                                assertThat(row.advance().orElseThrow().deg()).isEqualTo(left.degAt(row.rpm()))));
        assertThat(verdict.map().orElseThrow().rows())
                .filteredOn(row -> row.answer().isPresent())
                .hasSizeGreaterThan(3);
    }

    /** A pull of the engine on a day when it made more or less torque and drifted on. */
    private static MeasuredPull onDay(int day, int number, DoubleUnaryOperator advance) {
        double level = 1 + 0.02 * Math.sin(3.0 * day);
        double drifted = 1 - 2e-4 * (number % 4);
        MeasuredPull pull = pull(number, advance, rpm -> {
            double off = advance.applyAsDouble(rpm) - (24 + (rpm - 3000) / 250);
            return 200 * level * drifted * (1 - 3e-4 * off * off);
        });
        return pull.at(number - 1.0, day);
    }

    private static Day taught(List<MeasuredPull> pulls, Optional<Experience> experience) {
        return new Day(PLAN, pulls, Set.of(), experience, PresentConditions.unknown());
    }

    /** Rule 8 at each speed: days that taught a map which rises by 7 deg a krpm lead no cell further than the day alone would go. */
    @Test
    void whatEarlierDaysTaughtLeadsNoCellFurther() {
        SpeedRows rows = SpeedRows.ofRpm(3000, 4500, 6000);
        Experience steep = new Experience(
                new SurfaceKnowledge(
                        SparkMap.of(rows.rpm(), new double[] {21, 30, 42}),
                        new CarriedShape(rows, new double[9]),
                        new Belief(Math.log(3e-4), 0.05),
                        new Belief(Math.log(0.3), 0.3),
                        SurfacePriors.Shape.usual(),
                        new Belief(-0.015, 0.012),
                        Optional.empty()),
                3);
        List<MeasuredPull> pulls = new ArrayList<>();
        double highest = 0;
        for (double deg : new double[] {21, 25, 24, 26}) {
            pulls.add(run(pulls.size() + 1, rpm -> deg + (rpm - 3000) / 250));
            highest = Math.max(highest, deg);
            Optional<SparkMap> usual = Advisor.judge(taught(pulls, Optional.empty()))
                    .advice()
                    .setting()
                    .flatMap(EngineSetting::map);
            Optional<SparkMap> learned = Advisor.judge(taught(pulls, Optional.of(steep)))
                    .advice()
                    .setting()
                    .flatMap(EngineSetting::map);
            if (usual.isPresent() && learned.isPresent()) {
                for (double rpm = 3000; rpm <= 6000; rpm += 500) {
                    assertThat(learned.get().degAt(rpm))
                            .as("after pull %d at %.0f rpm", pulls.size(), rpm)
                            .isLessThanOrEqualTo(Math.max(
                                            highest + (rpm - 3000) / 250,
                                            usual.get().degAt(rpm))
                                    + NOTHING);
                }
            }
        }
    }

    @Test
    void eachReadingCarriesTheMixtureThatWasLoggedAtItsSpeed() {
        MeasuredPull whole = run(1, rising(16));
        MeasuredPull byRow = whole.withRows(whole.figures().orElseThrow().rows().stream()
                .map(row -> new Figures.AtSpeed(
                        row.rpm(),
                        row.torque(),
                        row.advance(),
                        row.rpm() > 4000 ? Optional.of(Lambda.of(0.95 - row.rpm() / 50_000)) : Optional.empty(),
                        row.heldAtS()))
                .toList());
        DayView view = DayView.of(day(PLAN, byRow));
        assertThat(new DaySurface(view, new DayReadings(view))
                        .surface()
                        .pulls()
                        .get(0)
                        .readings())
                .extracting(reading -> reading.lambda().orElseThrow().value())
                .containsExactly(0.87, 0.87, 0.87, 0.95 - 0.09, 0.95 - 0.1, 0.95 - 0.11, 0.95 - 0.12);
    }

    private static Day archive(int days, DoubleUnaryOperator firstDegOfDay, boolean areTold) {
        List<MeasuredPull> pulls = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            for (int i = 0; i < 4; i++) {
                double deg = firstDegOfDay.applyAsDouble(day) + i;
                MeasuredPull pull = onDay(day, pulls.size() + 1, rpm -> deg + (rpm - 3000) / 250);
                pulls.add(areTold ? pull : pull.at(pull.order(), 0));
            }
        }
        return day(PLAN, pulls.toArray(MeasuredPull[]::new));
    }

    @Test
    void daysOfAnArchiveShareTheMapAndNotTheirLevels() {
        MapState state = Advisor.judge(archive(8, day -> 17 + day, true)).map().orElseThrow();
        for (double rpm = 3000; rpm <= 6000; rpm += 500) {
            assertThat(state.peak().degAt(rpm)).isCloseTo(24 + (rpm - 3000) / 250, within(0.5));
        }
        assertThat(Advisor.judge(archive(8, day -> 17 + day, false))
                        .map()
                        .orElseThrow()
                        .scatterPercent())
                .isGreaterThan(1.3 * state.scatterPercent());
    }

    @Test
    void theBudgetCountsThePullsOfTheLastDay() {
        assertThat(Advisor.judge(archive(8, day -> 12, true)).advice().action()).isEqualTo(Action.PULL);
        assertThat(Advisor.judge(archive(8, day -> 12, false)).advice().code()).isEqualTo(AdviceCode.BUDGET);
    }
}
