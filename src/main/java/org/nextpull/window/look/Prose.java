package org.nextpull.window.look;

import java.awt.Color;
import java.awt.Font;
import java.awt.Insets;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;

/** Sentences that wrap: read by people and, by their name, by whoever does not see the page. */
public final class Prose extends JTextArea implements StackLayout.Wide {
    private static final long serialVersionUID = 1;

    public Prose(String name) {
        setEditable(false);
        setFocusable(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setOpaque(false);
        setBorder(null);
        setHighlighter(null);
        DefaultCaret still = new DefaultCaret();
        still.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        setCaret(still);
        getAccessibleContext().setAccessibleName(name);
    }

    /** Shows a text; the same text again costs nothing. */
    public void say(String text) {
        if (!text.equals(getText())) {
            setText(text);
        }
    }

    /** Sets colour and type, which must outlive a change of the look and feel. */
    public void dress(Color ink, Font font) {
        setOpaque(false);
        setBorder(null);
        setMargin(new Insets(0, 0, 0, 0));
        setForeground(ink);
        setDisabledTextColor(ink);
        setFont(font);
    }

    @Override
    public int heightAt(int width) {
        setSize(Math.max(1, width), Short.MAX_VALUE);
        return getText().isEmpty() ? 0 : getPreferredSize().height;
    }
}
