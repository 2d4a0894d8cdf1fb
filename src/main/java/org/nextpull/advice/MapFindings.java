package org.nextpull.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.TimingPlan;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;

/** What keeps the pulls of a day from being those of a map, and what is worth saying of them. */
final class MapFindings {
    /** A logged advance that repeats to this at every speed was not set anew, or is no reading. */
    private static final double STUCK_DEG = 0.01;

    /** Fewer pulls at one number may have been meant. */
    private static final int LEAST_STUCK = 2;

    /** An advance that is logged so near to what was set is that; common practice, no source. */
    private static final double NEAR_DEG = 0.25;

    /** An engine runs this far beside the plan only where a log counts otherwise. */
    private static final double FAR_DEG = 10;

    /** An advance that differs by more than this between speeds this near is no map; more than an ignition takes out for knock. */
    private static final double JUMP_DEG = 15;

    private static final double JUMP_OVER_RPM = 1000;

    private final DayView view;
    private final DayReadings maps;

    MapFindings(DayView view, DayReadings maps) {
        this.view = view;
        this.maps = maps;
    }

    /** Why no map can be proposed; empty where one can, and where none is asked for. */
    Optional<Finding> hindrance() {
        if (!maps.ignition().isMap()) {
            return Optional.empty();
        }
        List<MeasuredPull> counted = view.used();
        if (!counted.isEmpty() && maps.used().isEmpty()) {
            return Optional.of(Finding.error(FindingCode.MAP_WITHOUT_ADVANCE, Place.nowhere()));
        }
        if (maps.used().size() > 1 && !isAnyRowShared()) {
            return Optional.of(Finding.error(FindingCode.MAP_SPEEDS_NOT_SHARED, Place.nowhere()));
        }
        Optional<Finding> jump =
                maps.used().stream().flatMap(pull -> jump(pull).stream()).findFirst();
        if (jump.isPresent()) {
            return jump;
        }
        return stuckAt()
                .map(deg -> Finding.error(FindingCode.MAP_ADVANCE_STUCK, Place.nowhere(), Detail.of("deg", deg)))
                .or(this::sticks)
                .or(this::outside);
    }

    /** Several pulls in a row, the last among them, at one and the same number, though others of the day rise or fall over speed. */
    private Optional<Finding> sticks() {
        List<MeasuredPull> swept =
                maps.used().stream().filter(pull -> !pull.isHeld()).toList();
        int first = swept.size();
        while (first > 0 && isOneNumber(swept.subList(first - 1, swept.size()))) {
            first--;
        }
        if (first == 0
                || swept.size() - first < LEAST_STUCK
                || isOneNumber(swept.subList(first - 1, first))
                || isEndOfPlan(logged(swept.get(first)).get(0))) {
            return Optional.empty();
        }
        return Optional.of(Finding.error(
                FindingCode.MAP_ADVANCE_STICKS,
                Place.ofPull(swept.get(first).number()),
                Detail.of("deg", logged(swept.get(first)).get(0)),
                Detail.of("last", swept.get(swept.size() - 1).number())));
    }

    /** A map that has come to an end of the plan everywhere is one number by intent. */
    private boolean isEndOfPlan(double deg) {
        return Math.abs(deg - maps.plan().leastDeg()) < NEAR_DEG
                || Math.abs(deg - maps.plan().mostDeg()) < NEAR_DEG;
    }

    private boolean isOneNumber(List<MeasuredPull> pulls) {
        double[] deg = pulls.stream()
                .flatMap(pull -> logged(pull).stream())
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        return deg.length > pulls.size() && deg[deg.length - 1] - deg[0] < STUCK_DEG;
    }

    private List<Double> logged(MeasuredPull pull) {
        return maps.readRows(pull).stream()
                .flatMap(row -> row.advance().stream())
                .map(Advance::deg)
                .toList();
    }

    /** Advance that nowhere comes near what the plan allows, as of a log that counts degrees after top dead centre. */
    private Optional<Finding> outside() {
        double[] deg = maps.used().stream()
                .flatMap(pull -> logged(pull).stream())
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        boolean isFar = deg.length > 0
                && (deg[deg.length - 1] < maps.plan().leastDeg() - FAR_DEG
                        || deg[0] > maps.plan().mostDeg() + FAR_DEG);
        return isFar
                ? Optional.of(Finding.error(
                        FindingCode.MAP_ADVANCE_OUTSIDE,
                        Place.nowhere(),
                        Detail.of("low", deg[0]),
                        Detail.of("high", deg[deg.length - 1]),
                        Detail.of("least", maps.plan().leastDeg()),
                        Detail.of("most", maps.plan().mostDeg())))
                : Optional.empty();
    }

    /** An advance that no map has from one speed to the next but one. */
    private Optional<Finding> jump(MeasuredPull pull) {
        List<Figures.AtSpeed> logged = DayReadings.rowsOf(pull).stream()
                .filter(row -> row.advance().isPresent() && row.heldAtS().isEmpty())
                .toList();
        for (int i = 1; i < logged.size(); i++) {
            Figures.AtSpeed from = logged.get(Math.max(0, i - 2));
            Figures.AtSpeed to = logged.get(i);
            double deg = to.advance().orElseThrow().deg()
                    - from.advance().orElseThrow().deg();
            if (Math.abs(deg) > JUMP_DEG && to.rpm() - from.rpm() <= JUMP_OVER_RPM) {
                return Optional.of(Finding.error(
                        FindingCode.MAP_ADVANCE_JUMPS,
                        Place.inFile(pull.origin().source()).withPull(pull.number()),
                        Detail.of("deg", Math.abs(deg)),
                        Detail.of("low", from.rpm()),
                        Detail.of("high", to.rpm())));
            }
        }
        return Optional.empty();
    }

    private boolean isAnyRowShared() {
        return Arrays.stream(maps.rows())
                .anyMatch(rpm -> maps.used().stream()
                                .filter(pull -> maps.readRows(pull).stream().anyMatch(row -> row.rpm() == rpm))
                                .count()
                        > 1);
    }

    /** The one advance that all rows of all of several pulls were logged with. */
    private Optional<Double> stuckAt() {
        return maps.used().size() > 1 && isOneNumber(maps.used())
                ? Optional.of(logged(maps.used().get(0)).get(0))
                : Optional.empty();
    }

    /** What is worth saying of the day as a whole. */
    List<Finding> said() {
        boolean isSaid = view.day()
                .plan()
                .timing()
                .filter(timing -> timing.sets() == TimingPlan.Sets.MAP)
                .isPresent();
        List<Finding> findings = new ArrayList<>();
        if (maps.leftOut() > 0) {
            findings.add(Finding.note(
                    FindingCode.OLD_PULLS_LEFT_OUT,
                    Place.nowhere(),
                    Detail.of("left", maps.leftOut()),
                    Detail.of("count", maps.used().size())));
        }
        if (!isSaid && maps.ignition().isMap()) {
            boolean isHeld = maps.used().stream().anyMatch(MeasuredPull::isHeld);
            findings.add(Finding.warning(
                    isHeld ? FindingCode.MAP_OF_HELD_SPEEDS : FindingCode.MAP_TOLD_BY_LOG, Place.nowhere()));
        }
        return findings;
    }
}
