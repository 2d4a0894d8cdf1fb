package org.nextpull.window.page;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.SwingUtilities;
import javax.swing.text.DefaultEditorKit;
import javax.swing.text.JTextComponent;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.TypeScale;

/** The menu bar and the menus under the right button: all keys of the page and of the window, each with what it does. */
public final class Menus implements Styled {
    private final JMenuBar bar = new JMenuBar();
    private final JMenu page = new JMenu("Page");
    private final JMenu window = new JMenu("Window");
    private final Supplier<Page> current;
    private List<JMenuItem> items = List.of();
    private TypeScale scale = TypeScale.usual();

    /**
     * The menus.
     *
     * @param current the page that is shown
     */
    public Menus(Supplier<Page> current) {
        this.current = current;
        bar.add(page);
        bar.add(window);
    }

    public JMenuBar bar() {
        return bar;
    }

    /** Makes the menus for the page that is shown, and these keys of the window. */
    public void show(List<KeyCommand> ofWindow) {
        page.setText(current.get().title());
        List<JMenuItem> made = new ArrayList<>();
        fill(page, current.get().keys(), made);
        fill(window, ofWindow, made);
        items = made;
        dress();
    }

    private static void fill(JMenu menu, List<KeyCommand> keys, List<JMenuItem> made) {
        menu.removeAll();
        for (KeyCommand key : keys) {
            JMenuItem item = item(key);
            made.add(item);
            menu.add(item);
        }
    }

    /** The key stands in the words: as an accelerator it would act while somebody types. */
    private static JMenuItem item(KeyCommand key) {
        JMenuItem item = new JMenuItem(key.title() + "    (" + key.shown() + ")");
        item.setEnabled(!key.strokes().isEmpty());
        // what the item asks for gives the focus back to where it was: the menu must be gone by then
        item.addActionListener(event -> EventQueue.invokeLater(key.action()));
        return item;
    }

    /** Shows the menu of the page, or of a text, wherever the right button is pressed inside this part. */
    public void popUpIn(Component inside) {
        AWTEventListener listener = event -> {
            if (event instanceof MouseEvent mouse
                    && mouse.isPopupTrigger()
                    && mouse.getComponent().isShowing()
                    && SwingUtilities.isDescendingFrom(mouse.getComponent(), inside)) {
                JPopupMenu menu =
                        mouse.getComponent() instanceof JTextComponent text && text.isEditable() ? ofText() : ofPage();
                menu.show(mouse.getComponent(), mouse.getX(), mouse.getY());
                mouse.consume();
            }
        };
        inside.addHierarchyListener(event -> {
            Toolkit.getDefaultToolkit().removeAWTEventListener(listener);
            if (inside.isDisplayable()) {
                Toolkit.getDefaultToolkit().addAWTEventListener(listener, AWTEvent.MOUSE_EVENT_MASK);
            }
        });
    }

    private JPopupMenu ofPage() {
        JPopupMenu menu = new JPopupMenu();
        current.get().keys().forEach(key -> menu.add(item(key)));
        dress(menu);
        return menu;
    }

    private JPopupMenu ofText() {
        JPopupMenu menu = new JPopupMenu();
        menu.add(item(new DefaultEditorKit.CutAction(), "Cut    (Ctrl X)"));
        menu.add(item(new DefaultEditorKit.CopyAction(), "Copy    (Ctrl C)"));
        menu.add(item(new DefaultEditorKit.PasteAction(), "Paste    (Ctrl V)"));
        dress(menu);
        return menu;
    }

    private static JMenuItem item(javax.swing.Action action, String text) {
        JMenuItem item = new JMenuItem(action);
        item.setText(text);
        return item;
    }

    private void dress(JPopupMenu menu) {
        for (Component item : menu.getComponents()) {
            item.setFont(scale.plain(13));
        }
    }

    private void dress() {
        page.setFont(scale.plain(13));
        window.setFont(scale.plain(13));
        items.forEach(item -> item.setFont(scale.plain(13)));
    }

    @Override
    public void style(Skin skin, TypeScale newScale) {
        scale = newScale;
        dress();
    }
}
