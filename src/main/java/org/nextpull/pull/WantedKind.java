package org.nextpull.pull;

/** Which kind of pull to look for. */
public enum WantedKind {
    /** Whatever a stretch at full load looks like. */
    AUTO,
    /** Sweeps with the speed always moving, up or down. */
    ACCELERATION,
    /** Plateaus at one speed after another, up or down. */
    STEPS,
    /** One speed held while the spark is stepped. */
    HOLD
}
