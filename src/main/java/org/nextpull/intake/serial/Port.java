package org.nextpull.intake.serial;

import java.io.IOException;
import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.PortFacts;

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

    /**
     * A serial port and how it is set.
     *
     * @param device name of the port: {@code COM3}, {@code /dev/ttyUSB0}, or a link to one
     * @param port how it is set
     */
    public record Settings(String device, PortFacts port) {
        /** Set as nearly all loggers are. */
        public static Settings usual(String device, int baud) {
            return new Settings(device, PortFacts.usual(baud));
        }
    }

    /** Opens ports. The seam at which tests put a port of their own. */
    @FunctionalInterface
    public interface Opener {
        /** Opens a port as it is to be set; a failed outcome says why not. May take long on some devices. */
        Outcome<Port> open(Port.Settings settings);

        /** What is to be said of a port that is not there, without opening it; empty while it is, and where that cannot be told. */
        default Optional<Finding> missing(Port.Settings settings) {
            return Optional.empty();
        }
    }
}
