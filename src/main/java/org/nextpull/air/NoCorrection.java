package org.nextpull.air;

import java.util.Optional;

/** Torque as measured: the factor is 1 in any air. */
public record NoCorrection() implements CorrectionStandard {
    @Override
    public String id() {
        return "none";
    }

    @Override
    public String title() {
        return "no correction";
    }

    @Override
    public boolean needsHumidity() {
        return false;
    }

    @Override
    public double factor(AirState air) {
        return 1;
    }

    @Override
    public Optional<CorrectionStandard.ValidRange> limits() {
        return Optional.empty();
    }
}
