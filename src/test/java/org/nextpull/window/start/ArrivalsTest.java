package org.nextpull.window.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.Await;
import org.nextpull.channel.LogHints;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.folder.FolderSettings;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.live.LiveIntake;
import org.nextpull.live.PlanPorts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;

@Timeout(60)
class ArrivalsTest {
    private static final String COM = "COM3";
    private static final Shown METRIC = new Shown(UnitSystem.METRIC);

    private final BlockingQueue<Arrivals.Page> pages = new LinkedBlockingQueue<>();

    private static ArrivalTime at(double seconds) {
        return new ArrivalTime((long) (seconds * 1e9), (long) (seconds * 1e3));
    }

    private static String rows(int from, int to) {
        StringBuilder rows = new StringBuilder();
        for (int row = from; row < to; row++) {
            rows.append(row * 50 / 1000.0).append(',').append(3000 + row).append(",180.5,900,7\r\n");
        }
        return rows.toString();
    }

    private static ArrivalsChain chain(UnitSystem units) {
        return new ArrivalsChain(
                List.of(WireSource.port(COM, WireSource.LineSettings.withHeaderLine(), "115200 8N1")),
                LogHints.none(),
                new Shown(units));
    }

    private static Arrivals.Page.Source fed(UnitSystem units) {
        ArrivalsChain chain = chain(units);
        chain.accept(new Arrival.Connected(COM, at(0)));
        chain.accept(Chunk.of(COM, at(0.1), "half,a,line\r\ntime [s],rpm,torque [N.m],egt 1 [C],gear\r\n"));
        for (int second = 1; second <= 10; second++) {
            chain.accept(Chunk.of(COM, at(second), rows(20 * (second - 1), 20 * second)));
        }
        return chain.page(at(10.2)).sources().get(0);
    }

    @Test
    void valuesArriveWithTheirUnitsAndTheRawLine() {
        Arrivals.Page.Source source = fed(UnitSystem.METRIC);
        assertThat(source.isGood()).isTrue();
        assertThat(source.state()).isEqualTo("Values arrive, 20 lines a second.");
        assertThat(source.raw()).isEqualTo("9.95,3199,180.5,900,7");
        assertThat(source.columns())
                .extracting(Arrivals.Page.Column::header, Arrivals.Page.Column::meaning, Arrivals.Page.Column::value)
                .contains(
                        org.assertj.core.groups.Tuple.tuple("rpm", "engine speed", "3199 rpm"),
                        org.assertj.core.groups.Tuple.tuple("torque [N.m]", "torque", "180.5 N·m"),
                        org.assertj.core.groups.Tuple.tuple("gear", "", ""));
    }

    @Test
    void valuesArriveInUsUnits() {
        assertThat(fed(UnitSystem.US).columns())
                .extracting(Arrivals.Page.Column::value)
                .contains("133.1 lb-ft", "1652 °F");
    }

    @Test
    void silenceAndALostPortAreSaid() {
        ArrivalsChain chain = chain(UnitSystem.METRIC);
        assertThat(chain.page(at(0)).sources().get(0).state()).startsWith("Not connected");
        chain.accept(new Arrival.Connected(COM, at(0.1)));
        assertThat(chain.page(at(0.2)).sources().get(0).state()).isEqualTo("Connected; nothing arrived yet.");
        chain.accept(Chunk.of(COM, at(1), "\u0001\u0002??\n@@\n"));
        assertThat(chain.page(at(1.1)).sources().get(0).state()).contains("not readable yet");
        assertThat(chain.page(at(1.1)).sources().get(0).raw()).isEqualTo("@@");
        assertThat(chain.page(at(6)).sources().get(0).state()).isEqualTo("Connected, but silent for 5 s.");
        chain.accept(new Arrival.Lost(COM, at(7), Arrival.Cause.UNPLUGGED, 0));
        Arrivals.Page lost = chain.page(at(7.1));
        assertThat(lost.isGood()).isFalse();
        assertThat(lost.sources().get(0).state()).startsWith("Not connected");
        assertThat(lost.said()).anyMatch(said -> said.sentence().contains(COM));
        chain.accept(new Arrival.Connected(COM, at(8)));
        assertThat(chain.page(at(8.1)).said()).as("no longer true").isEmpty();
    }

    @Test
    void whatCannotBeReadIsWrittenOut() {
        SourceWatch.RawLine raw = new SourceWatch.RawLine();
        raw.take("a\tb\u0007\n".getBytes(StandardCharsets.UTF_8));
        assertThat(raw.text()).isEqualTo("a\u2192b<07>");
        raw.take("x".repeat(2000).getBytes(StandardCharsets.UTF_8));
        raw.take("\n".getBytes(StandardCharsets.UTF_8));
        assertThat(raw.text()).hasSize(404).endsWith(" ...");
        assertThat(raw.lines()).isEqualTo(2);
    }

    @Test
    void aFolderShowsItsNewestLogAndThenTheOneThatIsWritten(@TempDir Path folder) throws Exception {
        Files.writeString(folder.resolve("old.csv"), "rpm,torque [N.m]\n1000,1\n");
        Files.setLastModifiedTime(folder.resolve("old.csv"), java.nio.file.attribute.FileTime.fromMillis(1000));
        Files.writeString(folder.resolve("new.csv"), "time [s],rpm,torque [N.m],egt 1 [C],gear\n" + rows(0, 60));
        Files.writeString(folder.resolve("notes.pdf"), "no log");
        LiveIntake intake = new LiveIntake.Folder(FolderSettings.usual(folder));
        try (Arrivals arrivals = Arrivals.start(intake, LogHints.none(), refusing(), METRIC, pages::add)) {
            assertThat(arrivals).isNotNull();
            Arrivals.Page page = await(Arrivals.Page::isGood);
            assertThat(page.sources().get(0).state()).startsWith("Read last: new.csv");
            assertThat(page.sources().get(0).columns()).hasSize(5);
        }
    }

    @Test
    void aPortIsReadAndGivenBack() throws Exception {
        SweepPlan plan = SweepPlan.defaults();
        LiveIntake intake = PlanPorts.of(plan, Optional.of(COM)).value().orElseThrow();
        Talking port = new Talking();
        try (Arrivals arrivals =
                Arrivals.start(intake, plan.log().hints(), settings -> Outcome.of(port), METRIC, pages::add)) {
            assertThat(arrivals).isNotNull();
            Arrivals.Page page = await(Arrivals.Page::isGood);
            assertThat(page.sources().get(0).columns())
                    .anyMatch(column -> !column.value().isEmpty());
        }
        assertThat(port.closed).isTrue();
    }

    @Test
    void aPortThatCannotBeOpenedSaysWhy() throws Exception {
        LiveIntake intake =
                PlanPorts.of(SweepPlan.defaults(), Optional.of(COM)).value().orElseThrow();
        try (Arrivals arrivals = Arrivals.start(intake, LogHints.none(), refusing(), METRIC, pages::add)) {
            assertThat(arrivals).isNotNull();
            Arrivals.Page page = await(shown -> !shown.said().isEmpty());
            assertThat(page.said().get(0).isError()).isTrue();
            assertThat(page.said().get(0).sentence()).contains(COM);
        }
    }

    private Arrivals.Page await(Predicate<Arrivals.Page> wanted) throws InterruptedException {
        while (true) {
            Arrivals.Page page = pages.poll(30, TimeUnit.SECONDS);
            assertThat(page).as("a page in time").isNotNull();
            if (wanted.test(page)) {
                return page;
            }
        }
    }

    private static Port.Opener refusing() {
        return settings -> Outcome.failed(Finding.error(
                FindingCode.WIRE_NOT_OPENED,
                Place.inFile(COM),
                Detail.of("settings", settings.port().text()),
                Detail.of("error", "none")));
    }

    /** A port that sends a header and then a row at each reading. */
    private static final class Talking implements Port {
        private int row = -1;
        private volatile boolean closed;

        @Override
        public int read(byte[] buffer) throws IOException {
            String text = row < 0 ? "x\r\ntime [s],rpm,torque [N.m],egt 1 [C],gear\r\n" : rows(row, row + 1);
            row++;
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            System.arraycopy(bytes, 0, buffer, 0, bytes.length);
            Await.pass(Duration.ofMillis(2));
            return bytes.length;
        }

        @Override
        public void write(byte[] bytes) {
            // nothing is written to a logger
        }

        @Override
        public void close() {
            closed = true;
        }
    }
}
