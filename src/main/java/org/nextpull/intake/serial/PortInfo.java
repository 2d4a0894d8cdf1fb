package org.nextpull.intake.serial;

/**
 * A serial port of this computer.
 *
 * @param name the name to open it by: {@code COM3} or {@code /dev/ttyUSB0}
 * @param description what the system says that is plugged in there; may be the name again
 */
public record PortInfo(String name, String description) {}
