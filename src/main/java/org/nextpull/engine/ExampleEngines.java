package org.nextpull.engine;

import org.nextpull.engine.cycle.BurnDuration;
import org.nextpull.engine.cycle.ChenFlynn;
import org.nextpull.engine.cycle.ClosedCycle;
import org.nextpull.engine.cycle.Cylinder;
import org.nextpull.unit.Pressure;

/** Invented engines for demonstrations and tests. No engine that is or was made is meant. */
public final class ExampleEngines {
    private ExampleEngines() {}

    /** A two-litre four-cylinder engine of a hill-climb single-seater, naturally aspirated. */
    public static EngineDesign hillClimb() {
        return new EngineDesign(
                "two-litre hill-climb four",
                new Cylinder(0.0864, 0.0852, new Cylinder.Drive(11.2, 3.5)),
                4,
                new EngineDesign.ValveTiming(58, 56),
                new EngineDesign.Breathing(
                        0.9,
                        0.018,
                        new EngineDesign.Breathing.Resonance(5500, 0.17),
                        new EngineDesign.Breathing.Losses(9800, 0.16)),
                EngineDesign.Boost.none(),
                new EngineDesign.Combustion(
                        new BurnDuration(38_000), 0.10, 0.97, EngineDesign.Combustion.HotSpot.USUAL),
                new ClosedCycle.Walls(450, 1.4),
                new ChenFlynn(35e3, 0.005, new ChenFlynn.PerSpeed(7e3, 90)),
                new EngineDesign.Exhaust(11e3, 0.22));
    }

    /** A 1.2-litre four-cylinder engine of a hatchback, naturally aspirated. */
    public static EngineDesign hatchback() {
        return new EngineDesign(
                "1.2-litre hatchback four",
                new Cylinder(0.0710, 0.0757, new Cylinder.Drive(10.5, 3.6)),
                4,
                new EngineDesign.ValveTiming(46, 48),
                new EngineDesign.Breathing(
                        0.86,
                        0.014,
                        new EngineDesign.Breathing.Resonance(4300, 0.13),
                        new EngineDesign.Breathing.Losses(7200, 0.10)),
                EngineDesign.Boost.none(),
                new EngineDesign.Combustion(
                        new BurnDuration(43_000), 0.10, 0.965, EngineDesign.Combustion.HotSpot.USUAL),
                new ClosedCycle.Walls(445, 1.4),
                new ChenFlynn(42e3, 0.005, new ChenFlynn.PerSpeed(8e3, 95)),
                new EngineDesign.Exhaust(15e3, 0.24));
    }

    /** A charged two-litre engine that knocks on pump fuel well before best torque. */
    public static EngineDesign boosted() {
        EngineDesign base = hillClimb();
        return new EngineDesign(
                        "two-litre charged four",
                        base.cylinder(),
                        base.cylinders(),
                        new EngineDesign.ValveTiming(50, 50),
                        new EngineDesign.Breathing(
                                0.9,
                                0.01,
                                new EngineDesign.Breathing.Resonance(4600, 0.08),
                                new EngineDesign.Breathing.Losses(8200, 0.1)),
                        new EngineDesign.Boost(Pressure.ofKilopascals(75), 3200),
                        base.combustion(),
                        base.walls(),
                        base.friction(),
                        new EngineDesign.Exhaust(18e3, 0.15))
                .withCompressionRatio(9.8);
    }
}
