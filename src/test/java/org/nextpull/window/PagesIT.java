package org.nextpull.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.WindowEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.Await;
import org.nextpull.app.NotebookAccess;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.live.SessionFolders;
import org.nextpull.window.look.Look;
import org.nextpull.window.page.Work;
import org.nextpull.window.start.StartController;

/** The whole window: a session is started from the form, seen on the bench, kept, opened again and compared, by keys alone. */
@Timeout(300)
class PagesIT {
    private static final Path SCREENS = Path.of(System.getProperty("nextpull.screens", "target/screens"));

    @TempDir
    private Path folder = Path.of("unset");

    private final Work work = new Work();
    private final List<AutoCloseable> open = new ArrayList<>();
    private Container root = new Container();
    private JFrame frame = new JFrame();

    @BeforeAll
    static void needDisplay() {
        Display.need();
    }

    @AfterEach
    void end() throws Exception {
        for (AutoCloseable one : open) {
            one.close();
        }
        work.close();
    }

    private void open(Optional<String> plan) {
        StartController.PortAccess ports = new StartController.PortAccess(
                () -> Outcome.of(List.of(new SerialPorts.PortInfo("COM9", "nobody"))), new SerialPorts());
        WindowProgram.Setup setup = new WindowProgram.Setup(
                Optional.empty(), plan, new NotebookAccess(folder.resolve("notebook.db"), true), "test", Look.plain());
        Edt.run(() -> {
            MainFrame main = new MainFrame(setup.look(), new SoundLog());
            open.add(WindowPages.fill(main, setup, work, ports));
            main.open(new Dimension(1280, 720));
            root = main.root();
            frame = main.frame();
            open.add(() -> Edt.run(() -> main.frame().dispose()));
        });
        click("I have read this");
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

    private Optional<Component> find(String name) {
        return all(root).stream()
                .filter(Component::isShowing)
                .filter(part -> part.getAccessibleContext() != null
                        && name.equals(part.getAccessibleContext().getAccessibleName()))
                .findFirst();
    }

    private String said(String name) {
        return Edt.get(() -> find(name)
                .map(part -> part instanceof JTextComponent text
                        ? text.getText()
                        : String.valueOf(part.getAccessibleContext().getAccessibleDescription()))
                .orElse(""));
    }

    private void click(String name) {
        Await.until(name, () -> Edt.get(() -> find(name).isPresent()));
        Edt.run(() -> ((AbstractButton) find(name).orElseThrow()).doClick(0));
    }

    private void type(String name, String text) {
        Await.until(name, () -> Edt.get(() -> find(name).isPresent()));
        Edt.run(() -> ((JTextField) find(name).orElseThrow()).setText(text));
    }

    private void enter(String name) {
        Edt.run(() -> ((JTextField) find(name).orElseThrow()).postActionEvent());
    }

    /** Does what the innermost shown part does on a key. */
    private void press(String stroke) {
        Edt.run(() -> {
            List<Component> parts = new ArrayList<>(List.of(root));
            parts.addAll(all(root));
            JComponent target = parts.stream()
                    .filter(Component::isShowing)
                    .filter(JComponent.class::isInstance)
                    .map(JComponent.class::cast)
                    .filter(part -> bound(part, stroke).startsWith("nextpull"))
                    .reduce((outer, inner) -> inner)
                    .orElseThrow(() -> new AssertionError("no part takes " + stroke));
            target.getActionMap().get(bound(target, stroke)).actionPerformed(new ActionEvent(target, 0, stroke));
        });
    }

    private static String bound(JComponent part, String stroke) {
        return String.valueOf(
                part.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(KeyStroke.getKeyStroke(stroke)));
    }

    private void picture(String name) throws IOException {
        BufferedImage image = Edt.get(() -> {
            BufferedImage made = new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D surface = made.createGraphics();
            root.printAll(surface);
            surface.dispose();
            return made;
        });
        Files.createDirectories(SCREENS);
        ImageIO.write(image, "png", SCREENS.resolve(name + ".png").toFile());
    }

    @Test
    void aSessionIsStartedSeenKeptOpenedAgainAndCompared() throws Exception {
        Path logs = Files.createDirectory(folder.resolve("logs"));
        open(Optional.of("sweep-plans/hillclimb-manifold.toml"));
        Await.until("the plan", () -> said("Plan").contains("hillclimb-manifold"));
        click("Folder of logs");
        type("Port or folder", logs.toString());
        press("F6");
        Await.until("the folder", () -> said("What arrives").contains("No log in this folder yet"));
        picture("window-start");
        press("ctrl ENTER");
        Await.until("the folder being watched", () -> said("Link").contains("connected"));
        // a file that is there at the first look counts as one from before the session
        Await.pass(Duration.ofMillis(1500));
        Files.copy(Path.of("sample-logs/hillclimb-manifold.csv"), logs.resolve("day.csv"));
        Await.until(
                "the pulls",
                () -> Edt.get(() -> find("Pulls")
                        .map(list -> ((javax.swing.JList<?>) list).getModel().getSize() >= 8)
                        .orElse(false)));
        picture("window-bench-live");
        press("ctrl Q");
        Await.until("the question", () -> Edt.get(() -> find("Answer").isPresent()));
        assertThat(Edt.get(frame::isDisplayable))
                .as("a recording is not ended by a key")
                .isTrue();
        press("ESCAPE");
        Await.until("the session going on", () -> Edt.get(() -> find("Answer").isEmpty()));
        press("3");
        Await.until("the session kept", () -> said("Sessions").contains("pulls used: 8 of 8"));
        picture("window-past");
        press("ENTER");
        Await.until("the question", () -> Edt.get(() -> find("Answer").isPresent()));
        press("ENTER");
        Await.until("the session on the bench", () -> said("Link").contains("session 1"));
        press("3");
        press("R");
        Await.until("the session gone on with", () -> said("Link").contains("connected"));
        assertThat(SessionFolders.beside(folder.resolve("notebook.db")).newest())
                .hasValueSatisfying(running -> assertThat(SessionFolders.beside(folder.resolve("notebook.db"))
                                .isRunning(running))
                        .isTrue());
        press("4");
        press("A");
        type("Log, folder, or session:3", "session:1");
        enter("Log, folder, or session:3");
        Await.until("the verdict", () -> said("Verdict").contains("\"after\" vs \"before\""));
        press("F1");
        Await.until(
                "the keys of that page",
                () -> Edt.get(() -> find("A: add a log or session").isPresent()));
        picture("window-keys");
        press("ESCAPE");
        press("ctrl E");
        press("ENTER");
        Await.until("the end of the session", () -> said("Message").startsWith("Session ended."));
        assertThat(said("Urgent")).as("what is no longer true").isEmpty();
    }

    @Test
    void aPlanWithChangesThatAreInNoFileIsNotDroppedByClosing() throws Exception {
        open(Optional.empty());
        Await.until(
                "the form",
                () -> Edt.get(() -> find("Exhaust (limits.exhaust_c)").isPresent()));
        type("Exhaust (limits.exhaust_c)", "930");
        Edt.run(() -> frame.dispatchEvent(new WindowEvent(frame, WindowEvent.WINDOW_CLOSING)));
        Await.until("the question", () -> Edt.get(() -> find("Answer").isPresent()));
        assertThat(Edt.get(frame::isDisplayable)).isTrue();
        press("ENTER");
        Await.until("the end", () -> !Edt.get(frame::isDisplayable));
    }

    @Test
    void aWindowThatHoldsNothingClosesAtOnce() {
        open(Optional.empty());
        press("ctrl Q");
        Await.until("the end", () -> !Edt.get(frame::isDisplayable));
    }
}
