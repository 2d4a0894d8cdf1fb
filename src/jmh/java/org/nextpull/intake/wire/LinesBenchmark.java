package org.nextpull.intake.wire;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.nextpull.channel.Block;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Finding;
import org.nextpull.intake.ColumnReader;
import org.nextpull.plan.WireFacts;
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

/** What a line costs from its bytes to its row, for each make-up of lines. */
@State(Scope.Thread)
@BenchmarkMode({Mode.AverageTime, Mode.SampleTime})
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LinesBenchmark implements WireChain.Listener {
    private static final String WIRE = "COM3";
    private static final int LINES = 1000;

    @Param({"SEPARATED", "PAIRS", "SENTENCE"})
    private WireFacts.Lines kind;

    private final Chunk[] chunks = new Chunk[LINES];
    private WireChain chain;
    private int next;
    private long nanos;
    private long rows;

    @Setup(Level.Iteration)
    public void connect() {
        List<String> columns = kind == WireFacts.Lines.PAIRS
                ? List.of()
                : List.of("rpm", "torque [Nm]", "lambda", "coolant [C]", "oil temp [C]", "egt [C]", "throttle [%]");
        chain = new WireChain(
                List.of(WireSource.port(WIRE, new WireSource.LineSettings(kind, columns, 0, 0), "")),
                LogHints.none(),
                new ColumnReader(),
                this);
        chain.accept(new Arrival.Connected(WIRE, new ArrivalTime(0, 0)));
        nanos = 0;
        for (int line = 0; line < LINES; line++) {
            chunks[line] = Chunk.of(WIRE, new ArrivalTime(0, 0), text(line));
        }
    }

    private String text(int line) {
        String values = String.format(
                Locale.ROOT, "%d,%.1f,%.3f,85.2,95.1,%d,100", 3000 + line, 180.5 + line / 50.0, 0.87, 700 + line % 90);
        return switch (kind) {
            case SEPARATED -> values + "\r\n";
            case PAIRS ->
                String.format(
                        Locale.ROOT,
                        "rpm=%d;torque[Nm]=%.1f;lambda=0.870;coolant[C]=85.2;egt[C]=%d\n",
                        3000 + line,
                        180.5 + line / 50.0,
                        700 + line % 90);
            case SENTENCE -> SentenceFrame.of("TXENG," + values);
        };
    }

    @Benchmark
    public long line() {
        nanos += 200_000;
        Chunk line = chunks[next++ % LINES];
        chain.accept(Chunk.copyOf(WIRE, new ArrivalTime(nanos, nanos / 1_000_000), line.raw(), line.length()));
        return rows;
    }

    @Override
    public void rows(String source, Samples samples) {
        rows += samples.rows();
    }

    @Override
    public void block(Block block) {
        rows += block.samples().rows();
    }

    @Override
    public void said(ArrivalTime at, Finding finding) {
        rows++;
    }

    @Override
    public void fileComplete(Arrival.FileComplete file) {
        rows++;
    }
}
