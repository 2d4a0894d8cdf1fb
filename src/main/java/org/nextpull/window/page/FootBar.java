package org.nextpull.window.page;

import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.Tone;
import org.nextpull.window.look.TypeScale;

/** The foot of the window: the most used keys, what an action led to, and questions, which take its place until they are answered. */
public final class FootBar extends JPanel implements Styled {
    private static final long serialVersionUID = 1;
    private static final String HINTS = "hints";
    private static final String QUESTION = "question";

    private final CardLayout cards = new CardLayout();
    private final JLabel hints = new JLabel(" ");
    private final JLabel message = new JLabel(" ");
    private final JPanel still = new JPanel();
    private final JPanel asking = new JPanel();
    private final JLabel title = new JLabel();
    private final JLabel wrong = new JLabel();
    private final transient List<Input> inputs = new ArrayList<>();
    private transient @Nullable Component before;
    private transient @Nullable Skin skin;
    private transient @Nullable TypeScale scale;

    public FootBar() {
        setLayout(cards);
        still.setLayout(new BoxLayout(still, BoxLayout.X_AXIS));
        still.add(hints);
        still.add(Box.createHorizontalGlue());
        still.add(message);
        asking.setLayout(new BoxLayout(asking, BoxLayout.X_AXIS));
        add(still, HINTS);
        add(asking, QUESTION);
        hints.getAccessibleContext().setAccessibleName("Keys");
        message.getAccessibleContext().setAccessibleName("Message");
        asking.getAccessibleContext().setAccessibleName("Answer");
        wrong.getAccessibleContext().setAccessibleName("What is wrong");
    }

    /** Shows the most used keys. */
    public void hint(String keys) {
        hints.setText(keys);
    }

    /** Says what an action led to, until the next one. */
    public void say(String sentence) {
        message.setText(sentence);
        message.getAccessibleContext().setAccessibleDescription(sentence);
    }

    /** Whether a question waits for its answer. */
    public boolean isAsking() {
        return asking.isVisible();
    }

    /** Gives the focus back to a question that waits, after something else had it. */
    public void focus() {
        Component first = inputs.isEmpty() ? asking : inputs.get(0).part();
        first.requestFocusInWindow();
    }

    /** Takes back a question that waits, if there is one. */
    public void putAway() {
        if (isAsking()) {
            cards.show(this, HINTS);
        }
    }

    /** Asks. Enter answers, Escape takes the question back; the focus then goes where it was. */
    public void ask(Question question) {
        before = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        inputs.clear();
        asking.removeAll();
        title.setText(question.title() + "  ");
        wrong.setText("");
        asking.add(title);
        for (Question.Field field : question.fields()) {
            Input input = field.options().isEmpty() ? typed(field, question) : chosen(field, question);
            input.part().getAccessibleContext().setAccessibleName(field.name());
            JLabel name = new JLabel(field.name() + " ");
            name.setLabelFor(input.part());
            asking.add(name);
            asking.add(input.part());
            if (input.part() instanceof JTextField text && field.isPath()) {
                asking.add(chooser(field, text));
            }
            asking.add(Box.createHorizontalStrut(10));
            inputs.add(input);
        }
        asking.add(wrong);
        asking.add(Box.createHorizontalGlue());
        asking.add(new JLabel("Enter: OK   Esc: cancel"));
        KeyCommand.of("ESCAPE", "Esc", "take the question back", this::back).bind(asking);
        if (inputs.isEmpty()) {
            KeyCommand.of("ENTER", "Enter", "answer the question", () -> answer(question))
                    .bind(asking);
            asking.setFocusable(true);
        }
        restyle();
        cards.show(this, QUESTION);
        revalidate();
        focus();
        if (!inputs.isEmpty() && inputs.get(0).part() instanceof JTextField text) {
            text.selectAll();
        }
    }

    /** A part that is filled in, and what it then holds. */
    private record Input(JComponent part, Supplier<String> text) {}

    private Input typed(Question.Field field, Question question) {
        JTextField text = new JTextField(field.text(), field.kind() == Question.Field.Kind.NARROW ? 6 : 30);
        text.addActionListener(event -> answer(question));
        text.addKeyListener(new OpeningKey());
        return new Input(text, text::getText);
    }

    private Input chosen(Question.Field field, Question question) {
        JComboBox<String> box = new JComboBox<>(field.options().toArray(new String[0]));
        box.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "answer");
        box.getActionMap().put("answer", new AbstractAction() {
            private static final long serialVersionUID = 1;

            @Override
            public void actionPerformed(ActionEvent event) {
                box.setPopupVisible(false);
                answer(question);
            }
        });
        return new Input(box, () -> String.valueOf(box.getSelectedItem()));
    }

    private static JButton chooser(Question.Field field, JTextField text) {
        JButton button = new JButton("Choose (F2)");
        Runnable choose = () -> PathChooser.from(text.getText(), field.kind() == Question.Field.Kind.FOLDER)
                .choose(text)
                .ifPresent(path -> {
                    text.setText(path);
                    text.requestFocusInWindow();
                });
        button.getAccessibleContext().setAccessibleName("Choose " + field.name());
        button.addActionListener(event -> choose.run());
        KeyCommand.of("F2", "F2", "choose a file or folder", choose).bind(text);
        return button;
    }

    /** The key that opened a question is pressed before the field is there and typed after: its sign is no part of the answer. */
    private static final class OpeningKey extends KeyAdapter {
        private static final long SAME_STROKE_MS = 30;
        private final long openedAt = EventQueue.getMostRecentEventTime();

        @Override
        public void keyTyped(KeyEvent event) {
            if (event.getWhen() - openedAt <= SAME_STROKE_MS) {
                event.consume();
            }
        }
    }

    private void answer(Question question) {
        Optional<String> fault = question.take()
                .apply(inputs.stream().map(input -> input.text().get()).toList());
        if (fault.isPresent()) {
            wrong.setText(fault.get());
            wrong.getAccessibleContext().setAccessibleDescription(fault.get());
            revalidate();
        } else {
            back();
        }
    }

    private void back() {
        cards.show(this, HINTS);
        if (before != null) {
            before.requestFocusInWindow();
        }
    }

    @Override
    public void style(Skin newSkin, TypeScale newScale) {
        skin = newSkin;
        scale = newScale;
        restyle();
    }

    private void restyle() {
        if (skin == null || scale == null) {
            return;
        }
        setBackground(skin.ground());
        for (JPanel panel : List.of(still, asking)) {
            panel.setBackground(skin.ground());
            panel.setBorder(BorderFactory.createCompoundBorder(
                    BorderFactory.createMatteBorder(Math.max(1, scale.space(1)), 0, 0, 0, skin.line()),
                    scale.margin(3, 14, 3, 14)));
            for (Component part : panel.getComponents()) {
                part.setFont(scale.plain(13));
                part.setForeground(part == hints ? skin.quiet() : skin.ink());
                if (part instanceof JTextField || part instanceof JComboBox) {
                    Dimension size = part.getPreferredSize();
                    part.setMaximumSize(size);
                    part.setMinimumSize(size);
                }
            }
        }
        title.setFont(scale.bold(14));
        message.setFont(scale.bold(13));
        wrong.setForeground(skin.tone(Tone.BAD));
        wrong.setFont(scale.bold(13));
    }
}
