package org.nextpull.response;

import java.util.Locale;
import java.util.Optional;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * What a pull was run with: the measured value where the log has one, else what was asked.
 *
 * @param advance flat spark advance, averaged over the band
 * @param offset crank degrees that were added everywhere to the present spark map
 * @param askedAdvance advance that was asked for, which an ignition may leave
 * @param lambda mixture, averaged over the band; the leanest of several sensors is in {@link MeasuredPull#leanestLambda}
 * @param askedLambda mixture that was asked for, kept since settings are grouped by it
 * @param fuel name of the fuel
 * @param label configuration
 * @param note the operator's words
 */
public record Setting(
        Optional<Advance> advance,
        Optional<Advance> offset,
        Optional<Advance> askedAdvance,
        Optional<Lambda> lambda,
        Optional<Lambda> askedLambda,
        Optional<String> fuel,
        Optional<String> label,
        Optional<String> note) {

    private static Optional<String> plain(Optional<String> name) {
        return name.map(words -> words.strip().toLowerCase(Locale.ROOT));
    }

    /** Whether it is on that fuel, however its name is spelt. */
    public boolean isOnFuel(Optional<String> other) {
        return plain(fuel).equals(plain(other));
    }

    /** Whether both belong to one sweep: the same configuration and the same fuel. */
    public boolean isSameConfiguration(Setting other) {
        return label.equals(other.label) && isOnFuel(other.fuel);
    }
}
