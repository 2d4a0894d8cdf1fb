package org.nextpull.engine;

import org.nextpull.engine.cycle.BurnDuration;
import org.nextpull.engine.cycle.ChenFlynn;
import org.nextpull.engine.cycle.ClosedCycle;
import org.nextpull.engine.cycle.Cylinder;

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

    public EngineDesign withCylinder(Cylinder other) {
        return new EngineDesign(name, other, cylinders, valves, breathing, boost, combustion, walls, friction, exhaust);
    }

    public EngineDesign withCompressionRatio(double ratio) {
        Cylinder.Drive drive = new Cylinder.Drive(ratio, cylinder.drive().rodPerCrank());
        return withCylinder(new Cylinder(cylinder.bore(), cylinder.stroke(), drive));
    }

    public EngineDesign withBoost(Boost other) {
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
}
