package org.nextpull.response;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.plan.Limits;

/** Knock of a pull: what the operator heard stands beside what a counter says, and either is enough. */
final class KnockOfPull {
    private KnockOfPull() {}

    static KnockHeard of(Samples band, Optional<AskedSetting> asked, Limits limits, boolean alarmed) {
        double[] counts = band.presentValues(Channel.of(Role.KNOCK_EVENTS));
        double[] levels = band.presentValues(Channel.of(Role.KNOCK_LEVEL));
        OptionalDouble events = counts.length == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Arrays.stream(counts).sum());
        OptionalDouble worst = Arrays.stream(levels).max();
        KnockMark marked = asked.map(AskedSetting::knock).orElse(KnockMark.NOT_MEASURED);
        KnockMark counted = events.isEmpty()
                ? KnockMark.NOT_MEASURED
                : events.getAsDouble() >= limits.knockEventsThatCount() ? KnockMark.HEARD : KnockMark.NONE;
        KnockMark mark = alarmed ? KnockMark.HEARD : worse(marked, counted);
        return new KnockHeard(mark, events, worst);
    }

    private static KnockMark worse(KnockMark one, KnockMark other) {
        return one.compareTo(other) <= 0 ? one : other;
    }
}
