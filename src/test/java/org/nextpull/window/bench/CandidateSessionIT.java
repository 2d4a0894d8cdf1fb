package org.nextpull.window.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.Await;
import org.nextpull.advice.Action;
import org.nextpull.advice.Reason;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.folder.FolderSettings;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.live.Keeper;
import org.nextpull.live.LiveIntake;
import org.nextpull.live.LiveSession;
import org.nextpull.live.SessionFolders;
import org.nextpull.report.Shown;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.SampleDays;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.day.RunningDay;
import org.nextpull.window.page.FootBar;
import org.nextpull.window.page.Work;

/** The shipped day of candidates, run as a session: what is fitted is only known from the operator who confirms each change-over. */
class CandidateSessionIT {
    private static final Path LOG = Path.of("sample-logs", "hillclimb-fuels.csv");

    private final BlockingQueue<DaySource.Moment> moments = new LinkedBlockingQueue<>();
    private final List<OperatorAction> told = new CopyOnWriteArrayList<>();

    /** The rows of one fuel in a row, without the column that names it. */
    private record Block(String label, String text) {}

    private static List<Block> blocks() throws Exception {
        List<String> lines = Files.readAllLines(LOG).stream()
                .filter(line -> !line.startsWith("#"))
                .toList();
        String header = withoutLabel(lines.get(0));
        List<Block> blocks = new ArrayList<>();
        StringBuilder text = new StringBuilder(header);
        String label = label(lines.get(1));
        for (String line : lines.subList(1, lines.size())) {
            if (!label(line).equals(label)) {
                blocks.add(new Block(label, text.toString()));
                text = new StringBuilder(header);
                label = label(line);
            }
            text.append(withoutLabel(line));
        }
        blocks.add(new Block(label, text.toString()));
        return blocks;
    }

    private static String label(String line) {
        return line.substring(line.lastIndexOf(',') + 1);
    }

    private static String withoutLabel(String line) {
        return line.substring(0, line.lastIndexOf(',')) + "\n";
    }

    private DaySource.Moment until(String what, Predicate<DaySource.Moment> isSo) throws InterruptedException {
        Optional<DaySource.Moment> last = Optional.empty();
        Optional<DaySource.Moment> moment = next();
        while (moment.isPresent() && !isSo.test(moment.get())) {
            last = moment;
            moment = next();
        }
        String before = last.map(one -> board(one).lead().spoken()).orElse("nothing");
        return moment.orElseThrow(() -> new AssertionError("never came: " + what + "; before: " + before));
    }

    private Optional<DaySource.Moment> next() throws InterruptedException {
        return Optional.ofNullable(moments.poll(30, TimeUnit.SECONDS));
    }

    private static CandidateBoard board(DaySource.Moment moment) {
        return CandidateBoard.of(moment, new Shown(UnitSystem.METRIC));
    }

    private static Optional<String> fittedNext(DaySource.Moment moment) {
        return moment.result()
                .verdict()
                .map(verdict -> verdict.advice().reason())
                .filter(Reason.ChangeOver.class::isInstance)
                .map(Reason.ChangeOver.class::cast)
                .map(Reason.ChangeOver::label);
    }

    /** What comes into the folder before it was looked at is no part of the session. */
    private static boolean hasLooked(DaySource.Moment moment) {
        return moment.running().stream()
                .flatMap(state -> state.notices().stream())
                .anyMatch(notice -> notice.finding().code() == FindingCode.FOLDER_LOGS_BEFORE);
    }

    /** Ticks the checklist until the day has heard of it. */
    private void confirm(CandidatesPage page) throws Exception {
        int before = told.size();
        for (int tick = 0; tick < 500 && told.size() == before; tick++) {
            EventQueue.invokeAndWait(() -> page.keys().get(0).action().run());
            Await.pass(Duration.ofMillis(10));
        }
        assertThat(told).hasSize(before + 1);
    }

    @Test
    @Timeout(120)
    void aDayOfCandidatesIsRunThroughItsChangeOversToTheVerdict(@TempDir Path temp) throws Exception {
        Path folder = Files.createDirectory(temp.resolve("logs"));
        Files.writeString(folder.resolve("yesterday.csv"), "rpm\n3000\n");
        LiveSession.Setup setup = new LiveSession.Setup(
                SampleDays.input("hillclimb-fuels").plan(),
                new LiveIntake.Folder(new FolderSettings(folder, 100)),
                SessionFolders.Claim.of(temp.resolve("session")).orElseThrow(),
                Optional.empty(),
                Keeper.none(),
                new SerialPorts(),
                LiveSession.Setup.Clock.system());
        List<Block> blocks = blocks();
        try (Work work = new Work();
                RunningDay day = new RunningDay("the bench", listener -> LiveSession.start(setup, listener))) {
            CandidatesPage page = new CandidatesPage(work, new FootBar(), act -> {
                told.add(act);
                day.tell(act);
            });
            Work.Latest<DaySource.Moment> latest = new Work.Latest<>(work::think, page::show);
            day.start(moment -> {
                latest.give(moment);
                moments.add(moment);
            });
            until("a look at the folder", CandidateSessionIT::hasLooked);
            for (int number = 0; number < blocks.size(); number++) {
                Block block = blocks.get(number);
                if (number > 0) {
                    until(
                            "the change-over to " + block.label(),
                            moment -> fittedNext(moment).equals(Optional.of(block.label())));
                    confirm(page);
                    until("what is fitted", moment -> fittedNext(moment).isEmpty());
                }
                Path whole = temp.resolve("block " + number + ".csv");
                Files.writeString(whole, block.text());
                Files.move(whole, folder.resolve(whole.getFileName()));
            }
            DaySource.Moment end = until(
                    "the end",
                    moment -> moment.result()
                            .verdict()
                            .filter(verdict -> verdict.advice().action() == Action.STOP)
                            .isPresent());
            judge(end, blocks);
        }
    }

    private void judge(DaySource.Moment end, List<Block> blocks) {
        assertThat(told).hasSize(blocks.size() - 1).allMatch(OperatorAction.Next.class::isInstance);
        List<String> fitted = new ArrayList<>();
        for (MeasuredPull pull : end.result().pulls()) {
            String label = pull.setting().label().orElse("?");
            boolean isNew = fitted.isEmpty() || !fitted.get(fitted.size() - 1).equals(label);
            // the first pull after a change-over flushes the line
            assertThat(pull.isUsed()).as("pull " + pull.number()).isEqualTo(!isNew || fitted.isEmpty());
            if (isNew) {
                fitted.add(label);
            }
        }
        assertThat(fitted).isEqualTo(blocks.stream().map(Block::label).toList());
        assertThat(board(end).sentences()).first().asString().contains("\"alcohol\"", "over \"pump\"");
    }
}
