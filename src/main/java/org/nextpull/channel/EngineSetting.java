package org.nextpull.channel;

import java.util.Locale;
import java.util.Optional;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * What an engine is run with: asked, measured or proposed. Without spark and offset the map stays as it stands in the engine.
 *
 * @param spark advance over speed; one number at every speed where the ignition is flat
 * @param offset crank degrees added everywhere to a map that no log shows, negative for retard
 * @param lambda mixture; empty where nothing is said of it
 * @param fuel name of the fuel
 * @param label configuration
 * @param note the operator's words
 */
public record EngineSetting(
        Optional<SparkMap> spark,
        Optional<Advance> offset,
        Optional<Lambda> lambda,
        Optional<String> fuel,
        Optional<String> label,
        Optional<String> note) {

    private static final EngineSetting NONE = new EngineSetting(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** A setting that says nothing. */
    public static EngineSetting none() {
        return NONE;
    }

    /** A setting of spark and mixture, on whatever fuel and under whatever label stands. */
    public static EngineSetting of(SparkMap spark, Optional<Lambda> lambda) {
        return NONE.with(Optional.of(spark), Optional.empty(), lambda);
    }

    /** A setting of numbers: a flat advance, or degrees on the present map, and a mixture, as far as each is there. */
    public static EngineSetting ofNumbers(
            Optional<Advance> advance, Optional<Advance> offset, Optional<Lambda> lambda) {
        return NONE.with(advance.map(SparkMap::flat), offset, lambda);
    }

    /** The same with other spark and mixture. */
    public EngineSetting with(Optional<SparkMap> newSpark, Optional<Advance> newOffset, Optional<Lambda> newLambda) {
        return new EngineSetting(newSpark, newOffset, newLambda, fuel, label, note);
    }

    /** The same with another mixture. */
    public EngineSetting withLambda(Optional<Lambda> newLambda) {
        return with(spark, offset, newLambda);
    }

    /** The same on another fuel and under another label. */
    public EngineSetting fitted(Optional<String> newLabel, Optional<String> newFuel) {
        return new EngineSetting(spark, offset, lambda, newFuel, newLabel, note);
    }

    /** The same with other words of the operator. */
    public EngineSetting withNote(Optional<String> newNote) {
        return new EngineSetting(spark, offset, lambda, fuel, label, newNote);
    }

    /** This setting; what it does not say is as another says it. */
    public EngineSetting orElse(EngineSetting other) {
        EngineSetting sparkFrom = setsSpark() ? this : other;
        return new EngineSetting(
                sparkFrom.spark,
                sparkFrom.offset,
                lambda.or(other::lambda),
                fuel.or(other::fuel),
                label.or(other::label),
                note.or(other::note));
    }

    private boolean setsSpark() {
        return spark.isPresent() || offset.isPresent();
    }

    /** Whether it says spark or mixture. */
    public boolean hasValues() {
        return setsSpark() || lambda.isPresent();
    }

    /** The advance where it is one number at every speed. */
    public Optional<Advance> advance() {
        return spark.flatMap(SparkMap::number);
    }

    /** The map where the ignition holds one: cells at speeds of their own. */
    public Optional<SparkMap> map() {
        return spark.filter(held -> held.number().isEmpty());
    }

    /** The spark as a planner counts it: an offset is one number, from the map that stands. */
    public Optional<SparkMap> counted() {
        return spark.or(() -> offset.map(SparkMap::flat));
    }

    private static Optional<String> plain(Optional<String> name) {
        return name.map(words -> words.strip().toLowerCase(Locale.ROOT));
    }

    /** Whether it is on that fuel, however its name is spelt. */
    public boolean isOnFuel(Optional<String> other) {
        return plain(fuel).equals(plain(other));
    }

    /** Whether both belong to one sweep: the same configuration and the same fuel. */
    public boolean isSameConfiguration(EngineSetting other) {
        return label.equals(other.label) && isOnFuel(other.fuel);
    }
}
