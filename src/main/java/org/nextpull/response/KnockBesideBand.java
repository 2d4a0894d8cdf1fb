package org.nextpull.response;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.pull.Candidate;
import org.nextpull.unit.SpeedBand;

/** Knock that was counted at full load below or above the band: it forbids nothing by itself, and must not pass for silence either. */
final class KnockBesideBand {
    private KnockBesideBand() {}

    static Optional<Finding> of(Candidate candidate, Optional<SpeedBand> band, Place place) {
        if (band.isEmpty()) {
            return Optional.empty();
        }
        Samples samples = candidate.samples();
        Channel counter = Channel.of(Role.KNOCK_EVENTS);
        double events = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int row : samples.presentRows(counter)) {
            OptionalDouble rpm = candidate.speed().rpm(samples, row);
            double count = samples.value(counter, row);
            if (count > 0 && rpm.isPresent() && !band.get().contains(rpm.getAsDouble())) {
                events += count;
                low = Math.min(low, rpm.getAsDouble());
                high = Math.max(high, rpm.getAsDouble());
            }
        }
        return events == 0
                ? Optional.empty()
                : Optional.of(Finding.warning(
                        FindingCode.KNOCK_BESIDE_BAND,
                        place,
                        Detail.of("events", events),
                        Detail.of("low", low),
                        Detail.of("high", high)));
    }
}
