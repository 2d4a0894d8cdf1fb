package org.nextpull.intake;

import java.io.BufferedInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Opens files whatever they are packed in: gzip and zip are told by their first bytes, not by their names. */
final class Unpacking {
    private static final int BUFFER_BYTES = 1 << 16;

    /** What is read of each packed source, however small it is packed. */
    private static final long ALWAYS_READ_BYTES = 64L << 20;

    private Unpacking() {}

    /** The sources in a file: itself, or each file of a zip in natural order. A workbook, which is a zip too, stays one source. */
    static List<ByteSource> sources(Path path) throws IOException {
        FileKind kind = kind(path);
        if (kind != FileKind.ZIP && kind != FileKind.EMPTY_ZIP) {
            return List.of(new PlainFile(path));
        }
        try (ZipFile zip = open(path)) {
            if (zip.getEntry("[Content_Types].xml") != null || zip.getEntry("mimetype") != null) {
                return List.of(new PlainFile(path));
            }
            return zip.stream()
                    .filter(entry -> !entry.isDirectory())
                    .filter(entry -> isVisible(entry.getName()))
                    .sorted(Comparator.comparing(ZipEntry::getName, new NaturalOrder()))
                    .<ByteSource>map(entry -> new ZippedFile(path, entry.getName(), Math.max(0, entry.getSize())))
                    .toList();
        }
    }

    private static boolean isVisible(String entry) {
        String name = entry.substring(entry.lastIndexOf('/') + 1);
        return !name.startsWith(".") && !entry.startsWith("__MACOSX/");
    }

    private static FileKind kind(Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return FileKind.of(in.readNBytes(FileKind.ENOUGH_BYTES));
        }
    }

    private static ZipFile open(Path path) throws IOException {
        try {
            return new ZipFile(path.toFile(), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            throw new IOException("names of the zip cannot be read: " + path, e);
        }
    }

    /**
     * Bytes out of what is packed.
     *
     * @param packedBytes size of the packed source
     */
    private static InputStream unzipped(InputStream raw, long packedBytes) throws IOException {
        try {
            BufferedInputStream in = new BufferedInputStream(raw, BUFFER_BYTES);
            in.mark(FileKind.ENOUGH_BYTES);
            FileKind kind = FileKind.of(in.readNBytes(FileKind.ENOUGH_BYTES));
            in.reset();
            return kind == FileKind.GZIP ? bounded(new GZIPInputStream(in, BUFFER_BYTES), packedBytes) : in;
        } catch (IOException e) {
            raw.close();
            throw e;
        }
    }

    private static InputStream bounded(InputStream unpacked, long packedBytes) {
        return bounded(unpacked, packedBytes, ALWAYS_READ_BYTES);
    }

    /** The bytes of a stream, which breaks off behind what a log of that packed size can hold, but not before so many bytes. */
    static InputStream bounded(InputStream unpacked, long packedBytes, long leastBytes) {
        long most = most(packedBytes, leastBytes);
        return new FilterInputStream(unpacked) {
            private long count;

            @Override
            public int read() throws IOException {
                return counted(super.read(), 1);
            }

            @Override
            public int read(byte[] bytes, int offset, int length) throws IOException {
                int read = super.read(bytes, offset, length);
                return counted(read, read);
            }

            @Override
            public long skip(long bytes) throws IOException {
                long skipped = super.skip(bytes);
                count += skipped;
                return skipped;
            }

            private int counted(int answer, int more) throws IOException {
                count += Math.max(0, more);
                if (count > most) {
                    throw new ByteSource.OverpackedException();
                }
                return answer;
            }
        };
    }

    private static long most(long packedBytes, long leastBytes) {
        return Math.max(leastBytes, ByteSource.OverpackedException.MOST_TIMES * packedBytes);
    }

    private record PlainFile(Path path) implements ByteSource {
        @Override
        public String name() {
            return path.toString();
        }

        @Override
        public long size() {
            return path.toFile().length();
        }

        @Override
        public InputStream open() throws IOException {
            return unzipped(Files.newInputStream(path), size());
        }
    }

    private record ZippedFile(Path path, String entry, long size) implements ByteSource {
        @Override
        public String name() {
            return path + "/" + entry;
        }

        @Override
        public InputStream open() throws IOException {
            ZipFile zip = Unpacking.open(path);
            try {
                ZipEntry found = zip.getEntry(entry);
                if (found == null) {
                    throw new IOException("no longer in the zip: " + entry);
                }
                long packed = Math.max(0, found.getCompressedSize());
                if (found.getSize() > most(packed, ALWAYS_READ_BYTES)) {
                    throw new ByteSource.OverpackedException();
                }
                return closing(zip, unzipped(bounded(zip.getInputStream(found), packed), packed));
            } catch (IOException e) {
                zip.close();
                throw e;
            }
        }

        private static InputStream closing(ZipFile zip, InputStream in) {
            return new FilterInputStream(in) {
                @Override
                public void close() throws IOException {
                    super.close();
                    zip.close();
                }
            };
        }
    }
}
