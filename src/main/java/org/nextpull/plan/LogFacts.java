package org.nextpull.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.channel.Hints;

/**
 * What the operator says about the log, table {@code [log]}.
 *
 * @param hints how to read its columns
 * @param lambdaDelayS time from the cylinder to the lambda reading in s
 * @param correctedBy the standard that the logger has already corrected torque by
 * @param settings path of the settings file, relative to the plan
 */
public record LogFacts(
        Hints hints, OptionalDouble lambdaDelayS, Optional<CorrectionStandard> correctedBy, Optional<String> settings) {
    public static LogFacts defaults() {
        return new LogFacts(Hints.none(), OptionalDouble.empty(), Optional.empty(), Optional.empty());
    }
}
