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
}
