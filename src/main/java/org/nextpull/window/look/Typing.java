package org.nextpull.window.look;

import java.util.function.Consumer;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Tells what a field holds, each time that somebody types in it. */
public final class Typing implements DocumentListener {
    private final JTextField field;
    private final Consumer<String> told;

    private Typing(JTextField field, Consumer<String> told) {
        this.field = field;
        this.told = told;
    }

    public static void in(JTextField field, Consumer<String> told) {
        field.getDocument().addDocumentListener(new Typing(field, told));
    }

    @Override
    public void insertUpdate(DocumentEvent event) {
        told.accept(field.getText());
    }

    @Override
    public void removeUpdate(DocumentEvent event) {
        told.accept(field.getText());
    }

    @Override
    public void changedUpdate(DocumentEvent event) {
        // only attributes
    }
}
