package org.nextpull.app;

import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

/** How much of many files was read. Files are read by several threads and looked at by another. */
public final class ReadingProgress {
    private final int files;
    private final long bytes;
    private final AtomicInteger filesDone = new AtomicInteger();
    private final AtomicLong bytesRead = new AtomicLong();
    private final AtomicLong bytesDone = new AtomicLong();

    ReadingProgress(int files, long bytes) {
        this.files = files;
        this.bytes = bytes;
    }

    /** All files. */
    public int files() {
        return files;
    }

    /** Files that were read to their end. */
    public int filesDone() {
        return filesDone.get();
    }

    /** Bytes read so far, unpacked. */
    public long bytesRead() {
        return bytesRead.get();
    }

    /** How much was read of what is known to be there, 0 to 1; empty where no size is known. */
    public OptionalDouble share() {
        return bytes == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.min(1, (double) bytesDone.get() / bytes));
    }

    /** Begins with a file of that size. */
    File file(long size) {
        return new File(size);
    }

    /** One file, read by one thread. Of a file that is read more than once, or is packed, no more counts as done than its size. */
    final class File {
        private final long size;
        private long read;

        private File(long size) {
            this.size = size;
        }

        void read(long count) {
            bytesRead.addAndGet(count);
            bytesDone.addAndGet(Math.min(count, Math.max(0, size - read)));
            read += count;
        }

        void ended() {
            bytesDone.addAndGet(Math.max(0, size - read));
            filesDone.incrementAndGet();
        }
    }
}
