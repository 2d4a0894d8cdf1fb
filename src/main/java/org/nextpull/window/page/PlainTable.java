package org.nextpull.window.page;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.List;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.TypeScale;

/**
 * A table that is only read, in the colours of the window. Tab leaves it, since no cell is edited, and only rows that changed are drawn anew.
 *
 * @param <R> what a row shows
 */
public abstract class PlainTable<R> extends JTable implements Styled {
    private static final long serialVersionUID = 1;
    /** Height of a row over that of its type. */
    private static final double ROW = 1.72;

    private final Rows rows = new Rows();
    private final double type;
    private transient List<R> shown = List.of();
    private List<String> heads;
    private transient Skin skin = Skin.of(Look.plain());

    /**
     * An empty table.
     *
     * @param name what it shows
     * @param type size of its type, in units of a window of 1280 by 720
     */
    protected PlainTable(String name, double type, List<String> heads) {
        this.type = type;
        this.heads = List.copyOf(heads);
        setModel(rows);
        setFillsViewportHeight(true);
        setShowGrid(false);
        getTableHeader().setReorderingAllowed(false);
        getAccessibleContext().setAccessibleName(name);
        setDefaultRenderer(Object.class, new Cells());
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    }

    /** The text of a cell. */
    protected abstract String text(R row, int column);

    /** Whether a column is set to the right. */
    protected boolean isRight(int column) {
        return false;
    }

    /** Whether a row matters less than others. */
    protected boolean isQuiet(R row) {
        return false;
    }

    /** The rows that are shown. */
    public final List<R> shown() {
        return shown;
    }

    /** Shows these rows, and takes back what was selected. */
    protected final void showAnew(List<R> newRows) {
        shown = List.copyOf(newRows);
        rows.fireTableDataChanged();
    }

    /** Shows these rows; with as many as before what is selected stays so. */
    public void show(List<R> newRows) {
        List<R> before = shown;
        if (before.size() != newRows.size()) {
            showAnew(newRows);
            return;
        }
        shown = List.copyOf(newRows);
        for (int row = 0; row < shown.size(); row++) {
            if (!before.get(row).equals(shown.get(row))) {
                changed(row);
            }
        }
    }

    /** Shows these rows under other heads. */
    public final void show(List<String> newHeads, List<R> newRows) {
        heads = List.copyOf(newHeads);
        shown = List.copyOf(newRows);
        rows.fireTableStructureChanged();
    }

    /** Draws a row anew. */
    protected final void changed(int row) {
        rows.fireTableRowsUpdated(row, row);
    }

    @Override
    public void style(Skin newSkin, TypeScale scale) {
        skin = newSkin;
        setFont(scale.plain(type));
        setRowHeight(scale.type(ROW * type));
        setBackground(skin.ground());
        setForeground(skin.ink());
        getTableHeader().setFont(scale.bold(13));
        getTableHeader().setBackground(skin.raised());
        getTableHeader().setForeground(skin.ink());
    }

    private final class Cells extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, false, row, column);
            setHorizontalAlignment(isRight(column) ? SwingConstants.RIGHT : SwingConstants.LEFT);
            if (!selected) {
                setForeground(isQuiet(shown.get(row)) ? skin.quiet() : skin.ink());
            }
            setToolTipText(String.valueOf(value));
            return this;
        }
    }

    private final class Rows extends AbstractTableModel {
        private static final long serialVersionUID = 1;

        @Override
        public int getRowCount() {
            return shown.size();
        }

        @Override
        public int getColumnCount() {
            return heads.size();
        }

        @Override
        public String getColumnName(int column) {
            return heads.get(column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            return text(shown.get(row), column);
        }
    }
}
