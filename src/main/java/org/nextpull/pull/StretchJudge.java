package org.nextpull.pull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Decides what a stretch at full load is, and cuts it into drafts of candidates. */
final class StretchJudge {
    /** Plateaus this close together, as rpm and as a share, are of one speed. */
    private static final double SAME_RPM = 60;

    private static final double SAME_SHARE = 0.02;

    /** Plateaus that are too short are still seen when they have this share of the length wanted; so they can be named. */
    private static final double SHORT_SHARE = 0.5;

    /** A sweep that alone makes up this share of the speeds of its stretch is one, whatever is held before and after. */
    private static final double SWEEP_SHARE = 0.6;

    private static final double SWEEP_S = 1.5;
    private static final double SWEEP_RPM = 500;

    /** Held this many times longer than swept, a stretch is a hold that only came from another speed. */
    private static final double HOLD_TIMES = 3;

    private final FullLoadStretch stretch;
    private final SpeedTrace trace;
    private final PullRules rules;
    private final boolean throttleLogged;
    private final Settling settling;
    private final List<SpeedTrace.Points> plateaus;
    private final SweepSearch sweeps;

    StretchJudge(FullLoadStretch stretch, SpeedTrace trace, SpeedSource speed, PullRules rules) {
        this.stretch = stretch;
        this.trace = trace;
        this.rules = rules;
        this.throttleLogged = stretch.samples().has(LoadGate.ThrottleGate.THROTTLE);
        this.settling = new Settling(stretch.samples(), trace, LoadSignal.of(stretch.samples(), speed));
        this.plateaus = new Plateaus(trace).ofAtLeast(rules.pulls().holdS() * SHORT_SHARE);
        this.sweeps = new SweepSearch(stretch, trace, plateaus, settling, rules);
    }

    List<CandidateDraft> drafts() {
        if (trace.size() < 2) {
            return List.of();
        }
        return switch (rules.pulls().kind()) {
            case ACCELERATION -> sweeps.drafts(throttleLogged);
            case STEPS -> steps();
            case HOLD ->
                // the pull over the band that proves a map which holds have found
                plateaus.isEmpty() && sweeps.legs().stream().anyMatch(this::crossesBand)
                        ? sweeps.drafts(throttleLogged)
                        : holds();
            case AUTO -> byItself();
        };
    }

    private List<CandidateDraft> byItself() {
        List<SpeedTrace.Points> speeds = joined();
        List<SpeedTrace.Points> legs = sweeps.legs();
        if (speeds.size() >= 3 && legs.stream().noneMatch(leg -> crosses(leg, SWEEP_SHARE))) {
            return steps();
        }
        if (legs.stream().anyMatch(this::isSweep)) {
            return sweeps.drafts(throttleLogged);
        }
        if (speeds.size() >= 2) {
            return steps();
        }
        return speeds.size() == 1 ? holds() : sweeps.drafts(throttleLogged);
    }

    private boolean isSweep(SpeedTrace.Points leg) {
        double held =
                plateaus.stream().mapToDouble(span -> span.durationS(trace)).sum();
        double swept = leg.durationS(trace);
        if (held > HOLD_TIMES * swept && joined().size() == 1 && !crossesBand(leg)) {
            return false;
        }
        return plateaus.isEmpty() || (swept >= SWEEP_S && Math.abs(leg.rise(trace)) >= SWEEP_RPM);
    }

    private boolean crossesBand(SpeedTrace.Points leg) {
        double low = Math.min(trace.smoothRpm(leg.first()), trace.smoothRpm(leg.last()));
        double high = Math.max(trace.smoothRpm(leg.first()), trace.smoothRpm(leg.last()));
        return rules.band()
                .map(band ->
                        Math.min(high, band.toRpm()) - Math.max(low, band.fromRpm()) >= SWEEP_SHARE * band.widthRpm())
                .orElse(false);
    }

    /** Whether a leg that never rests runs through that share of the speeds of the stretch. */
    private boolean crosses(SpeedTrace.Points leg, double share) {
        boolean rests = plateaus.stream().anyMatch(span -> span.first() >= leg.first() && span.last() <= leg.last());
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int point = 0; point < trace.size(); point++) {
            low = Math.min(low, trace.smoothRpm(point));
            high = Math.max(high, trace.smoothRpm(point));
        }
        return !rests && Math.abs(leg.rise(trace)) >= share * (high - low);
    }

    private List<CandidateDraft> steps() {
        return new StepSearch(trace, joined(), settling, rules).drafts();
    }

    private List<CandidateDraft> holds() {
        return new HoldSearch(stretch.samples(), trace, settling, rules).drafts(plateaus);
    }

    /** The plateaus with neighbours of one speed made into one. */
    private List<SpeedTrace.Points> joined() {
        List<SpeedTrace.Points> joined = new ArrayList<>();
        for (SpeedTrace.Points plateau : plateaus) {
            Optional<SpeedTrace.Points> before =
                    joined.isEmpty() ? Optional.empty() : Optional.of(joined.get(joined.size() - 1));
            if (before.isPresent() && isSameSpeed(before.get(), plateau)) {
                joined.set(joined.size() - 1, new SpeedTrace.Points(before.get().first(), plateau.last()));
            } else {
                joined.add(plateau);
            }
        }
        return joined;
    }

    private boolean isSameSpeed(SpeedTrace.Points one, SpeedTrace.Points other) {
        double rpm = one.meanRpm(trace);
        return Math.abs(rpm - other.meanRpm(trace)) <= Math.max(SAME_RPM, SAME_SHARE * Math.abs(rpm));
    }
}
