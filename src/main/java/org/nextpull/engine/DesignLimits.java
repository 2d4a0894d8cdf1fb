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
import org.nextpull.unit.Span;

/** The numbers that make an engine. Ranges are wide: they refuse nonsense, not taste. */
final class DesignLimits {
    private static final double LATEST_SPARK_DEG = -30;
    private static final double BEFORE_SPARK_DEG = 10;

    private DesignLimits() {}

    static List<Finding> check(EngineDesign design) {
        Cylinder cylinder = design.cylinder();
        return Stream.of(
                        check("bore_m", cylinder.bore(), Span.of(0.02, 0.5)),
                        check("stroke_m", cylinder.stroke(), Span.of(0.02, 0.6)),
                        check("compression_ratio", cylinder.drive().compressionRatio(), Span.of(2, 20)),
                        check("rod_per_crank", cylinder.drive().rodPerCrank(), Span.of(2, 10)),
                        check("cylinders", design.cylinders(), Span.of(1, 24)),
                        check("inlet_closes_deg", design.valves().inletClosesDeg(), Span.of(0, 100)),
                        check("exhaust_opens_deg", design.valves().exhaustOpensDeg(), Span.of(0, 100)),
                        check("filling", design.breathing().base(), Span.of(0.2, 1.5)),
                        check("ripple", design.breathing().ripple(), Span.of(0, 0.3)),
                        check("resonance_rpm", design.breathing().resonance().tunedRpm(), Span.of(500, 30_000)),
                        check("resonance_gain", design.breathing().resonance().gain(), Span.of(0, 0.5)),
                        check("choke_rpm", design.breathing().losses().chokeRpm(), Span.of(500, 40_000)),
                        check("backflow", design.breathing().losses().backflow(), Span.of(0, 0.9)),
                        check("boost_pa", design.boost().full().pascals(), Span.of(0, 4e5)),
                        check("boost_full_rpm", design.boost().fullRpm(), Span.of(1, 30_000)),
                        check("burn_constant", design.combustion().duration().constant(), Span.of(1_000, 200_000)),
                        check("lambda_spread", design.combustion().spread(), Span.of(0, 0.2)),
                        check("completeness", design.combustion().completeness(), Span.of(0.5, 1)),
                        check("hot_spot_k", design.combustion().hotSpot().hotterK(), Span.of(0, 100)),
                        check("wall_k", design.walls().kelvins(), Span.of(250, 700)),
                        check("wall_scale", design.walls().scale(), Span.of(0, 5)),
                        check("friction_pa", design.friction().constant(), Span.of(0, 5e5)),
                        check("back_pressure_pa", design.exhaust().backPressure(), Span.of(0, 2e5)),
                        check("exhaust_cooling", design.exhaust().coolingShare(), Span.of(0, 0.9)))
                .flatMap(Optional::stream)
                .toList();
    }

    static List<Finding> check(EngineDesign design, OperatingPoint point) {
        AirState air = point.surroundings().air();
        double earliest = 180 - design.valves().inletClosesDeg() - BEFORE_SPARK_DEG;
        return Stream.of(
                        check("rpm", point.rpm(), Span.of(500, 20_000)),
                        check("advance_deg", point.advance().deg(), Span.of(LATEST_SPARK_DEG, earliest)),
                        check("lambda", point.lambda().value(), Span.of(0.65, 1.5)),
                        check("octane", point.fuel().octane(), Span.of(40, 130)),
                        check("barometer_pa", air.barometer().pascals(), Span.of(5e4, 1.2e5)),
                        check("vapour_pa", air.vapour().pascals(), Span.of(0, 1e4)),
                        check("inlet_air_k", air.temperature().kelvins(), Span.of(230, 380)),
                        check("coolant_k", point.surroundings().coolant().kelvins(), Span.of(250, 420)),
                        check("oil_k", point.surroundings().oil().kelvins(), Span.of(250, 450)))
                .flatMap(Optional::stream)
                .toList();
    }

    /** What is wrong with a number that an engine is made of, by its name in a design; empty where it makes sense. */
    private static Optional<Finding> check(String name, double value, Span sense) {
        if (sense.contains(value)) {
            return Optional.empty();
        }
        Detail shown = Double.isFinite(value) ? Detail.of("value", value) : Detail.of("value", "not a number");
        return Optional.of(Finding.error(
                FindingCode.ENGINE_PARAMETER_OUT_OF_RANGE,
                Place.nowhere().withKey(name),
                Detail.of("name", name),
                shown,
                Detail.of("least", sense.low()),
                Detail.of("most", sense.high())));
    }
}
