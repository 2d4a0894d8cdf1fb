package org.nextpull.simulator;

import java.util.SplittableRandom;
import org.nextpull.engine.EngineDesign;
import org.nextpull.engine.bench.WeatherDay;
import org.nextpull.engine.cycle.BurnDuration;
import org.nextpull.engine.cycle.ChenFlynn;
import org.nextpull.engine.cycle.ClosedCycle;
import org.nextpull.engine.gas.EngineFuel;

/**
 * What a seed makes different from engine to engine and from day to day, so that nobody knows the answer beforehand: chamber, friction,
 * walls, inlet, the batch of fuel; scatter and drift. The spreads are the project's own choice. Keeps count of what it drew: not for use
 * by several threads.
 */
final class Variety {
    private static final double BURN = 0.08;
    private static final double FRICTION = 0.15;
    private static final double WALLS = 0.12;
    private static final double TUNING = 0.04;
    private static final double GAIN = 0.2;
    private static final double OCTANE = 0.6;
    private static final double USUAL_SCATTER = 0.0020;
    private static final double SCATTER = 0.3;
    private static final double DRIFT = 2e-4;

    private static final double HOT_SPOT_K = 22;

    private final SplittableRandom random;
    private final SplittableRandom chamber;

    Variety(long seed) {
        this.random = new SplittableRandom(seed);
        this.chamber = new SplittableRandom(-seed);
    }

    /** Seed for what one day's pulls are made from. */
    long benchSeed() {
        return random.nextLong();
    }

    EngineDesign vary(EngineDesign design) {
        EngineDesign.Breathing breathing = design.breathing();
        EngineDesign.Breathing.Resonance resonance = new EngineDesign.Breathing.Resonance(
                breathing.resonance().tunedRpm() * factor(TUNING),
                breathing.resonance().gain() * factor(GAIN));
        EngineDesign.Combustion combustion = design.combustion();
        BurnDuration duration = new BurnDuration(combustion.duration().constant() * factor(BURN));
        ChenFlynn friction = design.friction();
        ChenFlynn.PerSpeed perSpeed = new ChenFlynn.PerSpeed(
                friction.perSpeed().linear() * factor(FRICTION),
                friction.perSpeed().square());
        return new EngineDesign(
                design.name(),
                design.cylinder(),
                design.cylinders(),
                design.valves(),
                breathing.withResonance(resonance),
                design.boost(),
                new EngineDesign.Combustion(
                        duration, combustion.spread(), combustion.completeness(), hotSpot(combustion.hotSpot())),
                new ClosedCycle.Walls(design.walls().kelvins(), design.walls().scale() * factor(WALLS)),
                new ChenFlynn(friction.constant() * factor(FRICTION), friction.perPeakPressure(), perSpeed),
                design.exhaust());
    }

    EngineFuel vary(EngineFuel fuel) {
        return fuel.withOctane(fuel.octane() + OCTANE * random.nextGaussian());
    }

    WeatherDay day() {
        WeatherDay usual = WeatherDay.usual();
        double scatter = USUAL_SCATTER * factor(SCATTER);
        double drift = DRIFT * random.nextGaussian();
        WeatherDay.Scatter drawn =
                new WeatherDay.Scatter(scatter, usual.scatter().lambda(), new WeatherDay.Scatter.Drift(drift));
        WeatherDay.Change change = usual.change();
        return new WeatherDay(usual.morning(), change, usual.warmth(), drawn);
    }

    /** Clean or full of deposits: from far beyond best torque to well before it, knock begins elsewhere in each engine. */
    private EngineDesign.Combustion.HotSpot hotSpot(EngineDesign.Combustion.HotSpot usual) {
        return new EngineDesign.Combustion.HotSpot(usual.hotterK() + HOT_SPOT_K * (2 * chamber.nextDouble() - 1));
    }

    private double factor(double spread) {
        return Math.exp(spread * random.nextGaussian());
    }
}
