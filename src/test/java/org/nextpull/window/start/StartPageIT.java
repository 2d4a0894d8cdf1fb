package org.nextpull.window.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Window;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.Await;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.live.LiveIntake;
import org.nextpull.plan.text.PlanText;
import org.nextpull.window.page.DrivenPage;
import org.nextpull.window.page.Work;

@Timeout(180)
class StartPageIT {
    private static final Dimension SMALL = new Dimension(1280, 660);

    private final BlockingQueue<StartController.Order> orders = new LinkedBlockingQueue<>();
    private final Logger logger = new Logger();
    private Work work = new Work();

    @BeforeEach
    void aDisplay() {
        assumeFalse(GraphicsEnvironment.isHeadless(), "no display");
        work = new Work();
    }

    @AfterEach
    void end() {
        work.close();
    }

    private DrivenPage open(Dimension size) {
        StartController.PortAccess ports = new StartController.PortAccess(
                () -> Outcome.of(List.of(
                        new SerialPorts.PortInfo("/dev/ttyUSB0", "Serial adapter"),
                        new SerialPorts.PortInfo("/dev/ttyACM1", "Data logger"))),
                settings -> Outcome.of(logger));
        return DrivenPage.open(foot -> new StartController(work, foot, ports, orders::add), size);
    }

    @Test
    void aPlanIsWrittenAndASessionStartedByKeysAlone(@TempDir Path folder) throws Exception {
        try (DrivenPage page = open(SMALL)) {
            page.until("the form", () -> page.find("Start (timing.start_deg)").isPresent());
            assertThat(page.said("Whether the session can start")).contains("Still to fill in: From, To, Start, ");
            Map.of(
                            "From (band.from_rpm)", "3000",
                            "To (band.to_rpm)", "6500",
                            "Start (timing.start_deg)", "20",
                            "Min advance (timing.least_deg)", "12",
                            "Max advance (timing.most_deg)", "36",
                            "Exhaust (limits.exhaust_c)", "9300")
                    .forEach(page::type);
            page.until(
                    "the slip",
                    () -> page.said("Exhaust (limits.exhaust_c)").equals("9300")
                            && page.said("Whether the session can start").contains("1 field to fill in or fix"));
            page.press("F8");
            page.type("Exhaust (limits.exhaust_c)", "930");
            page.until(
                    "no error", () -> page.said("Whether the session can start").contains("can be used"));
            page.press("ctrl S");
            Path file = folder.resolve("mine.toml");
            page.type("File", file.toString());
            page.enter("File");
            page.until("the file", () -> Files.exists(file));
            page.until("said so", () -> page.said("Plan").equals(file.toString()));
            page.type("Port or folder", "/dev/ttyACM1");
            page.press("F6");
            page.until("values", () -> page.said("What arrives").contains("Values arrive"));
            assertThat(page.said("Last line as it came")).contains(",180.");
            assertThat(page.nameless()).isEmpty();
            page.press("ctrl ENTER");
            StartController.Order order = orders.poll(30, TimeUnit.SECONDS);
            assertThat(order).isNotNull();
            assertThat(logger.isClosed).isTrue();
            assertThat(order.plan())
                    .isEqualTo(
                            PlanText.read(Files.readString(file), "x").value().orElseThrow());
            assertThat(((LiveIntake.Ports) order.intake()).ports().get(0).wire().device())
                    .isEqualTo("/dev/ttyACM1");
        }
    }

    @Test
    void aFolderAndAPlanAreChosenInsteadOfTyped(@TempDir Path folder) throws Exception {
        Path plan = Files.copy(Path.of("sweep-plans/hillclimb-knock.toml"), folder.resolve("mine.toml"));
        try (DrivenPage page = open(SMALL)) {
            page.pressAndGoOn("F2");
            approve(page, folder);
            page.until("the folder", () -> page.said("Port or folder").equals(folder.toString()));
            page.press("F6");
            page.until("the folder looked at", () -> page.said("What arrives").contains(folder.toString()));
            page.pressAndGoOn("ctrl O");
            approve(page, plan);
            page.until("the plan", () -> page.said("Plan").equals(plan.toString()));
        }
    }

    /** Waits for the dialog, picks what is wanted, and lets it close. */
    private static void approve(DrivenPage page, Path wanted) {
        page.until("the dialog", () -> dialog().isPresent());
        JFileChooser dialog = dialog().orElseThrow();
        DrivenPage.run(() -> {
            dialog.setSelectedFile(wanted.toFile());
            dialog.approveSelection();
        });
    }

    private static Optional<JFileChooser> dialog() {
        return Arrays.stream(Window.getWindows())
                .filter(Window::isShowing)
                .filter(JDialog.class::isInstance)
                .flatMap(window ->
                        Arrays.stream(((JDialog) window).getContentPane().getComponents()))
                .filter(JFileChooser.class::isInstance)
                .map(JFileChooser.class::cast)
                .findFirst();
    }

    @Test
    void thePageIsShownInEveryLook() throws IOException {
        try (DrivenPage page = open(SMALL)) {
            page.pressAndGoOn("ctrl O");
            approve(page, Path.of("sweep-plans/hillclimb-e10-timing.toml").toAbsolutePath());
            page.until("the plan", () -> page.said("Plan").contains("hillclimb"));
            page.type("Port or folder", "/dev/ttyACM1");
            page.press("F6");
            page.until("values", () -> page.said("What arrives").contains("Values arrive"));
            page.type("Exhaust (limits.exhaust_c)", "93O");
            page.type("Lean alarm (limits.lean_lambda)", "");
            page.until(
                    "an error", () -> page.said("Whether the session can start").contains("to fill in or fix"));
            page.pictures("start", work, () -> page.press("F8"));
        }
    }

    /** A port that sends a header and rows. */
    private static final class Logger implements Port {
        private int row = -1;
        private volatile boolean isClosed;

        @Override
        public int read(byte[] buffer) {
            isClosed = false;
            String text = row < 0
                    ? "x\r\ntime [s],rpm,torque [N.m],lambda 1,lambda 2,egt 1 [C],egt 2 [C],coolant [C],oil p [kPa],gear\r\n"
                    : row / 20.0 + "," + (3000 + row) + ",180." + row % 10 + ",0.872,0.881,812,820,88,401,4\r\n";
            row++;
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            System.arraycopy(bytes, 0, buffer, 0, bytes.length);
            Await.pass(Duration.ofMillis(10));
            return bytes.length;
        }

        @Override
        public void write(byte[] bytes) {
            // nothing is written to a logger
        }

        @Override
        public void close() {
            isClosed = true;
        }
    }
}
