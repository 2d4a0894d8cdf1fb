package org.nextpull.response;

import java.util.OptionalDouble;
import org.nextpull.channel.KnockMark;

/**
 * Knock of one pull.
 *
 * @param mark heard, none, or not measured; the last is not "none"
 * @param events events within the band, where a counter was logged
 * @param worstLevel highest graded level within the band, where one was logged
 */
public record KnockHeard(KnockMark mark, OptionalDouble events, OptionalDouble worstLevel) {
    public static KnockHeard marked(KnockMark mark) {
        return new KnockHeard(mark, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Whether a sensor or the operator says anything at all. */
    public boolean isMeasured() {
        return mark != KnockMark.NOT_MEASURED;
    }

    public boolean isHeard() {
        return mark == KnockMark.HEARD;
    }
}
