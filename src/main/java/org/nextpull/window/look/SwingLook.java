package org.nextpull.window.look;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.util.List;
import javax.swing.UIManager;
import javax.swing.plaf.ColorUIResource;

/** Gives the toolkit's own parts the colours of the window: what is selected is read, and what has the focus is seen. */
public final class SwingLook {
    private static final int FOCUS_PIXELS = 2;

    private SwingLook() {}

    /** Dresses everything that is shown, and what will be. On the event thread. */
    public static void dress(Look look) {
        Skin skin = Skin.of(look);
        ColorUIResource ground = new ColorUIResource(skin.selection());
        ColorUIResource ink = new ColorUIResource(skin.ink());
        for (String part : List.of("List", "Table", "MenuItem", "Menu", "ComboBox")) {
            for (String state : List.of("selection", "selectionInactive")) {
                UIManager.put(part + "." + state + "Background", ground);
                UIManager.put(part + "." + state + "Foreground", ink);
            }
        }
        ColorUIResource chosen = new ColorUIResource(skin.chosen());
        UIManager.put("Component.focusColor", chosen);
        UIManager.put("Component.focusedBorderColor", chosen);
        UIManager.put("Component.focusWidth", FOCUS_PIXELS);
        if (look.dark()) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        FlatLaf.updateUI();
    }
}
