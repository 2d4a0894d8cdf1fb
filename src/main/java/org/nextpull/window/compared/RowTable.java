package org.nextpull.window.compared;

import java.awt.Component;
import java.util.List;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.TypeScale;

/** The numbers of one difference, a speed a row. */
final class RowTable extends JTable implements Styled {
    private static final long serialVersionUID = 1;

    private final Rows rows = new Rows();

    RowTable() {
        setModel(rows);
        setFillsViewportHeight(true);
        setShowGrid(false);
        getTableHeader().setReorderingAllowed(false);
        getAccessibleContext().setAccessibleName("Difference by speed");
        DefaultTableCellRenderer right = new DefaultTableCellRenderer() {
            private static final long serialVersionUID = 1;

            @Override
            public Component getTableCellRendererComponent(
                    JTable table, Object value, boolean selected, boolean focus, int row, int column) {
                super.getTableCellRendererComponent(table, value, selected, false, row, column);
                setHorizontalAlignment(RIGHT);
                return this;
            }
        };
        setDefaultRenderer(Object.class, right);
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    }

    void show(String label, List<ComparedPage.Row> shown) {
        rows.label = label;
        rows.shown = List.copyOf(shown);
        rows.fireTableStructureChanged();
    }

    @Override
    public void style(Skin skin, TypeScale scale) {
        setFont(scale.plain(13));
        setRowHeight(scale.type(22));
        setBackground(skin.ground());
        setForeground(skin.ink());
        getTableHeader().setFont(scale.bold(13));
        getTableHeader().setBackground(skin.raised());
        getTableHeader().setForeground(skin.ink());
    }

    private static final class Rows extends AbstractTableModel {
        private static final long serialVersionUID = 1;
        private static final int COLUMNS = 6;
        private transient List<ComparedPage.Row> shown = List.of();
        private String label = "this";

        @Override
        public int getRowCount() {
            return shown.size();
        }

        @Override
        public int getColumnCount() {
            return COLUMNS;
        }

        @Override
        public String getColumnName(int column) {
            return List.of("rpm", label, "reference", "%", "from", "to").get(column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            ComparedPage.Row one = shown.get(row);
            return List.of(one.rpm(), one.label(), one.reference(), one.percent(), one.from(), one.to())
                    .get(column);
        }
    }
}
