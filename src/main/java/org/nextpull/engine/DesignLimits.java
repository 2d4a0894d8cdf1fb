package org.nextpull.engine;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.air.AirState;
import org.nextpull.engine.cycle.Cylinder;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/** The numbers that make an engine. Ranges are wide: they refuse nonsense, not taste. */
final class DesignLimits {
    private static final double LATEST_SPARK_DEG = -30;
    private static final double BEFORE_SPARK_DEG = 10;

    private DesignLimits() {}

    static List<Finding> check(EngineDesign design) {
        Cylinder cylinder = design.cylinder();
        return Stream.of(
                        new DesignRange("bore_m", 0.02, 0.5).check(cylinder.bore()),
                        new DesignRange("stroke_m", 0.02, 0.6).check(cylinder.stroke()),
                        new DesignRange("compression_ratio", 2, 20)
                                .check(cylinder.drive().compressionRatio()),
                        new DesignRange("rod_per_crank", 2, 10)
                                .check(cylinder.drive().rodPerCrank()),
                        new DesignRange("cylinders", 1, 24).check(design.cylinders()),
                        new DesignRange("inlet_closes_deg", 0, 100)
                                .check(design.valves().inletClosesDeg()),
                        new DesignRange("exhaust_opens_deg", 0, 100)
                                .check(design.valves().exhaustOpensDeg()),
                        new DesignRange("filling", 0.2, 1.5)
                                .check(design.breathing().base()),
                        new DesignRange("ripple", 0, 0.3)
                                .check(design.breathing().ripple()),
                        new DesignRange("resonance_rpm", 500, 30_000)
                                .check(design.breathing().resonance().tunedRpm()),
                        new DesignRange("resonance_gain", 0, 0.5)
                                .check(design.breathing().resonance().gain()),
                        new DesignRange("choke_rpm", 500, 40_000)
                                .check(design.breathing().losses().chokeRpm()),
                        new DesignRange("backflow", 0, 0.9)
                                .check(design.breathing().losses().backflow()),
                        new DesignRange("boost_pa", 0, 4e5)
                                .check(design.boost().full().pascals()),
                        new DesignRange("boost_full_rpm", 1, 30_000)
                                .check(design.boost().fullRpm()),
                        new DesignRange("burn_constant", 1_000, 200_000)
                                .check(design.combustion().duration().constant()),
                        new DesignRange("lambda_spread", 0, 0.2)
                                .check(design.combustion().spread()),
                        new DesignRange("completeness", 0.5, 1)
                                .check(design.combustion().completeness()),
                        new DesignRange("hot_spot_k", 0, 100)
                                .check(design.combustion().hotSpot().hotterK()),
                        new DesignRange("wall_k", 250, 700).check(design.walls().kelvins()),
                        new DesignRange("wall_scale", 0, 5).check(design.walls().scale()),
                        new DesignRange("friction_pa", 0, 5e5)
                                .check(design.friction().constant()),
                        new DesignRange("back_pressure_pa", 0, 2e5)
                                .check(design.exhaust().backPressure()),
                        new DesignRange("exhaust_cooling", 0, 0.9)
                                .check(design.exhaust().coolingShare()))
                .flatMap(Optional::stream)
                .toList();
    }

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

    /**
     * The range of a number that an engine is made of.
     *
     * @param name as a design names it
     * @param least least value that makes sense
     * @param most greatest value that makes sense
     */
    private record DesignRange(String name, double least, double most) {
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
}
