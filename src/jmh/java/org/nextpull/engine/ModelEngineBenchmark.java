package org.nextpull.engine;

import java.util.concurrent.TimeUnit;
import org.nextpull.engine.gas.EngineFuel;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Full-load points a second on one core, by the length of the integration step. A sweep bench of 2,000 engines, each asked some 50
 * times at 14 speeds, needs 1.4 million points: at 2,000 a second twelve minutes. The ratio to be read off is that of one step
 * length to another; the plain figure belongs to the machine.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class ModelEngineBenchmark {
    private final ModelEngine engine =
            ModelEngine.of(ExampleEngines.hillClimb()).value().orElseThrow();
    private final OperatingPoint point = new OperatingPoint(
            5000,
            Advance.ofDeg(26),
            Lambda.of(0.88),
            EngineFuel.named("e10").value().orElseThrow(),
            OperatingPoint.Surroundings.reference());
    private double rpm = 3000;

    private OperatingPoint next() {
        rpm = rpm >= 7000 ? 3000 : rpm + 37;
        return point.atRpm(rpm);
    }

    /** The step in use: one degree. */
    @Benchmark
    public double oneDegree() {
        return engine.at(next()).value().orElseThrow().torque().newtonMetres();
    }

    /** Half of it, for the ratio. */
    @Benchmark
    public double halfDegree() {
        return engine.at(next(), 0.5).value().orElseThrow().torque().newtonMetres();
    }

    /** Twice it, for the ratio. */
    @Benchmark
    public double twoDegrees() {
        return engine.at(next(), 2).value().orElseThrow().torque().newtonMetres();
    }
}
