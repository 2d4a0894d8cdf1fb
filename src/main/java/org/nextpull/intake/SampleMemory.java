package org.nextpull.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;

/**
 * Keeps the rows of the pulls of a day: in memory as long as there is room, then in a file of its own that goes with the program. So a day
 * of any length fits in a small heap. Safe for use by several threads.
 */
public final class SampleMemory {
    /** Share of all memory; the rest is for what is made of the samples. */
    private static final double SHARE = 0.4;

    /** Of it, what may be filled before the file takes the rest. */
    private static final double KEPT_SHARE = 0.1;

    private long room;
    private Optional<FileChannel> file = Optional.empty();
    private long written;

    public SampleMemory() {
        this((long) (KEPT_SHARE * most()));
    }

    /** Keeps so many bytes at hand. */
    SampleMemory(long room) {
        this.room = room;
    }

    /** In bytes, of the memory that Java was given. */
    public static long most() {
        return (long) (SHARE * Runtime.getRuntime().maxMemory());
    }

    /** Takes rows and gives them back whenever they are asked for; rows with words stay in memory, as few logs have any. */
    public synchronized Supplier<Samples> keep(Samples samples) {
        long bytes = bytes(samples);
        if (bytes <= room || samples.hasWords()) {
            room -= bytes;
            return new Samples.AtHand(samples);
        }
        try {
            FileChannel into = file.isPresent() ? file.get() : open();
            file = Optional.of(into);
            long at = written;
            written += write(into, at, samples);
            List<Channel> channels = samples.channels();
            int length = (int) (written - at);
            return () -> read(into, at, length, channels);
        } catch (IOException full) {
            return new Samples.AtHand(samples);
        }
    }

    private static long bytes(Samples samples) {
        return samples.rows() * (8L * samples.channels().size() + 24);
    }

    /** Nobody else can open the file, and it is gone with the program even where that is killed, as far as the system allows. */
    private static FileChannel open() throws IOException {
        Path path = Files.createTempFile("nextpull-rows", ".tmp");
        return FileChannel.open(
                path, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE);
    }

    /** The lines, then of each channel which rows have it, and its values. */
    private static int write(FileChannel into, long at, Samples samples) throws IOException {
        int rows = samples.rows();
        int bits = (rows + Long.SIZE - 1) / Long.SIZE;
        ByteBuffer bytes = ByteBuffer.allocate(
                Integer.BYTES + Long.BYTES * (rows + samples.channels().size() * (bits + rows)));
        bytes.putInt(rows);
        for (int row = 0; row < rows; row++) {
            bytes.putLong(samples.line(row));
        }
        for (Channel channel : samples.channels()) {
            Samples.Cells cells = samples.cells(channel);
            BitSet present = new BitSet(rows);
            int start = bytes.position();
            bytes.position(start + bits * Long.BYTES);
            for (int row = 0; row < rows; row++) {
                if (cells.isPresent(row)) {
                    present.set(row);
                    bytes.putDouble(cells.value(row));
                }
            }
            long[] words = present.toLongArray();
            for (int word = 0; word < bits; word++) {
                bytes.putLong(start + word * Long.BYTES, word < words.length ? words[word] : 0);
            }
        }
        bytes.flip();
        int length = bytes.limit();
        for (long place = at; bytes.hasRemaining(); ) {
            place += into.write(bytes, place);
        }
        return length;
    }

    private static Samples read(FileChannel from, long at, int length, List<Channel> channels) {
        ByteBuffer bytes = ByteBuffer.allocate(length);
        try {
            while (bytes.hasRemaining() && from.read(bytes, at + bytes.position()) >= 0) {
                // a read may give less than was asked for
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the rows of a pull cannot be read back", e);
        }
        bytes.flip();
        int rows = bytes.getInt();
        SamplesBuilder builder = Samples.builder(channels);
        long[] words = new long[rows];
        bytes.asLongBuffer().get(words);
        bytes.position(bytes.position() + rows * Long.BYTES);
        builder.rows(words, 0, rows);
        double[] values = new double[rows];
        int bits = (rows + Long.SIZE - 1) / Long.SIZE;
        for (int index = 0; index < channels.size(); index++) {
            bytes.asLongBuffer().get(words, 0, bits);
            bytes.position(bytes.position() + bits * Long.BYTES);
            BitSet present = BitSet.valueOf(Arrays.copyOf(words, bits));
            int count = present.cardinality();
            bytes.asDoubleBuffer().get(values, 0, count);
            bytes.position(bytes.position() + count * Double.BYTES);
            int taken = 0;
            for (int row = present.nextSetBit(0); row >= 0; ) {
                int end = present.nextClearBit(row);
                builder.set(row, index, values, taken, taken + end - row);
                taken += end - row;
                row = present.nextSetBit(end);
            }
        }
        return builder.take();
    }
}
