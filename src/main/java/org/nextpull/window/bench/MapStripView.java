package org.nextpull.window.bench;

import java.awt.GridLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.window.look.StyledPanel;

/** The map to set over the whole width of the page; cells that change are marked by ground and sign. */
final class MapStripView extends StyledPanel {
    private static final long serialVersionUID = 1;
    private static final double MOST_TYPE = 36;
    private static final double WIDE = 1230;

    /** Widest of the numbers, {@code -10.5}, in widths of its type. */
    private static final double DIGITS = 2.6;

    private transient Optional<MapStrip> map = Optional.empty();

    MapStripView() {
        super(new GridLayout());
        getAccessibleContext().setAccessibleName("Map to set");
        setVisible(false);
    }

    void show(Optional<MapStrip> newMap) {
        if (!newMap.equals(map)) {
            map = newMap;
            setVisible(map.isPresent());
            getAccessibleContext()
                    .setAccessibleDescription(map.map(MapStrip::spoken).orElse(""));
            dress();
        }
    }

    @Override
    protected void dress() {
        removeAll();
        setBackground(skin.ground());
        setBorder(skin.underlined(scale, scale.margin(6, 14, 6, 14)));
        List<MapStrip.Cell> cells = map.map(MapStrip::cells).orElse(List.of());
        setLayout(new GridLayout(1, cells.size() + 1, scale.space(2), 0));
        add(cell(new MapStrip.Cell("rpm", "deg", "change"), cells.size()));
        cells.forEach(cell -> add(cell(cell, cells.size())));
        revalidate();
        repaint();
    }

    private JPanel cell(MapStrip.Cell cell, int count) {
        JPanel panel = new JPanel(new GridLayout(3, 1));
        boolean isName = cell.rpm().equals("rpm");
        boolean changes = !isName && !cell.change().isEmpty();
        // numbers do not grow with larger type where a cell has no room for it
        double most = WIDE / (count + 1) / DIGITS * scale.space(1000) / scale.type(1000);
        double type = Math.min(MOST_TYPE, most);
        panel.setBackground(changes ? skin.selection() : skin.ground());
        panel.add(label(cell.rpm(), isName ? 14 : Math.min(16, type), false));
        panel.add(label(cell.deg(), isName ? 14 : type, true));
        String sign = changes ? (cell.change().startsWith("-") ? "\u25BC " : "\u25B2 ") : "";
        panel.add(label(sign + cell.change(), isName ? 14 : Math.min(16, type), changes));
        return panel;
    }

    private JLabel label(String text, double size, boolean bold) {
        JLabel label = new JLabel(text, JLabel.CENTER);
        type(label, bold ? scale.bold(size) : scale.plain(size), skin.ink());
        return label;
    }
}
