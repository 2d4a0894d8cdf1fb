package org.nextpull.window.page;

import java.awt.BorderLayout;
import java.awt.GridLayout;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.window.look.StyledPanel;

/** The list of keys, over the whole window until a key is pressed. */
public final class KeyList extends StyledPanel {
    private static final long serialVersionUID = 1;

    private final JLabel title = new JLabel("Keys");
    private final JPanel rows = new JPanel();
    private final transient List<JLabel> keys = new ArrayList<>();
    private final transient List<JLabel> words = new ArrayList<>();

    /**
     * The list.
     *
     * @param close called when it is to be hidden
     */
    public KeyList(Runnable close) {
        super(new BorderLayout());
        add(title, BorderLayout.NORTH);
        add(rows, BorderLayout.CENTER);
        getAccessibleContext().setAccessibleName("Keys shown");
        setFocusable(true);
        new KeyCommand(
                        List.of("ESCAPE", "F1", "ENTER", "SPACE", "shift SLASH", "typed ?"),
                        "Esc",
                        "close the list",
                        close)
                .bind(this);
    }

    /** Lists these keys. */
    public void list(List<KeyCommand> commands) {
        rows.removeAll();
        keys.clear();
        words.clear();
        int half = (commands.size() + 1) / 2;
        rows.setLayout(new GridLayout(half, 2));
        for (int row = 0; row < half; row++) {
            cell(commands.get(row));
            if (row + half < commands.size()) {
                cell(commands.get(row + half));
            } else {
                rows.add(new JLabel());
            }
        }
    }

    private void cell(KeyCommand command) {
        JPanel cell = new JPanel(new BorderLayout());
        cell.setOpaque(false);
        JLabel key = new JLabel(command.shown());
        JLabel what = new JLabel(command.what());
        what.getAccessibleContext().setAccessibleName(command.shown() + ": " + command.what());
        cell.add(key, BorderLayout.WEST);
        cell.add(what, BorderLayout.CENTER);
        keys.add(key);
        words.add(what);
        rows.add(cell);
    }

    @Override
    protected void dress() {
        ground(rows);
        setBorder(scale.margin(40, 60, 40, 60));
        type(title, scale.bold(40), skin.ink());
        for (JLabel key : keys) {
            type(key, scale.bold(18), skin.chosen());
            key.setPreferredSize(new java.awt.Dimension(scale.type(130), scale.type(26)));
        }
        words.forEach(word -> {
            type(word, scale.plain(18), skin.ink());
        });
    }
}
