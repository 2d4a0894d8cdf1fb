package org.nextpull.engine;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.air.AirState;
import org.nextpull.finding.Finding;

/** The operating points that the correlations can answer for. */
final class PointLimits {
    private static final double LATEST_SPARK_DEG = -30;
    private static final double BEFORE_SPARK_DEG = 10;

    private PointLimits() {}

    static List<Finding> check(EngineDesign design, OperatingPoint point) {
        AirState air = point.surroundings().air();
        double earliest = 180 - design.valves().inletClosesDeg() - BEFORE_SPARK_DEG;
        return Stream.of(
                        new DesignRange("rpm", 500, 20_000).check(point.rpm()),
                        new DesignRange("advance_deg", LATEST_SPARK_DEG, earliest)
                                .check(point.advance().deg()),
                        new DesignRange("lambda", 0.65, 1.5)
                                .check(point.lambda().value()),
                        new DesignRange("octane", 40, 130).check(point.fuel().octane()),
                        new DesignRange("barometer_pa", 5e4, 1.2e5)
                                .check(air.barometer().pascals()),
                        new DesignRange("vapour_pa", 0, 1e4).check(air.vapour().pascals()),
                        new DesignRange("inlet_air_k", 230, 380)
                                .check(air.temperature().kelvins()),
                        new DesignRange("coolant_k", 250, 420)
                                .check(point.surroundings().coolant().kelvins()),
                        new DesignRange("oil_k", 250, 450)
                                .check(point.surroundings().oil().kelvins()))
                .flatMap(Optional::stream)
                .toList();
    }
}
