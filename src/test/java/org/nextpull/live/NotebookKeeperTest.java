package org.nextpull.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.Notebook;
import org.nextpull.notebook.SessionStart;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.session.OperatorAction;
import org.nextpull.unit.Advance;

/** A session kept in a real notebook, as the running day asks for it. */
class NotebookKeeperTest {
    private static final Instant START = Instant.parse("2026-11-25T08:00:00Z");
    private static final SweepPlan PLAN = HandDriven.plan("");

    private static SessionStart start() {
        return new SessionStart(START, "test", "plan.toml", PlanText.write(PLAN), Optional.of("/captures/1"));
    }

    private static LiveSession.Setup setup(Keeper keeper) {
        LiveSession.Setup setup = HandDriven.setup(PLAN);
        return new LiveSession.Setup(
                setup.plan(), setup.intake(), setup.claim(), Optional.empty(), keeper, setup.opener(), setup.clock());
    }

    private static HandDriven day(Keeper keeper) {
        return new HandDriven(
                        setup(keeper),
                        (rpm, torque, throttle) -> HandDriven.text("%.1f,%.2f,%.0f", rpm, torque, throttle))
                .begun("rpm,torque [Nm],throttle [%]");
    }

    private static KeptSession kept(Path file, long id) throws Exception {
        try (Notebook notebook = Notebook.openReadOnly(file)) {
            return notebook.session(id);
        }
    }

    @Test
    void whatIsKeptGivesTheIdenticalResult(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("notebook.db");
        NotebookKeeper keeper = NotebookKeeper.open(file, start());
        HandDriven bench = day(keeper);
        bench.pull(1);
        bench.pull(1.01);
        bench.tell(new OperatorAction.Strike(1, "wrong gear"));
        bench.tell(new OperatorAction.Next(Optional.of("B"), Optional.empty()));
        bench.pull(1.02);
        LiveState state = bench.state();
        KeptSession kept = kept(file, keeper.session().getAsLong());
        assertThat(kept.acts())
                .extracting(act -> act.act())
                .isEqualTo(state.acts().all());
        assertThat(kept.result().pulls()).isEqualTo(state.result().pulls());
        assertThat(kept.result().verdict()).isEqualTo(state.result().verdict());
        keeper.close(START.plusSeconds(60));
        assertThat(kept(file, 1).summary().closed()).contains(START.plusSeconds(60));
        assertThat(keeper.news()).isEmpty();
    }

    @Test
    void aSessionThatIsGoneOnWithIsTheSameOneAndNoActIsKeptTwice(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("notebook.db");
        NotebookKeeper keeper = NotebookKeeper.open(file, start());
        HandDriven bench = day(keeper);
        bench.pull(1);
        bench.tell(new OperatorAction.Strike(1, "wrong gear"));
        LiveState before = bench.state();
        NotebookKeeper again = NotebookKeeper.open(file, start());
        assertThat(again.session()).isEqualTo(keeper.session());
        HandDriven resumed = bench.replayed(setup(again));
        resumed.pull(1.01);
        KeptSession kept = kept(file, again.session().getAsLong());
        assertThat(kept.acts()).hasSize(resumed.state().acts().all().size());
        assertThat(kept.acts().subList(0, 2))
                .extracting(act -> act.act())
                .isEqualTo(before.acts().all());
        assertThat(kept.result().pulls()).isEqualTo(resumed.state().result().pulls());
    }

    @Test
    void anActThatTheCaptureLostDoesNotStandForTheOneThatIsSettledInItsPlace(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("notebook.db");
        OperatorAction unknown = new OperatorAction.Setting(1, AskedSetting.none(), false);
        OperatorAction assumed = new OperatorAction.Setting(
                1,
                AskedSetting.ofNumbers(
                        EngineSetting.ofNumbers(Optional.of(Advance.ofDeg(22)), Optional.empty(), Optional.empty())),
                true);
        NotebookKeeper.open(file, start()).act(START, unknown);
        NotebookKeeper again = NotebookKeeper.open(file, start());
        again.earlier(START, List.of(assumed));
        OperatorAction strike = new OperatorAction.Strike(1, "wrong gear");
        again.act(START, strike);
        assertThat(kept(file, 1).acts()).extracting(act -> act.act()).containsExactly(unknown, assumed, strike);
    }

    @Test
    void aNotebookThatCannotBeWrittenIsSaidAndTheSessionGoesOnAdvising(@TempDir Path folder) throws Exception {
        Path blocked = Files.writeString(folder.resolve("not-a-folder"), "x");
        NotebookKeeper keeper = NotebookKeeper.open(blocked.resolve("notebook.db"), start());
        HandDriven bench = day(keeper);
        assertThat(bench.state().failing()).hasSize(1);
        assertThat(keeper.news()).extracting(Finding::isError).containsExactly(true);
        bench.pull(1);
        assertThat(bench.state().result().pulls()).hasSize(1);
        assertThat(bench.state().advice()).isPresent();
        assertThat(keeper.session()).isEmpty();
        Files.delete(blocked);
        bench.idle(10);
        bench.pull(1.01);
        assertThat(bench.state().failing()).isEmpty();
        assertThat(keeper.news()).extracting(Finding::code).contains(FindingCode.LIVE_NOTEBOOK_KEEPS_AGAIN);
        KeptSession kept = kept(blocked.resolve("notebook.db"), keeper.session().getAsLong());
        assertThat(kept.result().pulls()).isEqualTo(bench.state().result().pulls());
    }

    @Test
    void aNotebookThatIsLostIsBegunAnewWithAllOfTheSession(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("notebook.db");
        NotebookKeeper keeper = NotebookKeeper.open(file, start());
        HandDriven bench = day(keeper);
        bench.pull(1);
        bench.tell(new OperatorAction.Strike(1, "wrong gear"));
        try (var files = Files.list(folder)) {
            for (Path each : files.toList()) {
                Files.delete(each);
            }
        }
        bench.pull(1.01);
        assertThat(keeper.news()).extracting(Finding::code).contains(FindingCode.LIVE_NOTEBOOK_LOST);
        KeptSession kept = kept(file, keeper.session().getAsLong());
        assertThat(kept.result().pulls()).isEqualTo(bench.state().result().pulls());
    }
}
