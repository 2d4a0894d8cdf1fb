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

    private Unpacking() {}

    /** The sources in a file: itself, or each file of a zip in natural order. A workbook, which is a zip too, stays one source. */
    static List<ByteSource> sources(Path path) throws IOException {
        if (magic(path) != Magic.ZIP) {
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

    private static Magic magic(Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return Magic.of(in.readNBytes(Magic.ENOUGH_BYTES));
        }
    }

    private static ZipFile open(Path path) throws IOException {
        try {
            return new ZipFile(path.toFile(), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            throw new IOException("names of the zip cannot be read: " + path, e);
        }
    }

    private static InputStream unzipped(InputStream raw) throws IOException {
        try {
            BufferedInputStream in = new BufferedInputStream(raw, BUFFER_BYTES);
            in.mark(Magic.ENOUGH_BYTES);
            Magic magic = Magic.of(in.readNBytes(Magic.ENOUGH_BYTES));
            in.reset();
            return magic == Magic.GZIP ? new GZIPInputStream(in, BUFFER_BYTES) : in;
        } catch (IOException e) {
            raw.close();
            throw e;
        }
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
            return unzipped(Files.newInputStream(path));
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
                return closing(zip, unzipped(zip.getInputStream(found)));
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
