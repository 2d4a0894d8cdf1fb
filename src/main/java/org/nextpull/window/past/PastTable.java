package org.nextpull.window.past;

import java.awt.Component;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.Tone;
import org.nextpull.window.look.TypeScale;

/** The sessions, newest first, with a mark at those that are to be compared. */
final class PastTable extends JTable implements Styled {
    private static final long serialVersionUID = 1;
    private static final List<String> HEADS = List.of("", "No.", "Begun", "Engine", "Fuel, labels", "Pulls", "State");
    private static final List<Integer> WIDTHS = List.of(24, 36, 150, 160, 130, 54, 80);

    private final Rows rows = new Rows();

    PastTable() {
        setModel(rows);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setFillsViewportHeight(true);
        setShowGrid(false);
        getTableHeader().setReorderingAllowed(false);
        getAccessibleContext().setAccessibleName("Sessions");
        setDefaultRenderer(Object.class, new Cells());
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(javax.swing.KeyStroke.getKeyStroke("ENTER"), "none");
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(javax.swing.KeyStroke.getKeyStroke("SPACE"), "none");
        getSelectionModel().addListSelectionListener(event -> spoken());
    }

    /** Shows these sessions; the one that was selected stays so. */
    void show(List<PastRow> shown) {
        Optional<Long> before = selected().map(PastRow::id);
        rows.shown = List.copyOf(shown);
        rows.fireTableDataChanged();
        for (int index = 0; index < shown.size(); index++) {
            if (before.isEmpty() ? index == 0 : shown.get(index).id() == before.get()) {
                setRowSelectionInterval(index, index);
            }
        }
        if (getSelectedRow() < 0 && !shown.isEmpty()) {
            setRowSelectionInterval(0, 0);
        }
    }

    List<PastRow> shown() {
        return rows.shown;
    }

    Optional<PastRow> selected() {
        int row = getSelectedRow();
        return row < 0 || row >= rows.shown.size() ? Optional.empty() : Optional.of(rows.shown.get(row));
    }

    /** Marks the selected session, or takes the mark away. */
    void mark() {
        selected().ifPresent(row -> {
            if (!rows.marked.remove(row.id())) {
                rows.marked.add(row.id());
            }
            rows.fireTableRowsUpdated(getSelectedRow(), getSelectedRow());
            spoken();
        });
    }

    /** The marked sessions, in the order of marking. */
    List<Long> marked() {
        return List.copyOf(rows.marked);
    }

    private void spoken() {
        getAccessibleContext()
                .setAccessibleDescription(selected()
                        .map(row -> (rows.marked.contains(row.id()) ? "Marked. " : "") + row.spoken())
                        .orElse("No session"));
    }

    @Override
    public void style(Skin skin, TypeScale scale) {
        setFont(scale.plain(14));
        setRowHeight(scale.type(26));
        setBackground(skin.ground());
        setForeground(skin.ink());
        getTableHeader().setFont(scale.bold(13));
        getTableHeader().setBackground(skin.raised());
        getTableHeader().setForeground(skin.ink());
        for (int column = 0; column < WIDTHS.size(); column++) {
            getColumnModel().getColumn(column).setPreferredWidth(scale.type(WIDTHS.get(column)));
        }
    }

    private static final class Cells extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, false, row, column);
            setToolTipText(String.valueOf(value));
            return this;
        }
    }

    private static final class Rows extends AbstractTableModel {
        private static final long serialVersionUID = 1;
        private transient List<PastRow> shown = List.of();
        private final transient Set<Long> marked = new LinkedHashSet<>();

        @Override
        public int getRowCount() {
            return shown.size();
        }

        @Override
        public int getColumnCount() {
            return HEADS.size();
        }

        @Override
        public String getColumnName(int column) {
            return HEADS.get(column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            PastRow one = shown.get(row);
            return switch (column) {
                case 0 -> marked.contains(one.id()) ? Tone.GOOD.sign() : "";
                case 1 -> String.valueOf(one.id());
                case 2 -> one.started();
                case 3 -> one.engine();
                case 4 -> one.what();
                case 5 -> one.pulls();
                default -> one.state();
            };
        }
    }
}
