package org.nextpull.report;

import java.util.List;

/** What everyone who runs an engine on advice must have read: with each session, at the first show of the window, on each sheet. */
public final class Cautions {
    private Cautions() {}

    /** The cautions, a sentence or two each. */
    public static List<String> sentences() {
        return List.of(
                "This tool advises; it protects nothing, and a qualified person decides every setting.",
                "A running engine on a dyno can burst, burn, deafen and gas. Rely on the cell's own stops, guards, ventilation and "
                        + "carbon-monoxide alarm, and on hearing and eye protection.",
                "Fuels are toxic and flammable, alcohol flames can be invisible, and leaded race fuel is poisonous.",
                "Follow local codes and the limits of the makers of engine, dyno and fuel.",
                "What is not measured is not known: where knock is not measured, nothing here says that there was none.");
    }
}
