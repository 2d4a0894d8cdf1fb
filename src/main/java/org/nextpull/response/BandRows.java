package org.nextpull.response;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Samples;
import org.nextpull.pull.Candidate;
import org.nextpull.unit.SpeedBand;

/** The samples of a pull at given speeds. */
final class BandRows {
    private BandRows() {}

    /** Samples whose speed lies in the band; all of them where there is no band or none lies in it. */
    static Samples of(Candidate candidate, Optional<SpeedBand> band) {
        Samples samples = candidate.samples();
        if (band.isEmpty()) {
            return samples;
        }
        Samples.Builder builder = Samples.builder(samples.channels());
        for (int row = 0; row < samples.rows(); row++) {
            OptionalDouble rpm = candidate.speed().rpm(samples, row);
            if (rpm.isPresent() && band.get().contains(rpm.getAsDouble())) {
                builder.appendRow(samples, row);
            }
        }
        return builder.rows() == 0 ? samples : builder.build();
    }

    /** Mean of a channel within half a distance of a speed. */
    static OptionalDouble meanNear(Candidate candidate, Channel channel, SpeedBand near) {
        Samples samples = candidate.samples();
        double sum = 0;
        int count = 0;
        for (int row : samples.presentRows(channel)) {
            OptionalDouble rpm = candidate.speed().rpm(samples, row);
            if (rpm.isPresent() && near.contains(rpm.getAsDouble())) {
                sum += samples.value(channel, row);
                count++;
            }
        }
        return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / count);
    }
}
