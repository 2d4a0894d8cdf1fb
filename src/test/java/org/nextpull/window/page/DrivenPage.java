package org.nextpull.window.page;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.KeyboardFocusManager;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;
import org.nextpull.Await;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.SwingLook;
import org.nextpull.window.look.TypeScale;

/** One page of the window with the foot below it, driven by its keys and buttons and read by accessible names. */
public final class DrivenPage implements AutoCloseable {

    private final FootBar foot;
    private final Page page;
    private final JFrame frame;
    private final JPanel root = new JPanel(new BorderLayout());

    private DrivenPage(FootBar foot, Page page, JFrame frame) {
        this.foot = foot;
        this.page = page;
        this.frame = frame;
    }

    /** Opens a page in a frame of its own. */
    public static DrivenPage open(Function<FootBar, Page> make, Dimension size) {
        List<DrivenPage> made = new ArrayList<>();
        run(() -> {
            SwingLook.dress(Look.plain());
            FootBar foot = new FootBar();
            Page page = make.apply(foot);
            DrivenPage driven = new DrivenPage(foot, page, new JFrame("page"));
            driven.root.add(page.view(), BorderLayout.CENTER);
            driven.root.add(foot, BorderLayout.SOUTH);
            page.keys().forEach(key -> key.bind(page.view()));
            driven.frame.setUndecorated(true);
            driven.frame.setContentPane(driven.root);
            driven.frame.setSize(size);
            driven.dress(new Look(false, false, UnitSystem.METRIC));
            driven.frame.setVisible(true);
            driven.dress(new Look(false, false, UnitSystem.METRIC));
            page.focus();
            made.add(driven);
        });
        return made.get(0);
    }

    /** Shows the page in that look. */
    public void look(Look look, Dimension size) {
        run(() -> {
            frame.setSize(size);
            frame.validate();
            dress(look);
        });
    }

    private void dress(Look look) {
        TypeScale scale = TypeScale.of(frame.getWidth(), frame.getHeight(), look);
        UIManager.put("defaultFont", scale.plain(13));
        SwingLook.dress(look);
        Skin skin = Skin.of(look);
        root.setBackground(skin.ground());
        page.style(skin, scale);
        foot.style(skin, scale);
        page.units(look.units());
        frame.validate();
        frame.repaint();
    }

    /** Does what a key of the page does. */
    public void press(String stroke) {
        run(() -> act(stroke));
    }

    /** The same for a key that opens a dialog, which holds the event until it is closed. */
    public void pressAndGoOn(String stroke) {
        EventQueue.invokeLater(() -> act(stroke));
    }

    private void act(String stroke) {
        act(page.view(), stroke);
    }

    private static void act(JComponent view, String stroke) {
        Object name =
                view.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(KeyStroke.getKeyStroke(stroke));
        if (name == null) {
            throw new AssertionError("no key " + stroke);
        }
        view.getActionMap().get(name).actionPerformed(new java.awt.event.ActionEvent(view, 0, stroke));
    }

    /** Says yes to a question that has no field. */
    public void confirm() {
        run(() -> act((JComponent) find("Answer").orElseThrow(), "ENTER"));
    }

    /** The first part with that accessible name. */
    public Optional<Component> find(String accessibleName) {
        return all(root).stream()
                .filter(part -> part.getAccessibleContext() != null
                        && accessibleName.equals(part.getAccessibleContext().getAccessibleName()))
                .findFirst();
    }

    private static List<Component> all(Container parent) {
        List<Component> all = new ArrayList<>();
        for (Component part : parent.getComponents()) {
            all.add(part);
            if (part instanceof Container inner) {
                all.addAll(all(inner));
            }
        }
        return all;
    }

    /** Every part that can have the focus and has no accessible name. */
    public List<Component> nameless() {
        return all(root).stream()
                .filter(part -> part.isFocusable() && part.isShowing())
                .filter(part -> part instanceof JTextComponent
                        || part instanceof AbstractButton
                        || part instanceof javax.swing.JComboBox
                        || part instanceof JTable
                        || part instanceof javax.swing.JList)
                .filter(part -> part.getAccessibleContext().getAccessibleName() == null
                        || part.getAccessibleContext().getAccessibleName().isBlank())
                .filter(part -> !part.getClass().getName().contains("Scroll"))
                .filter(part -> !(part.getParent() instanceof javax.swing.JComboBox))
                .toList();
    }

    /** What a part says: its text, or else its description. */
    public String said(String accessibleName) {
        List<String> said = new ArrayList<>();
        run(() -> said.add(find(accessibleName)
                .map(part -> part instanceof JTextComponent text
                        ? text.getText()
                        : String.valueOf(part.getAccessibleContext().getAccessibleDescription()))
                .orElse("")));
        return said.get(0);
    }

    /** Types into a field. */
    public void type(String accessibleName, String text) {
        run(() -> field(accessibleName).setText(text));
    }

    /** Enter in a field. */
    public void enter(String accessibleName) {
        run(() -> field(accessibleName).postActionEvent());
    }

    /** Presses a button. */
    public void click(String accessibleName) {
        run(() -> button(accessibleName).doClick(0));
    }

    /** The same for a button that opens a dialog. */
    public void clickAndGoOn(String accessibleName) {
        EventQueue.invokeLater(() -> button(accessibleName).doClick(0));
    }

    private AbstractButton button(String accessibleName) {
        return (AbstractButton) find(accessibleName).orElseThrow(() -> new AssertionError(accessibleName));
    }

    private JTextField field(String accessibleName) {
        return (JTextField) find(accessibleName).orElseThrow(() -> new AssertionError("no field " + accessibleName));
    }

    /** Whether a table has the focus. */
    public boolean isTableFocused() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() instanceof JTable;
    }

    /** The foot. */
    public FootBar foot() {
        return foot;
    }

    /** Waits until something is so. */
    public void until(String what, BooleanSupplier isSo) {
        Await.until(what, isSo);
    }

    /** Lets every queue run dry: a page may ask for a picture, and a picture for another. */
    public void settle(Work work) {
        for (int round = 0; round < 3; round++) {
            CountDownLatch empty = new CountDownLatch(2);
            work.think(empty::countDown);
            work.draw(empty::countDown);
            try {
                empty.await();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
            run(() -> {});
        }
    }

    /**
     * Paints the page in the sizes of common screens, in both looks, in normal and in large type.
     *
     * @param first what to do with the page before each picture
     * @throws AssertionError where a button has no room for its words
     */
    public void pictures(String name, Work work, Runnable first) {
        for (Dimension size : List.of(new Dimension(1280, 660), new Dimension(1366, 708), new Dimension(1920, 1020))) {
            for (boolean dark : new boolean[] {false, true}) {
                for (boolean large : new boolean[] {false, true}) {
                    look(new Look(dark, large, large ? UnitSystem.US : UnitSystem.METRIC), size);
                    first.run();
                    settle(work);
                    all(root).stream()
                            .filter(part -> part instanceof AbstractButton button
                                    && button.isShowing()
                                    && !button.getText().isEmpty())
                            .filter(part -> part.getWidth() < part.getPreferredSize().width)
                            .findFirst()
                            .ifPresent(part -> {
                                throw new AssertionError(((AbstractButton) part).getText() + " is clipped at " + size);
                            });
                    picture(Path.of("target/screens/" + name + "-" + size.width + (dark ? "-dark" : "-light")
                            + (large ? "-large" : "") + ".png"));
                }
            }
        }
    }

    /** Paints the page into a file. */
    public Path picture(Path file) {
        List<BufferedImage> painted = new ArrayList<>();
        run(() -> {
            frame.validate();
            BufferedImage image = new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D surface = image.createGraphics();
            root.printAll(surface);
            surface.dispose();
            painted.add(image);
        });
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            ImageIO.write(painted.get(0), "png", file.toFile());
            return file;
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    /** Runs on the event thread and waits for it. */
    public static void run(Runnable task) {
        try {
            EventQueue.invokeAndWait(task);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError("interrupted", stopped);
        } catch (InvocationTargetException fault) {
            throw new AssertionError("the event thread failed", fault.getCause());
        }
    }

    @Override
    public void close() {
        run(frame::dispose);
    }
}
