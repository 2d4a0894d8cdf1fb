package org.nextpull.window.page;

import java.util.List;
import javax.swing.JComponent;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.TypeScale;

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

    @Override
    default void style(Skin skin, TypeScale scale) {
        if (view() instanceof Styled styled) {
            styled.style(skin, scale);
        }
    }

    /** Takes the focus when it is shown. */
    void focus();
}
