package org.nextpull.engine;

import org.nextpull.engine.cycle.ChenFlynn;
import org.nextpull.engine.cycle.Cylinder;
import org.nextpull.engine.cycle.Walls;

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
        Walls walls,
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

    public EngineDesign withBreathing(Breathing other) {
        return new EngineDesign(name, cylinder, cylinders, valves, other, boost, combustion, walls, friction, exhaust);
    }

    public EngineDesign withBoost(Boost other) {
        return new EngineDesign(
                name, cylinder, cylinders, valves, breathing, other, combustion, walls, friction, exhaust);
    }

    public EngineDesign withCombustion(Combustion other) {
        return new EngineDesign(name, cylinder, cylinders, valves, breathing, boost, other, walls, friction, exhaust);
    }

    public EngineDesign withExhaust(Exhaust other) {
        return new EngineDesign(
                name, cylinder, cylinders, valves, breathing, boost, combustion, walls, friction, other);
    }
}
