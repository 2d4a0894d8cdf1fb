package org.nextpull.window.start;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.TypeScale;

/** The columns that arrive: as sent, what they are taken for, and the value of this moment. Only cells that changed are drawn anew. */
final class ArrivalsTable extends JTable implements Styled {
    private static final long serialVersionUID = 1;
    private static final List<String> HEADS = List.of("Sent as", "Taken for", "Now");

    private final Rows rows = new Rows();
    private transient Skin skin = Skin.of(Look.plain());

    ArrivalsTable() {
        setModel(rows);
        setFillsViewportHeight(true);
        setShowGrid(false);
        getTableHeader().setReorderingAllowed(false);
        getAccessibleContext().setAccessibleName("Columns that arrive");
        setDefaultRenderer(Object.class, new Cells());
        // Tab leaves the table: cells are not edited
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    }

    void show(List<ArrivalsPage.Column> columns) {
        rows.show(columns);
    }

    @Override
    public void style(Skin newSkin, TypeScale scale) {
        skin = newSkin;
        setFont(scale.plain(14));
        setRowHeight(scale.type(24));
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
            setHorizontalAlignment(column == 2 ? RIGHT : LEFT);
            if (!selected) {
                setForeground(rows.isUnderstood(row) ? skin.ink() : skin.quiet());
            }
            setToolTipText(String.valueOf(value));
            return this;
        }
    }

    private static final class Rows extends AbstractTableModel {
        private static final long serialVersionUID = 1;
        private transient List<ArrivalsPage.Column> shown = new ArrayList<>();

        void show(List<ArrivalsPage.Column> columns) {
            List<ArrivalsPage.Column> before = shown;
            shown = columns;
            if (before.size() != columns.size()) {
                fireTableDataChanged();
                return;
            }
            for (int row = 0; row < columns.size(); row++) {
                if (!before.get(row).equals(columns.get(row))) {
                    fireTableRowsUpdated(row, row);
                }
            }
        }

        boolean isUnderstood(int row) {
            return shown.get(row).isUnderstood();
        }

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
            ArrivalsPage.Column one = shown.get(row);
            return switch (column) {
                case 0 -> one.header();
                case 1 -> one.isUnderstood() ? one.meaning() : "not used";
                default -> one.value();
            };
        }
    }
}
