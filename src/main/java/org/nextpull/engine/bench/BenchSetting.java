package org.nextpull.engine.bench;

import java.util.Optional;
import org.nextpull.channel.SparkMap;
import org.nextpull.engine.ModelEngine;
import org.nextpull.engine.gas.EngineFuel;
import org.nextpull.unit.Lambda;

/**
 * What is set for a pull on the simulated brake.
 *
 * @param engine the engine as it is fitted out
 * @param spark spark advance over speed
 * @param lambda mixture asked for
 * @param fuel fuel
 * @param label configuration; empty where there is only one
 */
public record BenchSetting(ModelEngine engine, SparkMap spark, Lambda lambda, EngineFuel fuel, Optional<String> label) {
    public BenchSetting withAdvance(double deg) {
        return new BenchSetting(engine, SparkMap.flat(deg), lambda, fuel, label);
    }

    public BenchSetting withLambda(double value) {
        return new BenchSetting(engine, spark, Lambda.of(value), fuel, label);
    }
}
