package org.nextpull.window.past;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Tone;
import org.nextpull.window.look.TypeScale;
import org.nextpull.window.page.PlainTable;

/** The sessions, newest first, with a mark at those that are to be compared. */
final class PastTable extends PlainTable<PastPresenter.Row> {
    private static final long serialVersionUID = 1;
    private static final List<String> HEADS = List.of("", "No.", "Begun", "Engine", "Fuel, labels", "Pulls", "State");
    private static final List<Integer> WIDTHS = List.of(24, 34, 150, 172, 116, 52, 82);

    private final transient Set<Long> marked = new LinkedHashSet<>();

    PastTable() {
        super("Sessions", 14, HEADS);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "none");
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("SPACE"), "none");
        getSelectionModel().addListSelectionListener(event -> spoken());
    }

    @Override
    protected String text(PastPresenter.Row row, int column) {
        return switch (column) {
            case 0 -> marked.contains(row.id()) ? Tone.GOOD.sign() : "";
            case 1 -> String.valueOf(row.id());
            case 2 -> row.started();
            case 3 -> row.engine();
            case 4 -> row.what();
            case 5 -> row.pulls();
            default -> row.state();
        };
    }

    /** Shows these sessions; the one that was selected stays so. */
    @Override
    public void show(List<PastPresenter.Row> newRows) {
        Optional<Long> before = selected().map(PastPresenter.Row::id);
        showAnew(newRows);
        for (int index = 0; index < newRows.size(); index++) {
            if (before.isEmpty() ? index == 0 : newRows.get(index).id() == before.get()) {
                setRowSelectionInterval(index, index);
            }
        }
        if (getSelectedRow() < 0 && !newRows.isEmpty()) {
            setRowSelectionInterval(0, 0);
        }
    }

    Optional<PastPresenter.Row> selected() {
        int row = getSelectedRow();
        return row < 0 || row >= shown().size() ? Optional.empty() : Optional.of(shown().get(row));
    }

    /** Marks the selected session, or takes the mark away. */
    void mark() {
        selected().ifPresent(row -> {
            if (!marked.remove(row.id())) {
                marked.add(row.id());
            }
            changed(getSelectedRow());
            spoken();
        });
    }

    /** The marked sessions, in the order of marking. */
    List<Long> marked() {
        return List.copyOf(marked);
    }

    private void spoken() {
        getAccessibleContext()
                .setAccessibleDescription(selected()
                        .map(row -> (marked.contains(row.id()) ? "Marked. " : "") + row.spoken())
                        .orElse("No session"));
    }

    @Override
    public void style(Skin skin, TypeScale scale) {
        super.style(skin, scale);
        for (int column = 0; column < WIDTHS.size(); column++) {
            getColumnModel().getColumn(column).setPreferredWidth(scale.type(WIDTHS.get(column)));
        }
    }
}
