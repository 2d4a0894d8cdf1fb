package org.nextpull.intake.capture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;

/**
 * What a capture file holds, all of it.
 *
 * @param source name of the source
 * @param last time of the last thing that it says; empty when no record is whole
 * @param bytes bytes received
 * @param starts how often the program began to write
 * @param damage places that are no whole record, in order
 * @param fileId the id that all its records carry
 */
public record CaptureSummary(
        String source,
        Optional<ArrivalTime> last,
        long bytes,
        int starts,
        List<CaptureReader.Entry.Damaged> damage,
        OptionalInt fileId) {
    public CaptureSummary {
        damage = List.copyOf(damage);
    }

    /** Reads a capture from its start to its end. */
    public static CaptureSummary of(Path file) throws IOException {
        Sum sum = new Sum(String.valueOf(file.getFileName()));
        try (CaptureReader reader = CaptureReader.open(file)) {
            for (Optional<CaptureReader.Entry> entry = reader.next(); entry.isPresent(); entry = reader.next()) {
                sum.add(entry.get());
            }
            return new CaptureSummary(sum.source, sum.last, sum.bytes, sum.starts, sum.damage, reader.fileId());
        }
    }

    /** Bytes of the file that could not be read. */
    long damagedBytes() {
        return damage.stream().mapToLong(CaptureReader.Entry.Damaged::bytes).sum();
    }

    private static final class Sum {
        private final List<CaptureReader.Entry.Damaged> damage = new ArrayList<>();
        private String source;
        private Optional<ArrivalTime> last = Optional.empty();
        private long bytes;
        private int starts;

        Sum(String source) {
            this.source = source;
        }

        void add(CaptureReader.Entry entry) {
            if (entry instanceof CaptureReader.Entry.Damaged damaged) {
                damage.add(damaged);
            } else if (entry instanceof CaptureReader.Entry.Started started) {
                source = started.source();
                starts++;
                last = Optional.of(started.at());
            } else if (entry instanceof CaptureReader.Entry.Ended end) {
                last = Optional.of(end.at());
            } else if (entry instanceof CaptureReader.Entry.Received received) {
                Arrival arrival = received.arrival();
                bytes += arrival instanceof Chunk chunk ? chunk.length() : 0;
                last = Optional.of(arrival.at());
            }
        }
    }
}
