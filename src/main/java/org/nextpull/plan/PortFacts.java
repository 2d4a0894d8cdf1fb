package org.nextpull.plan;

import java.util.Locale;

/**
 * How a serial port is set.
 *
 * @param baud symbols a second
 * @param bits data bits, 5 to 8
 * @param parity the parity bit
 * @param stop stop bits
 * @param flow who holds the line when the receiver is full
 */
public record PortFacts(int baud, int bits, Parity parity, Stop stop, Flow flow) {
    public static final int USUAL_BAUD = 115_200;

    private static final double NS_A_SECOND = 1e9;

    public PortFacts {
        if (baud < 1) {
            throw new IllegalArgumentException("a port has at least 1 baud: " + baud);
        }
        if (bits < 5 || bits > 8) {
            throw new IllegalArgumentException("a port has 5 to 8 data bits: " + bits);
        }
    }

    /** The parity bit. */
    public enum Parity {
        NONE,
        EVEN,
        ODD,
        MARK,
        SPACE
    }

    /** Stop bits. */
    public enum Stop {
        ONE(1),
        ONE_AND_A_HALF(1.5),
        TWO(2);

        private final double bits;

        Stop(double bits) {
            this.bits = bits;
        }

        public double bits() {
            return bits;
        }
    }

    /** Who holds the line when the receiver is full. */
    public enum Flow {
        NONE,
        RTS_CTS,
        XON_XOFF
    }

    public static PortFacts defaults() {
        return usual(USUAL_BAUD);
    }

    /** Eight bits, no parity, one stop bit and no flow control, as nearly all loggers are set. */
    public static PortFacts usual(int baud) {
        return new PortFacts(baud, 8, Parity.NONE, Stop.ONE, Flow.NONE);
    }

    /** Nanoseconds that one byte takes on the line: start bit, data bits, parity bit and stop bits. */
    public long byteNs() {
        double symbols = 1 + bits + (parity == Parity.NONE ? 0 : 1) + stop.bits();
        return Math.round(symbols / baud * NS_A_SECOND);
    }

    /** The settings as people write them: {@code 115200 8N1}. */
    public String text() {
        String stops = stop.bits() == Math.rint(stop.bits())
                ? Integer.toString((int) stop.bits())
                : String.format(Locale.ROOT, "%.1f", stop.bits());
        return baud + " " + bits + parity.name().charAt(0) + stops;
    }
}
