package org.nextpull.window.page;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.look.StyledPanel;

/** The pages of the window, one at a time; a digit shows each. With a single page nothing of this is seen. */
public final class PageSwitch extends StyledPanel {
    private static final long serialVersionUID = 1;

    private final JPanel names = new JPanel(new FlowLayout(FlowLayout.LEFT, 0, 0));
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = new JPanel(cards);
    private final transient List<Page> pages = new ArrayList<>();
    private final transient List<JToggleButton> labels = new ArrayList<>();
    private transient Consumer<Page> onShow = page -> {};
    private int shown;

    public PageSwitch() {
        super(new BorderLayout());
        add(names, BorderLayout.NORTH);
        add(middle, BorderLayout.CENTER);
        names.setVisible(false);
    }

    /** Adds a page behind the others. */
    public void add(Page page) {
        pages.add(page);
        middle.add(page.view(), String.valueOf(pages.size()));
        page.keys().forEach(key -> key.bind(page.view()));
        JToggleButton name = new JToggleButton(pages.size() + " " + page.title());
        int place = labels.size();
        // keys go to the page: its digit shows it
        name.setFocusable(false);
        name.putClientProperty("JButton.buttonType", "tab");
        name.addActionListener(event -> show(place));
        labels.add(name);
        names.add(name);
        names.setVisible(pages.size() > 1);
    }

    /** Puts a page in the place of another, counted from 0. */
    public void replace(int place, Page page) {
        middle.remove(pages.set(place, page).view());
        middle.add(page.view(), String.valueOf(place + 1));
        page.keys().forEach(key -> key.bind(page.view()));
    }

    /** The keys that show the pages; none while there is but one. */
    public List<KeyCommand> keys() {
        List<KeyCommand> keys = new ArrayList<>();
        for (int index = 0; index < pages.size() && pages.size() > 1; index++) {
            int page = index;
            String digit = String.valueOf(index + 1);
            keys.add(new KeyCommand(
                    List.of(digit, "ctrl " + digit),
                    digit + ", Ctrl " + digit,
                    "page: " + pages.get(index).title(),
                    () -> show(page)));
        }
        return keys;
    }

    /** Who is told which page is shown. */
    public void onShow(Consumer<Page> told) {
        onShow = told;
    }

    /** The page that is shown. */
    public Page current() {
        return pages.get(shown);
    }

    /** Shows a page, counted from 0. */
    public void show(int index) {
        shown = index;
        cards.show(middle, String.valueOf(index + 1));
        onShow.accept(current());
        current().focus();
        for (int at = 0; at < labels.size(); at++) {
            labels.get(at).setSelected(at == index);
        }
    }

    /** Tells all pages the units that people read. */
    public void units(UnitSystem units) {
        pages.forEach(page -> page.units(units));
    }

    @Override
    protected void dress() {
        ground(names, middle);
        for (JToggleButton label : labels) {
            type(label, scale.bold(14), skin.ink());
            label.setBorder(scale.margin(4, 14, 2, 14));
        }
        pages.forEach(page -> page.style(skin, scale));
    }
}
