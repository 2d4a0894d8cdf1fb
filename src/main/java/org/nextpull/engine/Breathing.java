package org.nextpull.engine;

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
