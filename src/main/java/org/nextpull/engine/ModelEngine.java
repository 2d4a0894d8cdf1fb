package org.nextpull.engine;

import java.util.List;
import org.nextpull.engine.cycle.BurnDuration;
import org.nextpull.engine.cycle.ClosedCycle;
import org.nextpull.engine.cycle.Cylinder;
import org.nextpull.engine.cycle.SliderCrank;
import org.nextpull.engine.cycle.Wiebe;
import org.nextpull.engine.gas.FreshCharge;
import org.nextpull.engine.gas.Gas;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Torque;

/** An engine whose design makes sense, ready to run at any operating point. Immutable. */
public final class ModelEngine {
    private static final double STROKE_DEG = 180;
    private static final double COMPRESSION_EXPONENT = 0.32;
    private static final double BLOWDOWN_SHARE = 0.35;
    private static final double OIL_HOT_K = 368.15;
    private static final double OIL_PER_K = 0.006;
    private static final double INLET_LOSS_PA = 2500;
    private static final double INLET_LOSS_RPM = 6000;
    private static final double EXHAUST_GAMMA = 1.3;

    private final EngineDesign design;

    private ModelEngine(EngineDesign design) {
        this.design = design;
    }

    /** An engine of that design, or the findings that say which numbers make no engine. */
    public static Outcome<ModelEngine> of(EngineDesign design) {
        List<Finding> wrong = DesignLimits.check(design);
        return wrong.isEmpty() ? Outcome.of(new ModelEngine(design)) : Outcome.failed(wrong);
    }

    public EngineDesign design() {
        return design;
    }

    /** The same engine on a pull on which its charger blows so much more or less, near 1; a natural engine as it is. */
    public ModelEngine boostedBy(double factor) {
        return new ModelEngine(design.withBoost(design.boost().times(factor)));
    }

    /** Runs at an operating point, or says which of its numbers the engine cannot run with. */
    public Outcome<EnginePoint> at(OperatingPoint point) {
        return at(point, ClosedCycle.STEP_DEG);
    }

    /** Runs at an operating point with integration steps of a given length in degrees. */
    public Outcome<EnginePoint> at(OperatingPoint point, double stepDeg) {
        List<Finding> wrong = DesignLimits.check(design, point);
        if (!wrong.isEmpty()) {
            return Outcome.failed(wrong);
        }
        TrappedCharge trapped = TrappedCharge.of(design, point);
        Wiebe burn = burn(point, trapped);
        if (burn.durationDeg() > STROKE_DEG) {
            return Outcome.failed(Finding.error(
                    FindingCode.ENGINE_BURN_TOO_LONG,
                    Place.nowhere(),
                    Detail.of("deg", burn.durationDeg()),
                    Detail.of("rpm", point.rpm()),
                    Detail.of("lambda", point.lambda().value())));
        }
        ClosedCycle.Charge charge = new ClosedCycle.Charge(
                trapped.unburned(),
                trapped.products().gas(),
                trapped.inventory().mass(),
                trapped.fuel().vapour()
                        * trapped.products().heat()
                        * design.combustion().completeness(),
                new ClosedCycle.Charge.EndGas(
                        point.fuel().octane(), design.combustion().hotSpot().hotterK()));
        ClosedCycle.Run run = new ClosedCycle.Run(
                design.cylinder(),
                trapped.filling(),
                charge,
                walls(point),
                point.rpm(),
                STROKE_DEG - design.valves().exhaustOpensDeg());
        return Outcome.of(assemble(point, trapped, burn, ClosedCycle.solve(run, burn, stepDeg)));
    }

    private ClosedCycle.Walls walls(OperatingPoint point) {
        double warmer = point.surroundings().coolant().kelvins()
                - OperatingPoint.Surroundings.reference().coolant().kelvins();
        return new ClosedCycle.Walls(
                design.walls().kelvins() + warmer, design.walls().scale());
    }

    private Wiebe burn(OperatingPoint point, TrappedCharge trapped) {
        double spark = -point.advance().deg();
        double duration = design.combustion()
                .duration()
                .degrees(design.cylinder(), point.rpm(), chamber(point, trapped, spark), chamber(point, trapped, 0));
        return new Wiebe(spark, duration);
    }

    /** The chamber at an angle as it would be without a flame. */
    private BurnDuration.Chamber chamber(OperatingPoint point, TrappedCharge trapped, double deg) {
        SliderCrank crank = new SliderCrank(design.cylinder());
        double volume = crank.volume(deg);
        double compression = trapped.filling().volume() / volume;
        double warmer = Math.pow(compression, COMPRESSION_EXPONENT);
        Gas.State start = trapped.filling().state();
        Gas.State state = new Gas.State(start.pascals() * compression * warmer, start.kelvins() * warmer);
        FreshCharge mixture = new FreshCharge(
                point.fuel(),
                point.fuel().vapourLambda(point.lambda()),
                point.surroundings().air().humidityRatio());
        double dilution = trapped.inventory().residual() + mixture.waterFraction();
        double velocity = point.fuel().flame().speed(mixture.lambda().value(), dilution, state);
        return new BurnDuration.Chamber(crank.height(volume), state, velocity);
    }

    private EnginePoint assemble(OperatingPoint point, TrappedCharge trapped, Wiebe burn, ClosedCycle.Result cycle) {
        Cylinder cylinder = design.cylinder();
        double work = cycle.energy().work() + gasExchange(point, trapped, cycle.opening());
        double thickness =
                Math.exp(OIL_PER_K * (OIL_HOT_K - point.surroundings().oil().kelvins()));
        double friction = design.friction().pascals(cycle.peak(), cylinder.pistonSpeed(point.rpm()), thickness);
        double torque = (work - friction * cylinder.sweptVolume()) * design.cylinders() / (4 * Math.PI);
        double cyclesPerSecond = point.rpm() / 120 * design.cylinders();
        return new EnginePoint(
                Torque.ofNewtonMetres(torque),
                Temperature.ofKelvins(exhaust(point, cycle.opening())),
                burn,
                cycle.peak(),
                cycle.knock(),
                new EnginePoint.Flow(
                        trapped.fuel().metered() * cyclesPerSecond, Pressure.ofPascals(manifoldPressure(point))),
                cycle.energy());
    }

    /** Work in J of the rest of the cycle: blowdown to bottom dead centre, exhaust, inlet, and compression until the inlet closes. */
    private double gasExchange(OperatingPoint point, TrappedCharge trapped, Gas.State opening) {
        SliderCrank crank = new SliderCrank(design.cylinder());
        double swept = design.cylinder().sweptVolume();
        double bottom = swept + design.cylinder().clearanceVolume();
        double outlet = exhaustPressure(point);
        double inlet = manifoldPressure(point);
        double blowdown = outlet + BLOWDOWN_SHARE * (opening.pascals() - outlet);
        double opens = crank.volume(STROKE_DEG - design.valves().exhaustOpensDeg());
        double closing = (inlet + trapped.filling().state().pascals()) / 2;
        return blowdown * (bottom - opens)
                - closing * (bottom - trapped.filling().volume())
                + (inlet - outlet) * swept;
    }

    private double manifoldPressure(OperatingPoint point) {
        double speed = point.rpm() / INLET_LOSS_RPM;
        return point.surroundings().air().barometer().pascals()
                + design.boost().pascals(point.rpm())
                - INLET_LOSS_PA * speed * speed;
    }

    private double exhaustPressure(OperatingPoint point) {
        return point.surroundings().air().barometer().pascals()
                + design.exhaust().pressureAbove(point.rpm())
                + design.boost().pascals(point.rpm());
    }

    /** Mean gas after blowdown of a fixed volume (Heywood, section 6.5, from memory), cooled in the port. */
    private double exhaust(OperatingPoint point, Gas.State opening) {
        double share = (EXHAUST_GAMMA - 1) / EXHAUST_GAMMA * exhaustPressure(point) / opening.pascals();
        double gas = opening.kelvins() * (1 / EXHAUST_GAMMA + share);
        return design.exhaust()
                .afterPort(gas, point.rpm(), point.surroundings().coolant().kelvins());
    }
}
