package org.nextpull.notebook;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Samples;

/** Reads the unpacked part of a {@link SampleBlob}, and believes no size in it before it was looked at. */
final class SampleBlobReader {
    /** Far more than a pull of an hour holds; more is damage. */
    private static final int MOST_CELLS = 100_000_000;

    private static final int MOST_TEXT_BYTES = 1_000_000;

    private final DataInputStream in;
    private final List<Channel> channels = new ArrayList<>();
    private final List<boolean[]> present = new ArrayList<>();
    private final List<double[]> values = new ArrayList<>();

    SampleBlobReader(DataInputStream in) {
        this.in = in;
    }

    Samples read() throws IOException {
        int rows = in.readInt();
        int count = in.readInt();
        if (rows < 0 || count < 0 || (long) rows * Math.max(1, count) > MOST_CELLS) {
            throw new IOException("samples of an impossible size");
        }
        for (int index = 0; index < count; index++) {
            channels.add(new Channel(Ids.role(readText()), in.readInt()));
        }
        long[] lines = new long[rows];
        for (int row = 0; row < rows; row++) {
            lines[row] = in.readLong();
        }
        for (int index = 0; index < count; index++) {
            boolean[] there = readPresent(rows);
            present.add(there);
            values.add(readValues(there));
        }
        return build(lines, readWords());
    }

    private Samples build(long[] lines, List<String> words) throws IOException {
        Samples.Builder builder = Samples.builder(channels);
        for (int row = 0; row < lines.length; row++) {
            builder.row(lines[row], word(words, in.readInt()), word(words, in.readInt()));
            for (int index = 0; index < channels.size(); index++) {
                if (present.get(index)[row]) {
                    builder.set(index, values.get(index)[row]);
                }
            }
        }
        return builder.build();
    }

    private List<String> readWords() throws IOException {
        List<String> words = new ArrayList<>();
        int count = in.readInt();
        for (int index = 0; index < count; index++) {
            words.add(readText());
        }
        return words;
    }

    private static Optional<String> word(List<String> words, int number) throws IOException {
        if (number < 0 || number > words.size()) {
            throw new IOException("samples with a word that is not there");
        }
        return number == 0 ? Optional.empty() : Optional.of(words.get(number - 1));
    }

    private boolean[] readPresent(int rows) throws IOException {
        boolean[] there = new boolean[rows];
        for (int row = 0; row < rows; row++) {
            there[row] = in.readByte() == 1;
        }
        return there;
    }

    /** By row; where there is no value, zero. */
    private double[] readValues(boolean[] there) throws IOException {
        long[] bits = new long[there.length];
        for (int plane = 0; plane < SampleBlob.PLANES; plane++) {
            for (int row = 0; row < there.length; row++) {
                if (there[row]) {
                    bits[row] = (bits[row] << Byte.SIZE) | in.readUnsignedByte();
                }
            }
        }
        double[] numbers = new double[bits.length];
        for (int row = 0; row < bits.length; row++) {
            numbers[row] = Double.longBitsToDouble(bits[row]);
        }
        return numbers;
    }

    private String readText() throws IOException {
        int length = in.readInt();
        if (length < 0 || length > MOST_TEXT_BYTES) {
            throw new IOException("a text of an impossible length");
        }
        return new String(in.readNBytes(length), StandardCharsets.UTF_8);
    }
}
