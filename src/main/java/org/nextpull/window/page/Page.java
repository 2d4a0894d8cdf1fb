package org.nextpull.window.page;

import java.util.List;
import javax.swing.JComponent;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.look.Styled;

/** A page of the window. All methods are called on the event thread. */
public interface Page extends Styled {
    /** Its name beside the digit that shows it. */
    String title();

    /** What is shown. */
    JComponent view();

    /** Its own keys, in the order in which they are listed. */
    List<KeyCommand> keys();

    /** Its most used keys, for the foot. */
    default String hint() {
        return "F1 or ?: all keys";
    }

    /** Shows the units that people read from now on. */
    void units(UnitSystem units);

    /** Takes the focus when it is shown. */
    void focus();
}
