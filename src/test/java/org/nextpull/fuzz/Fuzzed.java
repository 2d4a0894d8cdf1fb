package org.nextpull.fuzz;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Finding;
import org.nextpull.intake.ByteSource;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.WireChain;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.notebook.Notebook;
import org.nextpull.notebook.NotebookException;
import org.nextpull.plan.WireFacts;
import org.nextpull.plan.text.PlanText;
import org.nextpull.unit.Unit;

/** The doors through which strange bytes come: whatever they are, what is behind a door gives samples or findings and never fails. */
public enum Fuzzed {
    CSV {
        @Override
        void take(byte[] bytes) throws IOException {
            if (FILES.read(new Bytes(bytes)).value().orElse(null) instanceof Input.Log log) {
                try (BlockReader reader = log.recording().open()) {
                    while (reader.next().isPresent()) {
                        reader.rowCount();
                    }
                    reader.findings();
                }
            }
        }
    },
    PLAN {
        @Override
        void take(byte[] bytes) {
            PlanText.read(text(bytes), "plan.toml");
        }
    },
    UNIT {
        @Override
        void take(byte[] bytes) {
            String text = text(bytes);
            Unit.parse(text);
            COLUMNS.isUnit(text);
            COLUMNS.knownNames(List.of(text));
        }
    },
    WIRE {
        @Override
        void take(byte[] bytes) {
            for (WireFacts.Lines kind : WireFacts.Lines.values()) {
                WireSource.LineSettings lines = new WireSource.LineSettings(kind, List.of(), 0, 0);
                WireChain chain = new WireChain(
                        List.of(WireSource.port("port", lines, "")), LogHints.none(), COLUMNS, new Deaf());
                chain.accept(new Arrival.Connected("port", at(0)));
                int half = Math.min(bytes.length, Chunk.MOST_BYTES) / 2;
                chain.accept(Chunk.copyOf("port", at(1), bytes, half));
                byte[] rest = Arrays.copyOfRange(bytes, half, Math.min(bytes.length, half + Chunk.MOST_BYTES));
                chain.accept(Chunk.copyOf("port", at(2), rest, rest.length));
                chain.finish(at(3));
            }
        }
    },
    NOTEBOOK {
        @Override
        void take(byte[] bytes) throws IOException {
            Path file = Files.createTempFile("nextpull-fuzzed", ".db");
            try {
                Files.write(file, bytes);
                try (Notebook notebook = Notebook.openReadOnly(file)) {
                    notebook.list();
                    notebook.check();
                } catch (NotebookException said) {
                    said.finding();
                }
            } finally {
                Files.delete(file);
            }
        }
    };

    private static final ColumnReader COLUMNS = new ColumnReader();
    private static final LogFiles FILES = new LogFiles(LogHints.none());

    /** Hands bytes in at this door. */
    abstract void take(byte[] bytes) throws IOException;

    /** What the fuzzer calls first: loading classes is no hang of an input. */
    public static void fuzzerInitialize() {
        fuzzerTestOneInput(
                "time [s],rpm [1/min],torque [Nm]\n0,3000,100\n0.1,3100,101\n".getBytes(StandardCharsets.UTF_8));
    }

    /** What the fuzzer calls; the property {@code fuzz.door} names the door. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        try {
            valueOf(System.getProperty("fuzz.door", "csv").toUpperCase(Locale.ROOT))
                    .take(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static ArrivalTime at(long seconds) {
        return new ArrivalTime(seconds * 1_000_000_000, 1_700_000_000_000L + seconds * 1000);
    }

    /** A source in memory. */
    private static final class Bytes implements ByteSource {
        private final byte[] bytes;

        Bytes(byte[] bytes) {
            this.bytes = bytes;
        }

        @Override
        public String name() {
            return "fuzzed.csv";
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(bytes);
        }
    }

    /** Listens to nothing. */
    private static final class Deaf implements WireChain.Listener {
        @Override
        public void rows(String source, Samples samples) {}

        @Override
        public void block(Block block) {}

        @Override
        public void said(ArrivalTime at, Finding finding) {}

        @Override
        public void fileComplete(Arrival.FileComplete file) {}
    }
}
