package org.nextpull.engine.cycle;

/**
 * Size of one cylinder and of its crank drive.
 *
 * @param bore bore in m
 * @param stroke stroke in m
 * @param drive compression ratio and rod
 */
public record Cylinder(double bore, double stroke, Drive drive) {
    /**
     * How far the charge is compressed and how the piston moves.
     *
     * @param compressionRatio largest over least volume, above 1
     * @param rodPerCrank length of the connecting rod over the crank radius, above 1
     */
    public record Drive(double compressionRatio, double rodPerCrank) {}

    /** Volume that the piston sweeps, in m3. */
    public double sweptVolume() {
        return Math.PI / 4 * bore * bore * stroke;
    }

    /** Volume at top dead centre, in m3. */
    public double clearanceVolume() {
        return sweptVolume() / (drive.compressionRatio() - 1);
    }

    /** Mean piston speed in m/s. */
    public double pistonSpeed(double rpm) {
        return 2 * stroke * rpm / 60;
    }
}
