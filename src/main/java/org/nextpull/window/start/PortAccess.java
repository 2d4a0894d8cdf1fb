package org.nextpull.window.start;

import java.util.List;
import java.util.function.Supplier;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.serial.SerialPorts;

/**
 * The serial ports, as far as this page needs them.
 *
 * @param list finds them; may take long
 * @param opener opens them
 */
public record PortAccess(Supplier<Outcome<List<SerialPorts.PortInfo>>> list, Port.Opener opener) {

    /** Those of this computer. */
    public static PortAccess ofComputer() {
        SerialPorts ports = new SerialPorts();
        return new PortAccess(ports::list, ports);
    }
}
