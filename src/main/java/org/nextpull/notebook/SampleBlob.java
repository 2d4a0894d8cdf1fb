package org.nextpull.notebook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;
import org.nextpull.finding.WrittenId;

/**
 * Samples as bytes, every bit of every number kept. Coding 1, big-endian:
 *
 * <pre>
 * byte 1, int CRC-32 (ISO 3309) of what follows, then a zlib stream (RFC 1950) of
 *   int rows, int channels, for each channel: name, int sensor
 *   for each row: long line
 *   for each channel: a byte a row, 1 where it has a value; then the values (IEEE 754 binary64) in eight planes, most significant bytes first
 *   int words, for each: text; for each row: int label, int fuel (number of the word from 1, 0 for none)
 * </pre>
 *
 * A text is an int count of bytes and UTF-8. Planes of like bytes compress to about half of what rows of numbers do.
 */
final class SampleBlob {
    private static final int CODING = 1;
    private static final int HEAD_BYTES = 5;
    static final int PLANES = 8;

    private SampleBlob() {}

    static byte[] write(Samples samples) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(new DeflaterOutputStream(packed))) {
            out.writeInt(samples.rows());
            out.writeInt(samples.channels().size());
            for (Channel channel : samples.channels()) {
                writeText(out, WrittenId.of(channel.role().name()));
                out.writeInt(channel.sensor());
            }
            for (int row = 0; row < samples.rows(); row++) {
                out.writeLong(samples.line(row));
            }
            for (Channel channel : samples.channels()) {
                writeValues(out, samples, channel);
            }
            writeWords(out, samples);
        } catch (IOException impossible) {
            throw new UncheckedIOException("memory takes every byte", impossible);
        }
        return withHead(packed.toByteArray());
    }

    private static byte[] withHead(byte[] packed) {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(whole)) {
            out.writeByte(CODING);
            out.writeInt(crc(packed, 0));
            out.write(packed);
        } catch (IOException impossible) {
            throw new UncheckedIOException("memory takes every byte", impossible);
        }
        return whole.toByteArray();
    }

    private static void writeValues(DataOutputStream out, Samples samples, Channel channel) throws IOException {
        for (int row = 0; row < samples.rows(); row++) {
            out.writeByte(samples.isPresent(channel, row) ? 1 : 0);
        }
        double[] values = samples.presentValues(channel);
        for (int plane = PLANES - 1; plane >= 0; plane--) {
            for (double value : values) {
                out.writeByte((int) (Double.doubleToRawLongBits(value) >>> (plane * Byte.SIZE)));
            }
        }
    }

    private static void writeWords(DataOutputStream out, Samples samples) throws IOException {
        List<String> words = new ArrayList<>();
        for (int row = 0; row < samples.rows(); row++) {
            samples.label(row).filter(word -> !words.contains(word)).ifPresent(words::add);
            samples.fuel(row).filter(word -> !words.contains(word)).ifPresent(words::add);
        }
        out.writeInt(words.size());
        for (String word : words) {
            writeText(out, word);
        }
        for (int row = 0; row < samples.rows(); row++) {
            out.writeInt(samples.label(row).map(words::indexOf).orElse(-1) + 1);
            out.writeInt(samples.fuel(row).map(words::indexOf).orElse(-1) + 1);
        }
    }

    /**
     * The samples that were written.
     *
     * @throws IOException when the bytes are not what was written
     */
    static Samples read(byte[] bytes) throws IOException {
        if (bytes.length < HEAD_BYTES || bytes[0] != CODING) {
            throw new IOException("samples in a coding that is not known");
        }
        DataInputStream head = new DataInputStream(new ByteArrayInputStream(bytes, 1, HEAD_BYTES - 1));
        if (head.readInt() != crc(bytes, HEAD_BYTES)) {
            throw new IOException("samples that differ from their check sum");
        }
        ByteArrayInputStream packed = new ByteArrayInputStream(bytes, HEAD_BYTES, bytes.length - HEAD_BYTES);
        try (DataInputStream in = new DataInputStream(new InflaterInputStream(packed))) {
            return new SampleBlobReader(in).read();
        } catch (IllegalArgumentException strange) {
            throw new IOException("samples that no version writes: " + strange.getMessage(), strange);
        }
    }

    private static void writeText(DataOutputStream out, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static int crc(byte[] bytes, int from) {
        CRC32 crc = new CRC32();
        crc.update(bytes, from, bytes.length - from);
        return (int) crc.getValue();
    }

    /** Reads the unpacked part of a {@link SampleBlob}, and believes no size in it before it was looked at. */
    private static final class SampleBlobReader {
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
                channels.add(new Channel(QueryRow.named(Role.class, readText()), in.readInt()));
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
            SamplesBuilder builder = Samples.builder(channels);
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
}
