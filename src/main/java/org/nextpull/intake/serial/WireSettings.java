package org.nextpull.intake.serial;

import org.nextpull.plan.PortFacts;

/**
 * A serial port and how it is set.
 *
 * @param device name of the port: {@code COM3}, {@code /dev/ttyUSB0}, or a link to one
 * @param port how it is set
 */
public record WireSettings(String device, PortFacts port) {
    /** Set as nearly all loggers are. */
    public static WireSettings usual(String device, int baud) {
        return new WireSettings(device, PortFacts.usual(baud));
    }
}
