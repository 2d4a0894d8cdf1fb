package org.nextpull.intake.serial;

import com.fazecast.jSerialComm.SerialPort;
import java.io.IOException;
import java.util.Arrays;

/** An open port of the library, used without its listeners: they would call without end once a device went away. */
final class SerialCommPort implements Port {
    private static final int MOST_WAITS = 3;
    private static final String WENT_AWAY = "the port went away";

    private final SerialPort port;

    SerialCommPort(SerialPort port) {
        this.port = port;
    }

    @Override
    public int read(byte[] buffer) throws IOException {
        int count = port.readBytes(buffer, buffer.length);
        if (count < 0) {
            throw new IOException(WENT_AWAY);
        }
        return count;
    }

    @Override
    public void write(byte[] bytes) throws IOException {
        byte[] left = bytes;
        int waits = 0;
        while (left.length > 0) {
            int count = port.writeBytes(left, left.length);
            waits = count == 0 ? waits + 1 : 0;
            if (count < 0) {
                throw new IOException(WENT_AWAY);
            }
            if (waits == MOST_WAITS) {
                throw new NotTakenException();
            }
            left = Arrays.copyOfRange(left, count, left.length);
        }
    }

    @Override
    public void close() {
        port.closePort();
    }
}
