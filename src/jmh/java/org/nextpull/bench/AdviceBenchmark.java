package org.nextpull.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.nextpull.app.PlanFile;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.plan.SweepPlan;
import org.nextpull.session.MeasureCache;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;
import org.nextpull.session.SourcePulls;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What an advice costs when a pull has ended in a session that has run for a while and advised after the pull before. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class AdviceBenchmark {
    @Param({"10", "25", "100"})
    private int pulls;

    private final MeasureCache once = new MeasureCache();
    private SessionInput input;
    private List<SourcePulls> sources;
    private List<SourcePulls> before;

    @Setup
    public void read() throws IOException {
        Path log = Files.createTempFile("nextpull-bench", ".csv");
        Path text = Files.createTempFile("nextpull-bench", ".toml");
        try {
            new LongLog(15).write(log, 0, pulls);
            Files.writeString(text, LogBench.PLAN);
            SweepPlan plan =
                    PlanFile.read(text.toString()).value().orElseThrow().plan();
            input = SessionInput.of(
                    plan,
                    new LogFiles(plan.log().hints())
                            .read(List.of(log.toString())).logs().stream()
                                    .map(Input.Log::recording)
                                    .toList(),
                    List.of());
            sources = Session.read(input);
            before = sources.stream()
                    .map(all -> all.withCandidates(
                            all.candidates().subList(0, all.candidates().size() - 1)))
                    .toList();
        } finally {
            Files.delete(log);
            Files.delete(text);
        }
    }

    @Setup(Level.Invocation)
    public void adviseAfterThePullBefore() {
        Session.evaluate(input, before, once);
    }

    @Benchmark
    public SessionResult advise() {
        return Session.evaluate(input, sources, once);
    }
}
