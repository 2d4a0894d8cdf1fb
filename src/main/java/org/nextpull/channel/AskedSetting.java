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
        Optional<String> note) {
    /** A setting that says nothing. */
    public static AskedSetting none() {
        return new AskedSetting(
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                KnockMark.NOT_MEASURED,
                Optional.empty());
    }

    /** Whether it says spark or mixture. */
    public boolean hasValues() {
        return advance.isPresent() || offsetDeg.isPresent() || lambda.isPresent();
    }

    /** This setting; what it does not say is as another says it. */
    public AskedSetting orElse(AskedSetting other) {
        boolean setsAdvance = advance.isPresent() || offsetDeg.isPresent();
        return new AskedSetting(
                file.or(other::file),
                pull.isPresent() ? pull : other.pull,
                order.isPresent() ? order : other.order,
                setsAdvance ? advance : other.advance,
                setsAdvance ? offsetDeg : other.offsetDeg,
                lambda.or(other::lambda),
                fuel.or(other::fuel),
                label.or(other::label),
                knock == KnockMark.NOT_MEASURED ? other.knock : knock,
                note.or(other::note));
    }

    /** What stays set for whatever is run next: the setting without what was said of this pull alone. */
    public AskedSetting ofNextPull() {
        return none().withValues(advance, offsetDeg, lambda).withConfiguration(label, fuel);
    }

    public AskedSetting withKnock(KnockMark newKnock) {
        return new AskedSetting(file, pull, order, advance, offsetDeg, lambda, fuel, label, newKnock, note);
    }

    public AskedSetting withConfiguration(Optional<String> newLabel, Optional<String> newFuel) {
        return new AskedSetting(file, pull, order, advance, offsetDeg, lambda, newFuel, newLabel, knock, note);
    }

    public AskedSetting withNote(Optional<String> newNote) {
        return new AskedSetting(file, pull, order, advance, offsetDeg, lambda, fuel, label, knock, newNote);
    }

    /** The same with other spark and mixture. */
    public AskedSetting withValues(
            Optional<Advance> newAdvance, Optional<Advance> newOffsetDeg, Optional<Lambda> newLambda) {
        return new AskedSetting(file, pull, order, newAdvance, newOffsetDeg, newLambda, fuel, label, knock, note);
    }
}
