package org.nextpull.window.look;

/** How a state is to be taken. Each has a sign of its own beside its colour, so that neither is needed to tell them apart. */
public enum Tone {
    /** As it should be. */
    GOOD("\u25CF"),
    /** Neither good nor bad. */
    PLAIN("\u25CB"),
    /** Look at it. */
    WARN("\u25B2"),
    /** Act now. */
    BAD("\u25A0");

    private final String sign;

    Tone(String sign) {
        this.sign = sign;
    }

    /** Disc, ring, triangle or square. */
    public String sign() {
        return sign;
    }
}
