package org.nextpull.window.bench;

import java.awt.GridLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.TypeScale;

/** The map to set over the whole width of the page; cells that change are marked by ground and sign. */
final class MapStripView extends JPanel implements Styled {
    private static final long serialVersionUID = 1;
    private static final double MOST_TYPE = 36;
    private static final double WIDE = 1230;

    /** Widest of the numbers, {@code -10.5}, in widths of its type. */
    private static final double DIGITS = 2.6;

    private transient Optional<MapStrip> map = Optional.empty();
    private transient Skin skin = Skin.of(Look.plain());
    private transient TypeScale scale = TypeScale.of(1280, 720, Look.plain());

    MapStripView() {
        getAccessibleContext().setAccessibleName("Map to set");
        setVisible(false);
    }

    void show(Optional<MapStrip> newMap) {
        if (!newMap.equals(map)) {
            map = newMap;
            setVisible(map.isPresent());
            getAccessibleContext()
                    .setAccessibleDescription(map.map(MapStrip::spoken).orElse(""));
            build();
        }
    }

    private void build() {
        removeAll();
        setBackground(skin.ground());
        setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(0, 0, Math.max(1, scale.space(1)), 0, skin.line()),
                BorderFactory.createEmptyBorder(scale.space(6), scale.space(14), scale.space(6), scale.space(14))));
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
        label.setFont(bold ? scale.bold(size) : scale.plain(size));
        label.setForeground(skin.ink());
        return label;
    }

    @Override
    public void style(Skin newSkin, TypeScale newScale) {
        skin = newSkin;
        scale = newScale;
        build();
    }
}
