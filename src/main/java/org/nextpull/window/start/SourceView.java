package org.nextpull.window.start;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import org.nextpull.intake.serial.PortInfo;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.Tone;
import org.nextpull.window.look.TypeScale;
import org.nextpull.window.page.PathChooser;

/** Data source, and what arrives from there. */
final class SourceView extends JPanel implements Styled {
    private static final long serialVersionUID = 1;

    private final JLabel title = new JLabel("Where the values come from");
    private final JRadioButton port = new JRadioButton("Serial port", true);
    private final JRadioButton folder = new JRadioButton("Folder of logs");
    private final JTextField name = new JTextField();
    private final DefaultListModel<PortInfo> ports = new DefaultListModel<>();
    private final JList<PortInfo> portList = new JList<>(ports);
    private final JScrollPane portPane = new JScrollPane(portList);
    private final JButton choose = new JButton("Choose a folder (F2)");
    private final JButton again = new JButton("Rescan ports (F5)");
    private final JButton see = new JButton("Preview data (F6)");
    private final Prose state = new Prose("What arrives");
    private final JLabel raw = new JLabel(" ");
    private final ArrivalsTable table = new ArrivalsTable();
    private final JScrollPane tablePane = new JScrollPane(table);
    private final Prose said = new Prose("What the source said");
    private transient TypeScale scale = TypeScale.of(1280, 720, Look.plain());

    /**
     * The view.
     *
     * @param look asks for the ports
     * @param watch asks to see what arrives from there
     */
    SourceView(Runnable look, Consumer<SourceChoice> watch) {
        super(null);
        ButtonGroup group = new ButtonGroup();
        group.add(port);
        group.add(folder);
        port.addActionListener(event -> kind());
        folder.addActionListener(event -> kind());
        name.addActionListener(event -> watch.accept(choice()));
        portList.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        portList.addListSelectionListener(event -> {
            if (portList.getSelectedValue() != null) {
                name.setText(portList.getSelectedValue().name());
            }
        });
        portList.setCellRenderer(new PortCell());
        choose.addActionListener(event -> chooseFolder());
        again.addActionListener(event -> look.run());
        see.addActionListener(event -> watch.accept(choice()));
        name.getAccessibleContext().setAccessibleName("Port or folder");
        portList.getAccessibleContext().setAccessibleName("Ports of this computer");
        raw.getAccessibleContext().setAccessibleName("Last line as it came");
        tablePane.setBorder(BorderFactory.createEmptyBorder());
        parts().forEach(this::add);
        kind();
        show(ArrivalsPage.none());
    }

    private List<JComponent> parts() {
        return List.of(title, port, folder, name, portPane, choose, again, see, state, raw, tablePane, said);
    }

    private void kind() {
        portPane.setVisible(port.isSelected());
        again.setVisible(port.isSelected());
        choose.setVisible(folder.isSelected());
        name.putClientProperty(
                "JTextField.placeholderText",
                port.isSelected() ? "as the plan's wires say" : "the folder that the logger writes into");
        revalidate();
        repaint();
    }

    /** Finds the folder that the logger writes into. */
    void chooseFolder() {
        PathChooser.from(folder.isSelected() ? name.getText() : "", true)
                .choose(this)
                .ifPresent(path -> {
                    folder.setSelected(true);
                    kind();
                    name.setText(path);
                    name.requestFocusInWindow();
                });
    }

    SourceChoice choice() {
        return folder.isSelected() ? SourceChoice.folder(name.getText()) : SourceChoice.port(name.getText());
    }

    void ports(List<PortInfo> found) {
        String before = name.getText();
        ports.clear();
        found.forEach(ports::addElement);
        name.setText(before);
    }

    void say(String sentence) {
        state.say(Tone.PLAIN.sign() + " " + sentence);
        revalidate();
        repaint();
    }

    void show(ArrivalsPage page) {
        state.say(
                page.sources().isEmpty()
                        ? Tone.PLAIN.sign() + " Nothing is looked at yet. Choose, then press F6."
                        : page.sources().stream().map(SourceView::state).collect(Collectors.joining("\n")));
        raw.setText(page.sources().stream()
                .map(ArrivalsPage.Source::raw)
                .filter(line -> !line.isEmpty())
                .collect(Collectors.joining("   ")));
        raw.getAccessibleContext().setAccessibleDescription(raw.getText());
        List<ArrivalsPage.Column> columns = new ArrayList<>();
        page.sources().forEach(source -> columns.addAll(source.columns()));
        table.show(columns);
        said.say(page.said().stream()
                .map(one -> (one.isError() ? Tone.BAD : Tone.PLAIN).sign() + " " + one.sentence())
                .collect(Collectors.joining("\n")));
        revalidate();
    }

    private static String state(ArrivalsPage.Source source) {
        return (source.isGood() ? Tone.GOOD : Tone.WARN).sign() + " " + source.name() + ": " + source.state();
    }

    @Override
    public void style(Skin skin, TypeScale newScale) {
        scale = newScale;
        setBackground(skin.ground());
        for (JComponent part : parts()) {
            part.setFont(scale.plain(14));
            part.setForeground(skin.ink());
        }
        for (JComponent bare : List.<JComponent>of(port, folder)) {
            bare.setOpaque(false);
        }
        title.setFont(scale.bold(18));
        portList.setFont(scale.plain(14));
        portList.setFixedCellHeight(scale.type(24));
        portList.setBackground(skin.ground());
        portList.setForeground(skin.ink());
        portPane.getViewport().setBackground(skin.ground());
        tablePane.getViewport().setBackground(skin.ground());
        raw.setFont(new java.awt.Font(java.awt.Font.MONOSPACED, java.awt.Font.PLAIN, scale.type(13)));
        state.dress(skin.ink(), scale.bold(15));
        said.dress(skin.ink(), scale.plain(13));
        table.style(skin, newScale);
        revalidate();
    }

    @Override
    public void doLayout() {
        int gap = scale.space(10);
        int left = scale.space(14);
        int wide = getWidth() - 2 * left;
        int line = scale.type(28);
        int y = gap / 2;
        title.setBounds(left, y, wide, line);
        y += line + gap / 2;
        port.setBounds(left, y, wide / 2, line);
        folder.setBounds(left + wide / 2, y, wide / 2, line);
        y += line + gap / 2;
        name.setBounds(left, y, wide, line);
        y += line + gap / 2;
        if (portPane.isVisible()) {
            int high = scale.type(24) * 3 + scale.space(4);
            portPane.setBounds(left, y, wide, high);
            y += high + gap / 2;
        }
        int half = (wide - gap) / 2;
        again.setBounds(left, y, half, line);
        choose.setBounds(left, y, half, line);
        see.setBounds(left + half + gap, y, half, line);
        y += line + gap;
        int high = state.heightAt(wide);
        state.setBounds(left, y, wide, high);
        y += high + gap / 2;
        raw.setBounds(left, y, wide, line);
        y += line;
        int below = Math.min(said.heightAt(wide), Math.max(0, (getHeight() - y) * 2 / 5));
        tablePane.setBounds(left, y, wide, Math.max(0, getHeight() - y - below - gap));
        said.setBounds(left, getHeight() - below - gap / 2, wide, below);
    }
}
