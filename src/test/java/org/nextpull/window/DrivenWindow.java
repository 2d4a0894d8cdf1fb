package org.nextpull.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.nextpull.Await;
import org.nextpull.app.DaySheet;
import org.nextpull.window.bench.BenchController;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.look.Look;
import org.nextpull.window.page.Work;

/** The real window, driven by keys and read by accessible names; it needs no window manager and no focus. */
final class DrivenWindow implements AutoCloseable {
    private final DaySource source;
    private final Work work = new Work();
    private final SoundLog sound = new SoundLog();
    private final MainFrame main;
    private long pressedAt;

    DrivenWindow(DaySource source, Look look, Dimension size) {
        this.source = source;
        this.main = Edt.get(() -> {
            MainFrame made = WindowProgram.assemble(
                    source, look, work, sound, shown -> DaySheet.Order.usual(LocalDate.EPOCH, "test", shown));
            made.open(size);
            return made;
        });
    }

    /** Whether the alarm sounds. */
    boolean sounds() {
        return sound.sounds();
    }

    /** How often a change was heard. */
    int chimes() {
        return sound.chimes();
    }

    /** Presses a key in whatever is shown, and lets it go. */
    void press(String stroke) {
        KeyStroke key = KeyStroke.getKeyStroke(stroke);
        if (key.getKeyCode() == KeyEvent.VK_UNDEFINED) {
            send(key, KeyEvent.KEY_TYPED);
        } else {
            send(key, KeyEvent.KEY_PRESSED);
            send(key, KeyEvent.KEY_RELEASED);
        }
    }

    private void send(KeyStroke key, int kind) {
        Edt.run(() -> target().ifPresent(target -> {
            pressedAt = kind == KeyEvent.KEY_PRESSED ? EventQueue.getMostRecentEventTime() : pressedAt;
            char typed = kind == KeyEvent.KEY_TYPED ? key.getKeyChar() : KeyEvent.CHAR_UNDEFINED;
            KeyEvent event =
                    new KeyEvent(target, kind, System.currentTimeMillis(), key.getModifiers(), key.getKeyCode(), typed);
            KeyboardFocusManager.getCurrentKeyboardFocusManager().redispatchEvent(target, event);
        }));
    }

    /** Where a key goes: the list of pulls, the list of keys, or the button under the cautions. */
    private Optional<Component> target() {
        return List.of("Keys shown", "I have read this", "Alarm over the page", "Pulls").stream()
                .flatMap(name -> find(name).stream())
                .filter(Component::isShowing)
                .findFirst();
    }

    Optional<Component> find(String accessibleName) {
        return all(main.frame().getContentPane()).stream()
                .filter(part -> accessibleName.equals(
                        part.getAccessibleContext() == null
                                ? null
                                : part.getAccessibleContext().getAccessibleName()))
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

    /** What a part with that accessible name says: its text, or else its description; empty while it is not there. */
    String said(String accessibleName) {
        return Edt.get(() -> find(accessibleName)
                .map(part -> part instanceof JTextComponent text
                        ? text.getText()
                        : Optional.ofNullable(part.getAccessibleContext().getAccessibleDescription())
                                .orElse(""))
                .orElse(""));
    }

    boolean isShowing(String accessibleName) {
        return Edt.get(() -> find(accessibleName).map(Component::isShowing).orElse(false));
    }

    /** The card that is selected, as it is read aloud. */
    String selected() {
        return Edt.get(() -> find("Pulls")
                .map(part -> String.valueOf(((JList<?>) part).getSelectedValue()))
                .orElse(""));
    }

    /** Says yes to a question that has no field. */
    void confirm() {
        Edt.run(() -> find("Answer")
                .ifPresent(asking -> KeyboardFocusManager.getCurrentKeyboardFocusManager()
                        .redispatchEvent(
                                asking,
                                new KeyEvent(
                                        asking,
                                        KeyEvent.KEY_PRESSED,
                                        System.currentTimeMillis(),
                                        0,
                                        KeyEvent.VK_ENTER,
                                        KeyEvent.CHAR_UNDEFINED))));
    }

    /** Types a sign into a field so many ms after the last key was pressed. */
    void typeAfterOpening(String name, char sign, long ms) {
        Edt.run(() -> {
            JTextField field = field(name);
            KeyEvent typed = new KeyEvent(field, KeyEvent.KEY_TYPED, pressedAt + ms, 0, KeyEvent.VK_UNDEFINED, sign);
            KeyboardFocusManager.getCurrentKeyboardFocusManager().redispatchEvent(field, typed);
        });
    }

    /** Fills the fields of the question at the foot and answers it. */
    void answer(List<String> names, List<String> texts) {
        Edt.run(() -> {
            for (int index = 0; index < names.size(); index++) {
                field(names.get(index)).setText(texts.get(index));
            }
            field(names.get(0)).postActionEvent();
        });
    }

    private JTextField field(String name) {
        return (JTextField) find(name).orElseThrow(() -> new AssertionError("no field " + name));
    }

    void until(String what, BooleanSupplier isSo) {
        Await.until(what, isSo);
    }

    void change(Look look) {
        Edt.run(() -> main.change(look));
    }

    void resize(Dimension size) {
        Edt.run(() -> {
            main.root().setPreferredSize(size);
            main.frame().pack();
        });
    }

    /** Waits until the charts have caught up with the page, then paints the window into a file. */
    Path picture(Path file) {
        settle();
        BufferedImage picture = Edt.get(() -> {
            Container content = main.frame().getContentPane();
            BufferedImage image =
                    new BufferedImage(content.getWidth(), content.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D surface = image.createGraphics();
            content.printAll(surface);
            surface.dispose();
            return image;
        });
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            ImageIO.write(picture, "png", file.toFile());
            return file;
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    /** How many pictures the charts have drawn. */
    int pictures() {
        return Edt.get(() -> ((BenchController) main.current()).pictures());
    }

    /** Holds the threads that work and draw until the latch opens. */
    void stick(CountDownLatch until) {
        Runnable wait = () -> {
            try {
                until.await();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        };
        work.think(wait);
        work.draw(wait);
    }

    /** Lets every queue run dry twice: a page may ask for a picture, and a picture for another. */
    void settle() {
        for (int round = 0; round < 3; round++) {
            CountDownLatch empty = new CountDownLatch(2);
            work.think(empty::countDown);
            work.draw(empty::countDown);
            try {
                empty.await();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
            Edt.run(() -> {});
        }
    }

    @Override
    public void close() {
        Edt.run(() -> main.frame().dispose());
        source.close();
        work.close();
    }
}
