package org.nextpull.window.start;

import java.awt.Component;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;
import org.nextpull.intake.serial.PortInfo;

/** A port in a list: its name and what is plugged in there. */
final class PortCell extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1;

    @Override
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean selected, boolean focus) {
        PortInfo port = (PortInfo) value;
        String description = port.description().equals(port.name()) ? "" : "   " + port.description();
        return super.getListCellRendererComponent(list, port.name() + description, index, selected, focus);
    }
}
