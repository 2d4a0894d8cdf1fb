package org.nextpull.intake.capture;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.Fingerprint;

/** Seeded arrivals, and captures read whole. */
final class Captures {
    static final String SOURCE = "/dev/ttyUSB0";

    private Captures() {}

    /** Arrivals of all kinds with random bytes, among them the marker of a record. */
    static List<Arrival> arrivals(long seed, int count) {
        Random random = new Random(seed);
        List<Arrival> result = new ArrayList<>();
        long ns = 0;
        for (int index = 0; index < count; index++) {
            ns += 1 + random.nextInt(5_000_000);
            ArrivalTime at = new ArrivalTime(ns, 1_700_000_000_000L + ns / 1_000_000);
            result.add(
                    switch (random.nextInt(8)) {
                        case 0 -> new Arrival.Connected(SOURCE, at);
                        case 1 -> new Arrival.Lost(SOURCE, at, Arrival.Cause.UNPLUGGED, random.nextInt(100));
                        case 2 -> new Arrival.FromFile(SOURCE, at, "pull " + index + " \u00e4.csv", random.nextInt(99));
                        case 3 ->
                            new Arrival.FileComplete(
                                    SOURCE,
                                    at,
                                    "pull " + index + ".csv",
                                    Arrival.Taken.EXTENDED,
                                    Fingerprint.of(random.nextInt(99), Fingerprint.digest()));
                        default -> chunk(random, at);
                    });
        }
        return result;
    }

    private static Chunk chunk(Random random, ArrivalTime at) {
        byte[] bytes = new byte[1 + random.nextInt(40)];
        random.nextBytes(bytes);
        if (bytes.length > 10) {
            bytes[3] = (byte) 0xf7;
            bytes[4] = 0x6e;
            bytes[5] = 0x70;
            bytes[6] = 0x1c;
        }
        return Chunk.copyOf(SOURCE, at, bytes, bytes.length);
    }

    /** The remaining bytes of a buffer. */
    static byte[] bytes(ByteBuffer buffer) {
        byte[] result = new byte[buffer.remaining()];
        buffer.get(result);
        return result;
    }

    static List<CaptureReader.Entry> entries(byte[] capture) throws IOException {
        List<CaptureReader.Entry> result = new ArrayList<>();
        try (CaptureReader reader = CaptureReader.of(new ByteArrayInputStream(capture), SOURCE)) {
            for (Optional<CaptureReader.Entry> entry = reader.next(); entry.isPresent(); entry = reader.next()) {
                result.add(entry.get());
            }
        }
        return result;
    }

    static List<Arrival> received(List<CaptureReader.Entry> entries) {
        return entries.stream()
                .filter(CaptureReader.Entry.Received.class::isInstance)
                .map(entry -> ((CaptureReader.Entry.Received) entry).arrival())
                .toList();
    }

    static List<CaptureReader.Entry.Damaged> damage(List<CaptureReader.Entry> entries) {
        return entries.stream()
                .filter(CaptureReader.Entry.Damaged.class::isInstance)
                .map(CaptureReader.Entry.Damaged.class::cast)
                .toList();
    }
}
