package org.nextpull.window.bench;

import org.nextpull.finding.Severity;
import org.nextpull.window.look.Tone;

/** How findings are to be taken. */
final class Tones {
    private Tones() {}

    static Tone of(Severity severity) {
        return switch (severity) {
            case NOTE -> Tone.PLAIN;
            case WARNING -> Tone.WARN;
            case ERROR -> Tone.BAD;
        };
    }
}
