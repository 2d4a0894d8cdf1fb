package org.nextpull.window.page;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Locale;
import javax.swing.AbstractAction;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;

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

    /** What it does, as a menu or a button says it. */
    public String title() {
        return what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1);
    }

    /** Makes the key work wherever the focus is inside a view; a sign that can be typed is left to whatever is being typed in. */
    public void bind(JComponent view) {
        for (String stroke : strokes) {
            KeyStroke key = KeyStroke.getKeyStroke(stroke);
            String name = "nextpull " + what + " " + stroke;
            view.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(key, name);
            view.getActionMap().put(name, new AbstractAction() {
                private static final long serialVersionUID = 1;

                @Override
                public void actionPerformed(ActionEvent event) {
                    if (!(isSign(key) && isTypedIn())) {
                        action.run();
                    }
                }
            });
        }
    }

    private static boolean isSign(KeyStroke key) {
        int held = InputEvent.CTRL_DOWN_MASK | InputEvent.ALT_DOWN_MASK | InputEvent.META_DOWN_MASK;
        boolean isFunction = key.getKeyCode() >= KeyEvent.VK_F1 && key.getKeyCode() <= KeyEvent.VK_F12;
        boolean isOther = key.getKeyCode() == KeyEvent.VK_ESCAPE;
        return (key.getModifiers() & held) == 0 && !isFunction && !isOther;
    }

    /** Whether the focus is where signs go into a text, or choose from a list that drops down. */
    private static boolean isTypedIn() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return (owner instanceof JTextComponent text && text.isEditable()) || owner instanceof JComboBox;
    }
}
