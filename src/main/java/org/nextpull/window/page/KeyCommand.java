package org.nextpull.window.page;

import java.awt.event.ActionEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/**
 * A key and what it does; the list of keys and the handbook page are made from these.
 *
 * @param strokes as Swing writes key strokes, such as {@code SPACE} or {@code shift F1}
 * @param shown as people write it
 * @param what what it does, in a few words
 * @param action what it does
 */
public record KeyCommand(List<String> strokes, String shown, String what, Runnable action) {
    public KeyCommand {
        strokes = List.copyOf(strokes);
        for (String stroke : strokes) {
            if (KeyStroke.getKeyStroke(stroke) == null) {
                throw new IllegalArgumentException("no key stroke: " + stroke);
            }
        }
    }

    public static KeyCommand of(String stroke, String shown, String what, Runnable action) {
        return new KeyCommand(List.of(stroke), shown, what, action);
    }

    /** Makes the key work wherever the focus is inside a view. */
    public void bind(JComponent view) {
        for (String stroke : strokes) {
            view.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                    .put(KeyStroke.getKeyStroke(stroke), "nextpull " + what);
        }
        view.getActionMap().put("nextpull " + what, new AbstractAction() {
            private static final long serialVersionUID = 1;

            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }
}
