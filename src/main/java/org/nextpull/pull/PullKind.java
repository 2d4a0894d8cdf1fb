package org.nextpull.pull;

/** What a candidate turned out to be. */
public enum PullKind {
    /** Speed rising all the way. */
    RISING,
    /** Speed falling all the way, drawn down by the brake. */
    FALLING,
    /** Plateaus, each faster than the one before. */
    STEPS_UP,
    /** Plateaus, each slower than the one before. */
    STEPS_DOWN,
    /** One plateau at one speed with one spark setting. */
    HOLD;

    public boolean isSweep() {
        return this == RISING || this == FALLING;
    }
}
