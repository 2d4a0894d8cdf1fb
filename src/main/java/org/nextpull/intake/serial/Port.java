package org.nextpull.intake.serial;

import java.io.IOException;

/** An open serial port, for one thread. */
public interface Port extends AutoCloseable {
    /**
     * Reads what is there, waiting at most a fifth of a second for something.
     *
     * @return how many bytes were put into the buffer; 0 when nothing came
     * @throws IOException when the device went away
     */
    int read(byte[] buffer) throws IOException;

    /**
     * Writes all of the bytes.
     *
     * @throws IOException when the device went away, or did not take them for a second
     */
    void write(byte[] bytes) throws IOException;

    @Override
    void close();
}
