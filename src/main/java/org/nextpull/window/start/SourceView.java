package org.nextpull.window.start;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.GridLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.ButtonGroup;
import javax.swing.DefaultListCellRenderer;
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
import org.nextpull.finding.Outcome;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.live.LiveIntake;
import org.nextpull.live.PlanPorts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.ScrollView;
import org.nextpull.window.look.StackLayout;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.look.Tone;
import org.nextpull.window.page.PathChooser;
import org.nextpull.window.page.PlainTable;

/** Data source, and what arrives from there. */
final class SourceView extends StyledPanel {
    private static final long serialVersionUID = 1;

    private final JLabel title = new JLabel("Data source");
    private final JRadioButton port = new JRadioButton("Serial port", true);
    private final JRadioButton folder = new JRadioButton("Folder of logs");
    private final JTextField name = new JTextField();
    private final DefaultListModel<SerialPorts.PortInfo> ports = new DefaultListModel<>();
    private final JList<SerialPorts.PortInfo> portList = new JList<>(ports);
    private final JScrollPane portPane = new JScrollPane(portList);
    private final JButton choose = new JButton("Choose a folder (F2)");
    private final JButton again = new JButton("Rescan ports (F5)");
    private final JButton see = new JButton("Preview data (F6)");
    private final Prose state = new Prose("What arrives");
    private final JLabel raw = new JLabel(" ");
    private final ArrivalsTable table = new ArrivalsTable();
    private final ScrollView tablePane = ScrollView.of(table);
    private final Prose said = new Prose("What the source said");
    private final StackLayout stack;

    /**
     * The view.
     *
     * @param look asks for the ports
     * @param watch asks to see what arrives from there
     */
    SourceView(Runnable look, Consumer<Choice> watch) {
        super(new StackLayout());
        stack = (StackLayout) getLayout();
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
        JPanel kinds = new JPanel(new GridLayout(1, 2));
        kinds.add(port);
        kinds.add(folder);
        JPanel asks = new JPanel(new FlowLayout(FlowLayout.LEFT, 6, 0));
        List.of(again, choose, see).forEach(asks::add);
        List.of(kinds, asks).forEach(row -> row.setOpaque(false));
        List.of(title, kinds, name, portPane, asks, state, raw).forEach(this::add);
        add(tablePane, StackLayout.Row.stretching(1));
        add(said, StackLayout.Row.yielding(1));
        kind();
        show(Arrivals.Page.none());
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

    Choice choice() {
        return folder.isSelected() ? Choice.folder(name.getText()) : Choice.port(name.getText());
    }

    void ports(List<SerialPorts.PortInfo> found) {
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

    void show(Arrivals.Page page) {
        state.say(
                page.sources().isEmpty()
                        ? Tone.PLAIN.sign() + " No preview yet. Choose a source, then press F6."
                        : page.sources().stream().map(SourceView::state).collect(Collectors.joining("\n")));
        raw.setText(page.sources().stream()
                .map(Arrivals.Page.Source::raw)
                .filter(line -> !line.isEmpty())
                .collect(Collectors.joining("   ")));
        raw.getAccessibleContext().setAccessibleDescription(raw.getText());
        List<Arrivals.Page.Column> columns = new ArrayList<>();
        page.sources().forEach(source -> columns.addAll(source.columns()));
        table.show(columns);
        said.say(page.said().stream()
                .map(one -> (one.isError() ? Tone.BAD : Tone.PLAIN).sign() + " " + one.sentence())
                .collect(Collectors.joining("\n")));
        revalidate();
    }

    private static String state(Arrivals.Page.Source source) {
        return (source.isGood() ? Tone.GOOD : Tone.WARN).sign() + " " + source.name() + ": " + source.state();
    }

    @Override
    protected void dress() {
        setBorder(scale.margin(7, 0, 7, 0));
        stack.gap(scale.space(6));
        portPane.setPreferredSize(new Dimension(10, scale.type(24) * 3 + scale.space(4)));
        ground(portList);
        for (JComponent part : parts()) {
            type(part, scale.plain(14), skin.ink());
        }
        for (JComponent bare : List.<JComponent>of(port, folder)) {
            bare.setOpaque(false);
        }
        title.setFont(scale.bold(18));
        type(portList, scale.plain(14), skin.ink());
        portList.setFixedCellHeight(scale.type(24));
        portPane.getViewport().setBackground(skin.ground());
        tablePane.style(skin, scale);
        raw.setFont(new Font(Font.MONOSPACED, Font.PLAIN, scale.type(13)));
        state.dress(skin.ink(), scale.bold(15));
        said.dress(skin.ink(), scale.plain(13));
    }

    /** A port in a list: its name and what is plugged in there. */
    private static final class PortCell extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focus) {
            SerialPorts.PortInfo port = (SerialPorts.PortInfo) value;
            String description = port.description().equals(port.name()) ? "" : "   " + port.description();
            return super.getListCellRendererComponent(list, port.name() + description, index, selected, focus);
        }
    }

    /** The columns that arrive: as sent, what they are taken for, and the value of this moment. */
    private static final class ArrivalsTable extends PlainTable<Arrivals.Page.Column> {
        private static final long serialVersionUID = 1;
        private static final List<Integer> WIDTHS = List.of(135, 145, 80);

        ArrivalsTable() {
            super("Columns that arrive", 14, List.of("Column", "Read as", "Value"));
            for (int column = 0; column < WIDTHS.size(); column++) {
                getColumnModel().getColumn(column).setPreferredWidth(WIDTHS.get(column));
            }
        }

        @Override
        protected String text(Arrivals.Page.Column row, int column) {
            return switch (column) {
                case 0 -> row.header();
                case 1 -> row.isUnderstood() ? row.meaning() : "not used";
                default -> row.value();
            };
        }

        @Override
        protected boolean isRight(int column) {
            return column == 2;
        }

        @Override
        protected boolean isQuiet(Arrivals.Page.Column row) {
            return !row.isUnderstood();
        }
    }

    /**
     * Where the operator wants values from.
     *
     * @param isFolder whether it is a folder of logs, else ports
     * @param name the folder, or the port; blank leaves the port to the plan
     */
    record Choice(boolean isFolder, String name) {
        static Choice port(String name) {
            return new Choice(false, name.strip());
        }

        static Choice folder(String name) {
            return new Choice(true, name.strip());
        }

        /** What a session would read from, out of this choice and what the plan says of its wires. Not for the event thread. */
        Outcome<LiveIntake> source(SweepPlan plan) {
            return isFolder
                    ? LiveIntake.ofFolder(name)
                    : PlanPorts.of(plan, device()).map(ports -> ports);
        }

        /** The port that was named; empty leaves it to the plan. */
        Optional<String> device() {
            return isFolder || name.isEmpty() ? Optional.empty() : Optional.of(name);
        }
    }
}
