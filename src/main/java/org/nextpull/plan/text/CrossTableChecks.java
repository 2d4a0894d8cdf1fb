package org.nextpull.plan.text;

import java.util.List;
import java.util.Optional;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.channel.SparkMap;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.StartConditions;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.unit.SpeedBand;
import org.nextpull.unit.Temperature;

/** Keys of different tables that contradict each other. */
record CrossTableChecks(PlanTables tables, PlanProblems problems) {
    private static final int MOST_ROWS = 200;

    void check(SweepPlan plan) {
        speedLimit(plan);
        leanLimit(plan);
        startBelowLimit(
                "coolant_c", plan.start().coolant(), plan.limits().most().coolant());
        startBelowLimit("oil_c", plan.start().oil(), plan.limits().most().oil());
        startBelowLimit("inlet_c", plan.start().inlet(), plan.limits().most().inlet());
        correctedTwice(plan);
        pullsLeft(plan);
        heldSpeeds(plan);
        rowsOfBand(plan);
        mapCoversBand(plan);
        plan.timing().ifPresent(this::mapStartsWithinLimits);
    }

    private void speedLimit(SweepPlan plan) {
        double most = plan.limits().mostRpm().orElse(Double.MAX_VALUE);
        if (plan.band().isPresent() && plan.band().get().toRpm() > most) {
            problems.order(
                    Finding.Severity.ERROR,
                    tables.band().spot(BandTable.TO),
                    "not above",
                    tables.limits().spot(LimitsTable.MOST_RPM));
        }
    }

    /** Pulls scatter about their asked lambda, so the plan is still of use: only a warning. */
    private void leanLimit(SweepPlan plan) {
        if (plan.mixture().isEmpty() || plan.limits().lean().isEmpty()) {
            return;
        }
        if (plan.mixture().get().leanest().compareTo(plan.limits().lean().get().leanest()) > 0) {
            problems.order(
                    Finding.Severity.WARNING,
                    tables.mixture().spot(MixtureTable.leanest()),
                    "not above",
                    tables.limits().spot(LimitsTable.LEAN));
        }
    }

    private void startBelowLimit(
            String key, Optional<StartConditions.TemperatureWindow> window, Optional<Temperature> limit) {
        if (window.isEmpty() || limit.isEmpty()) {
            return;
        }
        double most = limit.get().kelvins();
        if (window.get().high().kelvins() > most) {
            Finding.Severity severity =
                    window.get().low().kelvins() >= most ? Finding.Severity.ERROR : Finding.Severity.WARNING;
            problems.order(
                    severity,
                    tables.start().spot(key),
                    "not above",
                    tables.limits().spot(key));
        }
    }

    private void correctedTwice(SweepPlan plan) {
        String none = SweepPlan.AirFacts.defaults().standard().id();
        String standard = plan.air().standard().id();
        String already = plan.log().correctedBy().map(CorrectionStandard::id).orElse(none);
        if (!standard.equals(none) && !already.equals(none) && !standard.equals(already)) {
            problems.conflict(
                    FindingCode.PLAN_KEYS_CONFLICT,
                    tables.log().spot(LogTable.CORRECTED_BY),
                    tables.air().spot(AirTable.STANDARD));
        }
    }

    private void heldSpeeds(SweepPlan plan) {
        List<Double> speeds = plan.pull().held().speedsRpm();
        double most = plan.limits().mostRpm().orElse(Double.MAX_VALUE);
        if (!speeds.isEmpty() && speeds.get(speeds.size() - 1) > most) {
            problems.order(
                    Finding.Severity.ERROR,
                    tables.pull().spot(PullTable.HOLD_SPEEDS),
                    "not above",
                    tables.limits().spot(LimitsTable.MOST_RPM));
        }
    }

    /** The time of a decision grows with the third power of the rows. */
    private void rowsOfBand(SweepPlan plan) {
        plan.band().ifPresent(band -> {
            double least = Math.ceil((band.toRpm() - band.fromRpm()) / MOST_ROWS);
            if (band.rowsEveryRpm() < least) {
                problems.error(
                        FindingCode.PLAN_OUT_OF_RANGE,
                        tables.band().spot(BandTable.ROWS),
                        Detail.of("low", PlanValueText.number(least)),
                        Detail.of("high", PlanValueText.number(BandTable.MOST_ROW_RPM)));
            }
        });
    }

    private void mapCoversBand(SweepPlan plan) {
        List<SparkMap.Cell> cells = plan.timing()
                .flatMap(timing -> timing.map().present())
                .map(SparkMap::cells)
                .orElse(List.of());
        if (cells.isEmpty() || plan.band().isEmpty()) {
            return;
        }
        double first = cells.get(0).rpm();
        double last = cells.get(cells.size() - 1).rpm();
        SpeedBand band = plan.band().get().speeds();
        if (first > band.fromRpm() || last < band.toRpm()) {
            problems.error(
                    FindingCode.PLAN_MAP_SHORT,
                    TimingTable.presentMap(tables.timing()),
                    Detail.of("first", PlanValueText.number(first)),
                    Detail.of("last", PlanValueText.number(last)),
                    Detail.of("from", PlanValueText.number(band.fromRpm())),
                    Detail.of("to", PlanValueText.number(band.toRpm())));
        }
    }

    private void mapStartsWithinLimits(TimingPlan timing) {
        if (timing.sets() == TimingPlan.Sets.OFFSET) {
            return; // its limits are of the degrees added, not of the map
        }
        double start = timing.sets() == TimingPlan.Sets.MAP ? timing.start().deg() : 0;
        double least = timing.least().deg();
        double most = timing.most().deg();
        timing.map().present().stream()
                .flatMap(map -> map.cells().stream())
                .filter(cell ->
                        cell.advance().deg() + start < least || cell.advance().deg() + start > most)
                .findFirst()
                .ifPresent(cell -> problems.error(
                        FindingCode.PLAN_MAP_OUTSIDE,
                        TimingTable.presentMap(tables.timing()),
                        Detail.of("deg", PlanValueText.number(cell.advance().deg() + start)),
                        Detail.of("rpm", PlanValueText.number(cell.rpm())),
                        Detail.of("least", PlanValueText.number(least)),
                        Detail.of("most", PlanValueText.number(most))));
    }

    private void pullsLeft(SweepPlan plan) {
        int most = plan.goal().maxPulls();
        if (plan.pull().throwAwayFirst() >= most) {
            problems.order(
                    Finding.Severity.ERROR,
                    tables.pull().spot(PullTable.DISCARD),
                    "below",
                    tables.goal().spot(GoalTable.MAX_PULLS));
        }
    }
}
