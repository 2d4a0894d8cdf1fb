package org.nextpull.intake.serial;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.io.IOException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.PortFacts;

/** The serial library itself. Its class is first touched when a port is asked for. */
final class SerialCommLibrary implements SerialPorts.Library {
    /** Keeps the library's native files apart from those of other programs, which would delete them. */
    private static final String APPLICATION_KEY = "fazecast.jSerialComm.appid";

    private static final int READ_WAIT_MS = 200;
    private static final int WRITE_WAIT_MS = 1000;

    /** Error numbers of POSIX and Windows, as the library hands them on. */
    private static final int NO_SUCH_FILE = 2;

    private static final int WINDOWS_DENIED = 5;
    private static final int TRY_AGAIN = 11;
    private static final int DENIED = 13;
    private static final int BUSY = 16;

    @Override
    public List<SerialPorts.PortInfo> list() {
        nameOurselves();
        return Arrays.stream(SerialPort.getCommPorts())
                .map(port -> new SerialPorts.PortInfo(port.getSystemPortPath(), port.getPortDescription()))
                .sorted(Comparator.comparing(SerialPorts.PortInfo::name))
                .toList();
    }

    @Override
    public boolean isThere(String device) {
        nameOurselves();
        try {
            // the library makes an object for a device that is no listed port, such as a pseudo-terminal, only where
            // that exists
            return !SerialPort.getCommPort(device).getSystemPortPath().isBlank();
        } catch (SerialPortInvalidPortException e) {
            return false;
        }
    }

    @Override
    public Outcome<Port> open(Port.Settings settings) {
        nameOurselves();
        SerialPort port;
        try {
            port = SerialPort.getCommPort(settings.device());
        } catch (SerialPortInvalidPortException e) {
            return Outcome.failed(SerialPorts.notThere(settings, list()));
        }
        PortFacts wanted = settings.port();
        port.setComPortParameters(wanted.baud(), wanted.bits(), stop(wanted.stop()), parity(wanted.parity()));
        port.setFlowControl(flow(wanted.flow()));
        port.setComPortTimeouts(
                SerialPort.TIMEOUT_READ_SEMI_BLOCKING | SerialPort.TIMEOUT_WRITE_BLOCKING, READ_WAIT_MS, WRITE_WAIT_MS);
        // without this argument the library sleeps before it opens
        return port.openPort(0)
                ? Outcome.of(new SerialCommPort(port))
                : Outcome.failed(refused(settings, port.getLastErrorCode()));
    }

    private static void nameOurselves() {
        if (System.getProperty(APPLICATION_KEY) == null) {
            System.setProperty(APPLICATION_KEY, "nextpull");
        }
    }

    private Finding refused(Port.Settings settings, int error) {
        boolean windows = System.getProperty("os.name", "").startsWith("Windows");
        if (error == TRY_AGAIN || error == BUSY || (windows && error == WINDOWS_DENIED)) {
            return Finding.error(FindingCode.WIRE_IN_USE, place(settings));
        }
        if (error == DENIED) {
            return Finding.error(FindingCode.WIRE_NOT_ALLOWED, place(settings));
        }
        if (error == NO_SUCH_FILE) {
            // the library also says this for a port that this program has open already
            boolean there = java.nio.file.Files.exists(java.nio.file.Path.of(settings.device()));
            return there
                    ? Finding.error(FindingCode.WIRE_IN_USE, place(settings))
                    : SerialPorts.notThere(settings, list());
        }
        return Finding.error(
                FindingCode.WIRE_NOT_OPENED,
                place(settings),
                Detail.of("settings", settings.port().text()),
                Detail.of("error", error));
    }

    private static Place place(Port.Settings settings) {
        return Place.inFile(settings.device());
    }

    private static int parity(PortFacts.Parity parity) {
        return switch (parity) {
            case NONE -> SerialPort.NO_PARITY;
            case EVEN -> SerialPort.EVEN_PARITY;
            case ODD -> SerialPort.ODD_PARITY;
            case MARK -> SerialPort.MARK_PARITY;
            case SPACE -> SerialPort.SPACE_PARITY;
        };
    }

    private static int stop(PortFacts.Stop stop) {
        return switch (stop) {
            case ONE -> SerialPort.ONE_STOP_BIT;
            case ONE_AND_A_HALF -> SerialPort.ONE_POINT_FIVE_STOP_BITS;
            case TWO -> SerialPort.TWO_STOP_BITS;
        };
    }

    private static int flow(PortFacts.Flow flow) {
        return switch (flow) {
            case NONE -> SerialPort.FLOW_CONTROL_DISABLED;
            case RTS_CTS -> SerialPort.FLOW_CONTROL_RTS_ENABLED | SerialPort.FLOW_CONTROL_CTS_ENABLED;
            case XON_XOFF -> SerialPort.FLOW_CONTROL_XONXOFF_IN_ENABLED | SerialPort.FLOW_CONTROL_XONXOFF_OUT_ENABLED;
        };
    }

    /** An open port of the library, used without its listeners: they would call without end once a device went away. */
    private static final class SerialCommPort implements Port {
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
}
