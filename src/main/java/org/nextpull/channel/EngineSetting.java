package org.nextpull.channel;

import java.util.Optional;
import org.nextpull.unit.Lambda;

/**
 * What an engine is run with: asked, measured or proposed.
 *
 * @param spark map or offset; empty where nothing is said of spark
 * @param lambda mixture; empty where nothing is said of it
 * @param fuel name of the fuel
 * @param label configuration
 * @param note the operator's words
 */
public record EngineSetting(
        Optional<Spark> spark,
        Optional<Lambda> lambda,
        Optional<String> fuel,
        Optional<String> label,
        Optional<String> note) {

    /** A setting of spark and mixture, on whatever fuel and under whatever label stands. */
    public static EngineSetting of(Spark spark, Optional<Lambda> lambda) {
        return new EngineSetting(Optional.of(spark), lambda, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** The map, where the spark is one. */
    public Optional<SparkMap> map() {
        return spark.filter(SparkMap.class::isInstance).map(SparkMap.class::cast);
    }
}
