package org.nextpull.engine;

import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/**
 * The range of a number that an engine is made of.
 *
 * @param name as a design names it
 * @param least least value that makes sense
 * @param most greatest value that makes sense
 */
record DesignRange(String name, double least, double most) {
    Optional<Finding> check(double value) {
        if (value >= least && value <= most) {
            return Optional.empty();
        }
        Detail shown = Double.isFinite(value) ? Detail.of("value", value) : Detail.of("value", "not a number");
        return Optional.of(Finding.error(
                FindingCode.ENGINE_PARAMETER_OUT_OF_RANGE,
                Place.nowhere().withKey(name),
                Detail.of("name", name),
                shown,
                Detail.of("least", least),
                Detail.of("most", most)));
    }
}
