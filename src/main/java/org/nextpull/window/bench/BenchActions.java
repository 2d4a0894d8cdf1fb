package org.nextpull.window.bench;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.nextpull.advice.Advice;
import org.nextpull.app.DaySheet;
import org.nextpull.channel.EngineSetting;
import org.nextpull.finding.Outcome;
import org.nextpull.live.LiveState;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.report.ActText;
import org.nextpull.report.HandAct;
import org.nextpull.report.SettingDoubt;
import org.nextpull.report.Shown;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.SessionResult;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.page.FootBar;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.Question;
import org.nextpull.window.page.SheetExport;
import org.nextpull.window.page.Work;

/** The keys of the bench page: what can be asked of a day, of the pull that is selected, and of a replay. */
final class BenchActions {
    private final DaySource source;
    private final Work work;
    private final FootBar foot;
    private final Supplier<Optional<BenchPage.PullCard>> selected;
    private final Supplier<Optional<DaySource.Moment>> moment;
    private final Supplier<DaySheet.Order> sheets;

    /**
     * The actions.
     *
     * @param selected the pull that is selected
     * @param moment the day as it is shown
     * @param sheets how sheets are written, in the units that are shown
     */
    BenchActions(
            DaySource source,
            Work work,
            FootBar foot,
            Supplier<Optional<BenchPage.PullCard>> selected,
            Supplier<Optional<DaySource.Moment>> moment,
            Supplier<DaySheet.Order> sheets) {
        this.source = source;
        this.work = work;
        this.foot = foot;
        this.selected = selected;
        this.moment = moment;
        this.sheets = sheets;
    }

    List<KeyCommand> keys() {
        List<KeyCommand> keys = new ArrayList<>();
        source.player().ifPresent(player -> keys.addAll(keys(player)));
        keys.add(new KeyCommand(List.of(), "Left, Right", "select a pull", () -> {}));
        Stream.of(HandAct.values())
                .filter(act -> source.player().isEmpty() || !act.isAhead())
                .forEach(act -> keys.add(KeyCommand.of(act.key(), act.key(), act.what(), () -> ask(act))));
        keys.add(new KeyCommand(
                List.of("Y", "ctrl C"), "Y, Ctrl C", "copy the map as tab-separated text", () -> day(this::copyMap)));
        keys.add(KeyCommand.of("E", "E", "export sheet, CSV and JSON", this::export));
        return keys;
    }

    private static List<KeyCommand> keys(DaySource.Player player) {
        return List.of(
                KeyCommand.of("SPACE", "Space", "replay: pause, go on, or begin again at the end", player::pauseOrGoOn),
                KeyCommand.of("N", "N", "replay: next pull", player::forth),
                KeyCommand.of("B", "B", "replay: back by a pull", player::back),
                new KeyCommand(
                        List.of("PLUS", "shift PLUS", "shift EQUALS", "ADD"), "+", "replay: faster", player::faster),
                new KeyCommand(List.of("MINUS", "SUBTRACT"), "-", "replay: slower", player::slower));
    }

    private void ask(HandAct act) {
        switch (act) {
            case SETTING -> day(this::set);
            case KNOCK -> pull(pull -> questions().knock(pull.number()));
            case CORRECT -> pull(questions()::correct);
            case EXCLUDE -> pull(this::strike);
            case OVERRIDE -> pull(pull -> questions().lift(pull.number()));
            case NOTE ->
                foot.ask(questions()
                        .note(selected.get().stream()
                                .mapToInt(BenchPage.PullCard::number)
                                .findFirst()));
            case LIMIT -> day(now -> questions().limit(plan(now)));
            case UNWATCHED -> day(now -> questions().ownWatch(now.result().unwatchedNow()));
            case FITTED -> foot.ask(questions().fitted());
        }
    }

    private BenchQuestions questions() {
        return new BenchQuestions(this::tell, sheets.get().shown());
    }

    /** Hands on what was done by hand, and says back how it was understood. */
    private void tell(OperatorAction act) {
        source.tell(act);
        String taken = ActText.taken(act);
        foot.say(doubt(act).map(doubt -> taken + " " + doubt).orElse(taken));
    }

    private Optional<String> doubt(OperatorAction act) {
        return act instanceof OperatorAction.Setting set
                ? moment.get().flatMap(now -> new SettingDoubt(plan(now), now.result()).of(set.setting()))
                : Optional.empty();
    }

    private void pull(Function<MeasuredPull, Question> question) {
        day(now -> selected.get()
                .flatMap(card -> now.result().pull(card.number()))
                .map(one -> question.apply(one.pull()))
                .orElse(null));
    }

    private void day(Function<DaySource.Moment, @Nullable Question> question) {
        Consumer<Question> ask = foot::ask;
        moment.get().map(question).ifPresent(ask);
    }

    private @Nullable Question copyMap(DaySource.Moment now) {
        Optional<MapStrip> map = MapStrip.of(now.result());
        map.ifPresent(found -> Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(new StringSelection(found.tabbed()), null));
        foot.say(
                map.isPresent()
                        ? "Copied the map: a line of speeds, a line of degrees, tabs between."
                        : "The setting is not a map.");
        return null;
    }

    private Question strike(MeasuredPull pull) {
        return pull.standing() == MeasuredPull.Status.STRUCK
                ? questions().restore(pull.number())
                : questions().strike(pull.number());
    }

    private static SweepPlan plan(DaySource.Moment now) {
        return now.running().map(LiveState::plan).orElse(now.result().plan());
    }

    private Question set(DaySource.Moment now) {
        SessionResult result = now.result();
        Optional<EngineSetting> proposal = result.advice().flatMap(Advice::setting);
        boolean offset = result.plan()
                .timing()
                .filter(timing -> timing.sets() == TimingPlan.Sets.OFFSET)
                .isPresent();
        int next = now.running().map(LiveState::nextPull).orElse(result.pulls().size() + 1);
        return questions()
                .set(
                        next,
                        proposal.flatMap(wanted -> wanted.advance().or(wanted::offset))
                                .map(value -> Shown.fixed(value.deg(), 1)),
                        proposal.flatMap(EngineSetting::lambda).map(value -> Shown.fixed(value.value(), 3)),
                        offset);
    }

    private void export() {
        new SheetExport(work, foot).ask("", "sheet", sheets.get(), () -> Outcome.of(source.sheet()));
    }
}
