package org.nextpull.simulator;

import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.unit.Span;

/** Counts what the knock sensor counts within the band of a pull. For one pull and one thread. */
final class KnockCount {
    private static final Channel EVENTS = Channel.of(Role.KNOCK_EVENTS);
    private static final Channel SPEED = Channel.of(Role.ENGINE_SPEED);

    private final Span band;
    private final double mostEvents;
    private double events;

    KnockCount(RigEngine rig) {
        this.band = rig.band();
        this.mostEvents = rig.plan().limits().knockEventsThatCount();
    }

    void add(Samples samples) {
        for (int row = 0; row < samples.rows(); row++) {
            if (samples.isPresent(EVENTS, row)
                    && samples.isPresent(SPEED, row)
                    && band.contains(samples.value(SPEED, row))) {
                events += samples.value(EVENTS, row);
            }
        }
    }

    /** Whether the pull knocked as far as the plan is concerned. */
    boolean isHeard() {
        return events >= mostEvents;
    }
}
