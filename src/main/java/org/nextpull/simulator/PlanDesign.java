package org.nextpull.simulator;

import org.nextpull.engine.Boost;
import org.nextpull.engine.Breathing;
import org.nextpull.engine.EngineDesign;
import org.nextpull.engine.ExampleEngines;
import org.nextpull.engine.cycle.Cylinder;
import org.nextpull.plan.EngineFacts;
import org.nextpull.unit.Span;

/**
 * A design that has the size, the compression and the induction that a plan names, tuned for the plan's band. What the plan leaves out
 * is that of the nearest of the invented example engines.
 */
final class PlanDesign {
    /** Where in its band an engine fills itself best. */
    private static final double TUNED_SHARE = 0.62;

    private static final double BOOST_FULL_SHARE = 0.95;
    private static final double TOURING_TO_RPM = 6000;

    private PlanDesign() {}

    static EngineDesign of(EngineFacts facts, Span band) {
        EngineDesign example = example(facts, band);
        int cylinders = facts.cylinders().orElse(example.cylinders());
        double swept = facts.displacementM3().orElse(example.displacement()) / cylinders;
        Cylinder like = example.cylinder();
        double ratio = facts.compressionRatio().orElse(like.drive().compressionRatio());
        double bore = Math.cbrt(4 * swept / Math.PI * like.bore() / like.stroke());
        Cylinder cylinder = new Cylinder(
                bore,
                bore * like.stroke() / like.bore(),
                new Cylinder.Drive(ratio, like.drive().rodPerCrank()));
        double tuned = band.low() + TUNED_SHARE * band.width();
        return new EngineDesign(
                facts.name().orElse(example.name()),
                cylinder,
                cylinders,
                example.valves(),
                tuned(example.breathing(), tuned),
                boost(example.boost(), band),
                example.combustion(),
                example.walls(),
                example.friction(),
                example.exhaust());
    }

    private static EngineDesign example(EngineFacts facts, Span band) {
        if (facts.isBoosted()) {
            return ExampleEngines.boosted();
        }
        return band.high() < TOURING_TO_RPM ? ExampleEngines.hatchback() : ExampleEngines.hillClimb();
    }

    private static Breathing tuned(Breathing like, double rpm) {
        double scale = rpm / like.resonance().tunedRpm();
        return new Breathing(
                like.base(),
                like.ripple(),
                new Breathing.Resonance(rpm, like.resonance().gain()),
                new Breathing.Losses(
                        like.losses().chokeRpm() * scale, like.losses().backflow()));
    }

    private static Boost boost(Boost like, Span band) {
        return like.isNone() ? like : new Boost(like.full(), BOOST_FULL_SHARE * band.low());
    }
}
