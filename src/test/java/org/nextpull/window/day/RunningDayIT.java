package org.nextpull.window.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.intake.folder.FolderSettings;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.live.Keeper;
import org.nextpull.live.LiveIntake;
import org.nextpull.live.LiveSession;
import org.nextpull.live.SessionFolders;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.Replay;
import org.nextpull.session.SessionInput;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.SampleDays;
import org.nextpull.window.bench.BenchPage;
import org.nextpull.window.bench.BenchPresenter;
import org.nextpull.window.look.Tone;

/** A running session behind the window: a folder into which the log of a sample day is copied. */
class RunningDayIT {
    private final BlockingQueue<DaySource.Moment> moments = new LinkedBlockingQueue<>();

    private static LiveSession.Setup setup(Path folder, Path captures) {
        return new LiveSession.Setup(
                SampleDays.input("hillclimb-e10-timing").plan(),
                new LiveIntake.Folder(new FolderSettings(folder, 300)),
                SessionFolders.Claim.of(captures).orElseThrow(),
                Optional.empty(),
                Keeper.none(),
                new SerialPorts(),
                LiveSession.Setup.Clock.system());
    }

    private DaySource.Moment until(Predicate<DaySource.Moment> isSo) throws InterruptedException {
        DaySource.@Nullable Moment moment = null;
        do {
            moment = moments.poll(30, TimeUnit.SECONDS);
            assertThat(moment).as("a moment that is as wanted").isNotNull();
        } while (moment != null && !isSo.test(moment));
        return java.util.Objects.requireNonNull(moment);
    }

    private static BenchPage page(DaySource.Moment moment) {
        return new BenchPresenter(UnitSystem.METRIC).page(moment);
    }

    @Test
    @Timeout(120)
    void whatArrivesIsShownAndWhatIsToldIsDone(@TempDir Path temp) throws Exception {
        Path folder = Files.createDirectory(temp.resolve("logs"));
        SessionInput sample = SampleDays.input("hillclimb-e10-timing");
        Replay whole = Replay.of(sample);
        int pulls = whole.whole().pulls().size();
        try (RunningDay day = new RunningDay(
                "the test folder", listener -> LiveSession.start(setup(folder, temp.resolve("session")), listener))) {
            day.start(moments::add);
            assertThat(page(until(moment -> true)).lead().figures().get(0).number())
                    .isEqualTo("20.0");
            Files.copy(Path.of("sample-logs/hillclimb-e10-timing.csv"), folder.resolve("day.csv"));
            DaySource.Moment end = until(moment -> moment.result().pulls().size() == pulls
                    && moment.result().verdict().isPresent()
                    && moment.result().verdict().equals(whole.whole().verdict()));
            BenchPage page = page(end);
            assertThat(page.cards()).hasSize(pulls);
            assertThat(page.link().sentence()).contains(folder.toString());
            assertThat(page.recording().tone()).isEqualTo(Tone.GOOD);
            assertThat(page.recording().sentence()).startsWith("Recording, ");
            day.tell(new OperatorAction.Strike(2, "throttle slipped"));
            until(moment -> moment.result().pulls().get(1).standing() == MeasuredPull.Status.STRUCK);
            Replay replay = day.sheet().replay();
            assertThat(replay.whole().pulls()).hasSize(pulls);
            assertThat(replay.steps()).isNotEmpty();
        }
    }
}
