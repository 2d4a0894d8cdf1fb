package org.nextpull.engine.cycle;

/**
 * Volume over crank angle of a slider-crank drive without offset: {@code V/Vc = 1 + (r - 1)/2 (R + 1 - cos a - sqrt(R^2 - sin^2 a))}
 * (Heywood, Internal Combustion Engine Fundamentals, equation 2.6, from memory). Angles in crank degrees after top dead centre.
 */
public final class SliderCrank {
    private static final double RADIANS = Math.PI / 180;

    private final Cylinder cylinder;
    private final double clearance;
    private final double half;
    private final double rod;
    private final double fixedArea;

    public SliderCrank(Cylinder cylinder) {
        this.cylinder = cylinder;
        this.clearance = cylinder.clearanceVolume();
        this.half = cylinder.sweptVolume() / 2;
        this.rod = cylinder.drive().rodPerCrank();
        // head and piston crown as two flat discs, and the liner left open at top dead centre
        this.fixedArea = Math.PI / 2 * cylinder.bore() * cylinder.bore();
    }

    /** Volume in m3. */
    public double volume(double deg) {
        double sine = Math.sin(deg * RADIANS);
        return clearance + half * (rod + 1 - Math.cos(deg * RADIANS) - Math.sqrt(rod * rod - sine * sine));
    }

    /** Change of volume in m3 per crank degree. */
    double volumeRate(double deg) {
        double sine = Math.sin(deg * RADIANS);
        double cosine = Math.cos(deg * RADIANS);
        return RADIANS * half * sine * (1 + cosine / Math.sqrt(rod * rod - sine * sine));
    }

    /** Area of the walls in m2, at a volume in m3. */
    double wallArea(double volume) {
        return fixedArea + 4 * volume / cylinder.bore();
    }

    /** Mean height of the chamber in m, at a volume in m3. */
    public double height(double volume) {
        return volume / (Math.PI / 4 * cylinder.bore() * cylinder.bore());
    }
}
