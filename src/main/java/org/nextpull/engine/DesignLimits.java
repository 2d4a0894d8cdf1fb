package org.nextpull.engine;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.engine.cycle.Cylinder;
import org.nextpull.finding.Finding;

/** The numbers that make an engine. Ranges are wide: they refuse nonsense, not taste. */
final class DesignLimits {
    private DesignLimits() {}

    static List<Finding> check(EngineDesign design) {
        Cylinder cylinder = design.cylinder();
        return Stream.of(
                        new Limit("bore_m", 0.02, 0.5).check(cylinder.bore()),
                        new Limit("stroke_m", 0.02, 0.6).check(cylinder.stroke()),
                        new Limit("compression_ratio", 2, 20)
                                .check(cylinder.drive().compressionRatio()),
                        new Limit("rod_per_crank", 2, 10).check(cylinder.drive().rodPerCrank()),
                        new Limit("cylinders", 1, 24).check(design.cylinders()),
                        new Limit("inlet_closes_deg", 0, 100)
                                .check(design.valves().inletClosesDeg()),
                        new Limit("exhaust_opens_deg", 0, 100)
                                .check(design.valves().exhaustOpensDeg()),
                        new Limit("filling", 0.2, 1.5).check(design.breathing().base()),
                        new Limit("ripple", 0, 0.3).check(design.breathing().ripple()),
                        new Limit("resonance_rpm", 500, 30_000)
                                .check(design.breathing().resonance().tunedRpm()),
                        new Limit("resonance_gain", 0, 0.5)
                                .check(design.breathing().resonance().gain()),
                        new Limit("choke_rpm", 500, 40_000)
                                .check(design.breathing().losses().chokeRpm()),
                        new Limit("backflow", 0, 0.9)
                                .check(design.breathing().losses().backflow()),
                        new Limit("boost_pa", 0, 4e5)
                                .check(design.boost().full().pascals()),
                        new Limit("boost_full_rpm", 1, 30_000)
                                .check(design.boost().fullRpm()),
                        new Limit("burn_constant", 1_000, 200_000)
                                .check(design.combustion().duration().constant()),
                        new Limit("lambda_spread", 0, 0.2)
                                .check(design.combustion().spread()),
                        new Limit("completeness", 0.5, 1)
                                .check(design.combustion().completeness()),
                        new Limit("wall_k", 250, 700).check(design.walls().kelvins()),
                        new Limit("wall_scale", 0, 5).check(design.walls().scale()),
                        new Limit("friction_pa", 0, 5e5).check(design.friction().constant()),
                        new Limit("back_pressure_pa", 0, 2e5)
                                .check(design.exhaust().backPressure()),
                        new Limit("exhaust_cooling", 0, 0.9)
                                .check(design.exhaust().coolingShare()))
                .flatMap(Optional::stream)
                .toList();
    }
}
