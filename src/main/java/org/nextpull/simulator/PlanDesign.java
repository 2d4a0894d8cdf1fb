package org.nextpull.simulator;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.engine.EngineDesign;
import org.nextpull.engine.ExampleEngines;
import org.nextpull.engine.bench.Brake;
import org.nextpull.engine.cycle.Cylinder;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.EngineFacts;
import org.nextpull.unit.Span;

/**
 * A design that has the size, the compression and the induction that a plan names, tuned for the plan's band. What the plan leaves out
 * is that of the nearest of the invented example engines.
 */
final class PlanDesign {
    private static final double LITRE = 1e-3;
    private static final Span LITRES_A_CYLINDER = Span.of(0.03, 2);
    private static final Span COMPRESSION = Span.of(5, 18);
    /** The fastest racing engines come to about 27 m/s (from memory). */
    private static final Span PISTON_SPEED = Span.of(0, 32);

    private static final Span LEAST_RPM = Span.of(600, 20_000);
    /** Shorter, and no curve can be read off the speed; longer, and the engine overheats. */
    private static final Span RUN_S = Span.of(2.5, 60);

    private static final Span LAMBDA = Span.of(0.68, 1.4);
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

    private static EngineDesign.Breathing tuned(EngineDesign.Breathing like, double rpm) {
        double scale = rpm / like.resonance().tunedRpm();
        return new EngineDesign.Breathing(
                like.base(),
                like.ripple(),
                new EngineDesign.Breathing.Resonance(rpm, like.resonance().gain()),
                new EngineDesign.Breathing.Losses(
                        like.losses().chokeRpm() * scale, like.losses().backflow()));
    }

    private static EngineDesign.Boost boost(EngineDesign.Boost like, Span band) {
        return like.isNone() ? like : new EngineDesign.Boost(like.full(), BOOST_FULL_SHARE * band.low());
    }

    static List<Finding> check(EngineDesign design, SimulatedDyno kit, double startLambda) {
        List<Finding> wrong = new ArrayList<>();
        Span range = kit.program().range();
        double litres = design.cylinder().sweptVolume() / LITRE;
        check("[engine] displacement_l and cylinders", "litres a cylinder", litres, LITRES_A_CYLINDER)
                .ifPresent(wrong::add);
        double ratio = design.cylinder().drive().compressionRatio();
        check("[engine] compression_ratio", "the compression ratio", ratio, COMPRESSION)
                .ifPresent(wrong::add);
        check("[band] from_rpm", "the lowest speed of a pull in rpm", range.low(), LEAST_RPM)
                .ifPresent(wrong::add);
        double fastest = design.cylinder().pistonSpeed(range.high());
        check("[band] to_rpm", "the mean piston speed in m/s", fastest, PISTON_SPEED)
                .ifPresent(wrong::add);
        check("[mixture] start_lambda", "lambda", startLambda, LAMBDA).ifPresent(wrong::add);
        return wrong;
    }

    /** How long a roller needs for the band, in even gain, at the engine's mean torque. */
    static List<Finding> checkRun(Brake brake, Span band, double torqueNm) {
        return brake
                .roller()
                .flatMap(roller -> check(
                        "[dyno] roller_inertia_kg_m2 and engine_rev_per_roller_rev",
                        "the seconds of a run through the band",
                        brake.secondsThrough(roller, band, torqueNm),
                        RUN_S))
                .stream()
                .toList();
    }

    private static Optional<Finding> check(String name, String what, double value, Span allowed) {
        return allowed.contains(value)
                ? Optional.empty()
                : Optional.of(Finding.error(
                        FindingCode.RIG_NO_SUCH_ENGINE,
                        Place.nowhere().withKey(name),
                        Detail.of("name", name),
                        Detail.of("what", what),
                        Detail.of("value", value),
                        Detail.of("least", allowed.low()),
                        Detail.of("most", allowed.high())));
    }
}
