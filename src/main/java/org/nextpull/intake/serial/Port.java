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
     * @throws NotTakenException when the device did not take them for some seconds: nobody reads them at its other end
     * @throws IOException when the device went away
     */
    void write(byte[] bytes) throws IOException;

    @Override
    void close();

    /** The device is there but takes no bytes. */
    final class NotTakenException extends IOException {
        private static final long serialVersionUID = 1;

        public NotTakenException() {
            super("the port does not take bytes");
        }
    }
}
