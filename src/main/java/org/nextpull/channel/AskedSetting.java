package org.nextpull.channel;

import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * What the operator set for a pull, one row of a settings file or one confirmation at the console.
 *
 * @param file file of the pull; empty where there is only one
 * @param pull number of the candidate within the file, as {@code inspect} prints it
 * @param order order in the day, where it differs from that of the rows
 * @param advance advance set flat
 * @param offsetDeg degrees added everywhere to the present map
 * @param lambda mixture asked for
 * @param fuel name of the fuel
 * @param label configuration
 * @param knock what the operator marked
 * @param note free words
 */
public record AskedSetting(
        Optional<String> file,
        OptionalInt pull,
        OptionalInt order,
        Optional<Advance> advance,
        Optional<Advance> offsetDeg,
        Optional<Lambda> lambda,
        Optional<String> fuel,
        Optional<String> label,
        KnockMark knock,
        Optional<String> note) {}
