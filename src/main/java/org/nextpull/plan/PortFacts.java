package org.nextpull.plan;

/**
 * How a serial port is set.
 *
 * @param baud symbols a second
 * @param bits data bits, 5 to 8
 * @param parity the parity bit
 * @param stop stop bits
 * @param flow who holds the line
 */
public record PortFacts(int baud, int bits, Parity parity, Stop stop, Flow flow) {

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
        return new PortFacts(115_200, 8, Parity.NONE, Stop.ONE, Flow.NONE);
    }
}
