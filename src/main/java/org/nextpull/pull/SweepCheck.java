package org.nextpull.pull;

import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.finding.Detail;
import org.nextpull.unit.SpeedBand;

/** What speaks against a sweep. */
record SweepCheck(SpeedTrace trace, SpeedTrace.Points sweep, Optional<SpeedBand> band) {
    private static final int LEAST_ROWS = 8;
    private static final double LEAST_S = 1;
    private static final double LEAST_RPM = 300;
    private static final double LEAST_RPM_WITHOUT_BAND = 500;
    private static final double HOLE_S = 0.5;
    private static final double HOLE_ROWS = 8;
    private static final double HOLE_RPM = 50;

    /** A shorter hole that skips this much speed, and so many rows, is one too. */
    private static final double WIDE_HOLE_RPM = 150;

    private static final double HOLE_STEPS = 3;
    private static final double JUMP_RPM = 150;
    private static final double JUMP_SHARE = 0.04;
    private static final double JUMP_NOISES = 8;
    private static final double WAVER_RPM = 40;
    private static final double WAVER_SHARE = 0.01;
    private static final double WAVER_NOISES = 5;

    /** A sweep may miss the ends of the band by this much, or this share of the distance of its rows: so far its curve reaches. */
    private static final double EDGE_RPM = 20;

    private static final double EDGE_ROWS = 0.6;

    /**
     * The first objection.
     *
     * @param endReason what to call it when the sweep ends before the band does
     */
    Optional<CandidateDraft.Objection> objection(Refusal.Reason endReason) {
        double usual = trace.usualStepS(sweep.first(), sweep.last());
        return Stream.of(tooFew(), hole(usual), jump(usual), missesBand(endReason), tooShort(), wavers())
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<CandidateDraft.Objection> tooFew() {
        int rows = sweep.last() - sweep.first() + 1;
        return rows >= LEAST_ROWS
                ? Optional.empty()
                : Optional.of(CandidateDraft.Objection.of(
                        Refusal.Reason.TOO_FEW_SAMPLES, Detail.of("rows", rows), Detail.of("want", LEAST_ROWS)));
    }

    private Optional<CandidateDraft.Objection> tooShort() {
        double seconds = sweep.durationS(trace);
        double rpm = Math.abs(sweep.rise(trace));
        double least = band.isPresent() ? LEAST_RPM : LEAST_RPM_WITHOUT_BAND;
        boolean wideEnough =
                rpm >= Math.min(least, band.map(SpeedBand::widthRpm).orElse(least) - 2 * EDGE_RPM);
        return seconds >= LEAST_S && wideEnough
                ? Optional.empty()
                : Optional.of(CandidateDraft.Objection.of(
                        Refusal.Reason.TOO_SHORT, Detail.of("seconds", seconds), Detail.of("rpm", rpm)));
    }

    private Optional<CandidateDraft.Objection> hole(double usualStepS) {
        double longest = Math.max(HOLE_S, HOLE_ROWS * usualStepS);
        double widest = Math.max(WIDE_HOLE_RPM, HOLE_STEPS * rowsApartRpm());
        for (int point = sweep.first(); point < sweep.last(); point++) {
            double seconds = trace.timeS(point + 1) - trace.timeS(point);
            double rpm = Math.abs(trace.rpm(point + 1) - trace.rpm(point));
            if ((seconds > longest && rpm > HOLE_RPM) || (seconds > HOLE_STEPS * usualStepS && rpm > widest)) {
                return Optional.of(CandidateDraft.Objection.of(
                        Refusal.Reason.DATA_GAP, Detail.of("seconds", seconds), Detail.of("rpm", trace.rpm(point))));
            }
        }
        return Optional.empty();
    }

    private Optional<CandidateDraft.Objection> jump(double usualStepS) {
        double rate = sweep.rise(trace) / Math.max(1e-9, sweep.durationS(trace));
        for (int point = sweep.first(); point < sweep.last(); point++) {
            double seconds = trace.timeS(point + 1) - trace.timeS(point);
            double leap = trace.rpm(point + 1) - trace.rpm(point) - rate * Math.max(seconds, usualStepS);
            double limit = Math.max(
                    Math.abs(rate) * seconds + JUMP_RPM,
                    Math.max(JUMP_SHARE * trace.rpm(point), JUMP_NOISES * trace.noise()));
            if (Math.abs(leap) > limit) {
                return Optional.of(CandidateDraft.Objection.of(
                        Refusal.Reason.SPEED_JUMP,
                        Detail.of("rpm", Math.abs(trace.rpm(point + 1) - trace.rpm(point))),
                        Detail.of("at", trace.rpm(point))));
            }
        }
        return Optional.empty();
    }

    private Optional<CandidateDraft.Objection> wavers() {
        double sign = Math.signum(sweep.rise(trace));
        double most = sign * trace.smoothRpm(sweep.first());
        for (int point = sweep.first(); point <= sweep.last(); point++) {
            double now = sign * trace.smoothRpm(point);
            double limit = Math.max(WAVER_RPM, Math.max(WAVER_SHARE * Math.abs(now), WAVER_NOISES * trace.noise()));
            if (most - now > limit) {
                return Optional.of(CandidateDraft.Objection.of(
                        Refusal.Reason.SPEED_NOT_MONOTONE,
                        Detail.of("rpm", most - now),
                        Detail.of("at", trace.smoothRpm(point))));
            }
            most = Math.max(most, now);
        }
        return Optional.empty();
    }

    private double rowsApartRpm() {
        return Math.abs(sweep.rise(trace)) / Math.max(1, sweep.last() - sweep.first());
    }

    private Optional<CandidateDraft.Objection> missesBand(Refusal.Reason endReason) {
        if (band.isEmpty()) {
            return Optional.empty();
        }
        SpeedBand wanted = band.get();
        double from = trace.smoothRpm(sweep.first());
        double to = trace.smoothRpm(sweep.last());
        boolean rising = to > from;
        double edge = Math.max(EDGE_RPM, EDGE_ROWS * rowsApartRpm());
        boolean beginsWell = rising ? from <= wanted.fromRpm() + edge : from >= wanted.toRpm() - edge;
        boolean endsWell = rising ? to >= wanted.toRpm() - edge : to <= wanted.fromRpm() + edge;
        if (beginsWell && endsWell) {
            return Optional.empty();
        }
        if (beginsWell && endReason != Refusal.Reason.OUTSIDE_BAND) {
            return Optional.of(CandidateDraft.Objection.of(
                    endReason, Detail.of("rpm", to), Detail.of("want", rising ? wanted.toRpm() : wanted.fromRpm())));
        }
        return Optional.of(CandidateDraft.Objection.outside(wanted, from, to));
    }
}
