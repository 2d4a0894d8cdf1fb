package org.nextpull.engine;

import org.nextpull.engine.cycle.BurnDuration;
import org.nextpull.engine.cycle.ChenFlynn;
import org.nextpull.engine.cycle.ClosedCycle;
import org.nextpull.engine.cycle.Cylinder;
import org.nextpull.unit.Pressure;

/**
 * An engine, described by its parts. Any numbers may be given; {@link ModelEngine#of} refuses those that make no engine.
 *
 * @param name what it is called
 * @param cylinder one cylinder
 * @param cylinders how many
 * @param valves when they are closed
 * @param breathing filling over speed
 * @param boost charger
 * @param combustion how it burns
 * @param walls what heat is lost to, with a warm engine
 * @param friction friction with hot oil
 * @param exhaust exhaust
 */
public record EngineDesign(
        String name,
        Cylinder cylinder,
        int cylinders,
        ValveTiming valves,
        Breathing breathing,
        Boost boost,
        Combustion combustion,
        ClosedCycle.Walls walls,
        ChenFlynn friction,
        Exhaust exhaust) {
    /** Swept volume of all cylinders in m3. */
    public double displacement() {
        return cylinders * cylinder.sweptVolume();
    }

    EngineDesign withCylinder(Cylinder other) {
        return new EngineDesign(name, other, cylinders, valves, breathing, boost, combustion, walls, friction, exhaust);
    }

    public EngineDesign withCompressionRatio(double ratio) {
        Cylinder.Drive drive = new Cylinder.Drive(ratio, cylinder.drive().rodPerCrank());
        return withCylinder(new Cylinder(cylinder.bore(), cylinder.stroke(), drive));
    }

    EngineDesign withBoost(Boost other) {
        return new EngineDesign(
                name, cylinder, cylinders, valves, breathing, other, combustion, walls, friction, exhaust);
    }

    /**
     * When the cylinder is closed.
     *
     * @param inletClosesDeg degrees after bottom dead centre
     * @param exhaustOpensDeg degrees before bottom dead centre
     */
    public record ValveTiming(double inletClosesDeg, double exhaustOpensDeg) {}

    /**
     * How an engine burns.
     *
     * @param duration burn duration
     * @param spread standard deviation of lambda within the cylinder
     * @param completeness fraction of the heat that is released; crevices and leaks keep the rest
     * @param hotSpot where it begins to knock
     */
    public record Combustion(BurnDuration duration, double spread, double completeness, HotSpot hotSpot) {
        /**
         * The hottest part of the charge, in which knock begins: deposits, the exhaust valve, residual gas that is not mixed in.
         *
         * @param hotterK how much warmer than the mean it is when the inlet closes, in K. Its usual size is the project's own choice, so
         *     that 11:1 on pump fuel begins to knock near best torque at low speed (common practice, no source)
         */
        public record HotSpot(double hotterK) {
            public static final HotSpot USUAL = new HotSpot(22);
        }
    }

    /**
     * Pressure that a charger adds to the inlet.
     *
     * @param full gauge pressure once the charger is up; zero for a natural engine
     * @param fullRpm speed from which it is up
     */
    public record Boost(Pressure full, double fullRpm) {
        private static final double COMPRESSOR_EXPONENT = 0.4;
        private static final double COOLED_SHARE = 0.65;

        public static Boost none() {
            return new Boost(Pressure.ofPascals(0), 1);
        }

        /** The same charger on a pull on which it blows so much more or less. */
        Boost times(double factor) {
            return new Boost(Pressure.ofPascals(full.pascals() * factor), fullRpm);
        }

        public boolean isNone() {
            return full.pascals() == 0;
        }

        /** Gauge pressure in Pa at a speed. */
        double pascals(double rpm) {
            double share = Math.min(1, rpm / fullRpm);
            return full.pascals() * share * share * (3 - 2 * share);
        }

        /** Rise of the charge temperature in K behind the charge cooler. */
        double heating(double kelvins, double pressureRatio) {
            return kelvins * (Math.pow(pressureRatio, COMPRESSOR_EXPONENT) - 1) * (1 - COOLED_SHARE);
        }
    }

    /**
     * The exhaust of an engine.
     *
     * @param backPressure pressure above the surroundings in Pa at 6,000 rpm; grows with the square of speed
     * @param coolingShare fraction of the gas's heat above the wall that is lost before the thermocouple at 4,000 rpm
     */
    public record Exhaust(double backPressure, double coolingShare) {
        private static final double PRESSURE_RPM = 6000;
        private static final double COOLING_RPM = 4000;
        private static final double COOLING_POWER = -0.25;

        double pressureAbove(double rpm) {
            double ratio = rpm / PRESSURE_RPM;
            return backPressure * ratio * ratio;
        }

        /** Temperature at the thermocouple in K. */
        double afterPort(double kelvins, double rpm, double wallKelvins) {
            double transferUnits = -Math.log1p(-coolingShare) * Math.pow(rpm / COOLING_RPM, COOLING_POWER);
            return wallKelvins + (kelvins - wallKelvins) * Math.exp(-transferUnits);
        }
    }

    /**
     * How well an engine fills itself over speed: a broad resonance of the inlet, the ripple of standing waves in the runners, choking of
     * the valves at high speed and backflow at low speed.
     *
     * @param base volumetric efficiency without any of them, against dry air at the inlet
     * @param ripple height of the standing waves, as a fraction of the filling
     * @param resonance the broad resonance
     * @param losses what is lost at both ends
     */
    public record Breathing(double base, double ripple, Resonance resonance, Losses losses) {
        private static final double RIPPLE_ORDER = 4;
        private static final double RIPPLE_DECAY = 3;
        private static final double RESONANCE_WIDTH = 0.3;
        private static final double CHOKE_SHARE = 0.25;
        private static final double CHOKE_POWER = 6;
        private static final double BACKFLOW_RPM = 1500;

        /**
         * The broad resonance of the inlet.
         *
         * @param tunedRpm speed of its top
         * @param gain what it adds there, as a fraction
         */
        public record Resonance(double tunedRpm, double gain) {}

        /**
         * What is lost at both ends of the speed range.
         *
         * @param chokeRpm speed at which the valves have cost a fifth of the filling
         * @param backflow fraction pushed back by late closing as the speed goes to zero
         */
        public record Losses(double chokeRpm, double backflow) {}

        /** Volumetric efficiency at a speed. */
        public double efficiency(double rpm) {
            double off = (rpm / resonance.tunedRpm() - 1) / RESONANCE_WIDTH;
            double tuned = 1 + resonance.gain() / (1 + off * off);
            double order = RIPPLE_ORDER * resonance.tunedRpm() / rpm;
            double wave = Math.cos(2 * Math.PI * order) * Math.exp(-Math.abs(order - RIPPLE_ORDER) / RIPPLE_DECAY);
            double choked = 1 / (1 + CHOKE_SHARE * Math.pow(rpm / losses.chokeRpm(), CHOKE_POWER));
            double kept = 1 - losses.backflow() * Math.exp(-rpm / BACKFLOW_RPM);
            return base * tuned * (1 + ripple * wave) * choked * kept;
        }

        public Breathing withResonance(Resonance other) {
            return new Breathing(base, ripple, other, losses);
        }
    }
}
