package org.nextpull.intake;

/** How much memory the samples of a day may fill. */
public final class SampleMemory {
    /** Share of all memory; the rest is for what is made of the samples. */
    private static final double SHARE = 0.4;

    private SampleMemory() {}

    /** In bytes, of the memory that Java was given. */
    public static long most() {
        return (long) (SHARE * Runtime.getRuntime().maxMemory());
    }
}
