package org.nextpull.live;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.nextpull.advice.Advice;
import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.channel.Block;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.fit.Experience;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.WireChain;
import org.nextpull.plan.SweepPlan;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.OperatorActions;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;

/**
 * A running day: takes what arrives, the operator's acts among it, and the passing of time; has no thread and no clock of its own. What
 * becomes of it depends on the arrivals alone, so a capture of them gives the identical day.
 */
final class LiveDay {
    /** How long rows that were measured before the data stopped are waited for. */
    private static final double CUT_WAIT_S = 1;

    private static final double NS_A_SECOND = 1e9;
    private static final int MOST_NOTICES = 200;

    private final SweepPlan plan;
    private final Optional<Experience> experience;
    private final AdviceDesk desk;
    private final DayEvents events;
    private final WireChain chain;
    private final DayPulls pulls;
    private final LiveRows rows;
    private final LinkStates links;
    private final OperatorLines operator = new OperatorLines();
    private final CoolDown coolDown = new CoolDown();
    private final ChannelCoverage coverage;
    private final Deque<LiveState.Notice> notices = new ArrayDeque<>();
    private OperatorActions acts = OperatorActions.none();

    /** The plan with its limits as they stand now. */
    private SweepPlan limited;

    private ArrivalTime now;
    private SessionResult result;
    private boolean replaying;
    /** What had been said when each pull was found in the captures: an act that came later is not about it. */
    private final List<OperatorActions> saidBefore = new ArrayList<>();

    private int settled;
    private int announced;

    LiveDay(LiveSession.Setup setup, ArrivalTime start, AdviceDesk desk, DayEvents events) {
        DayIntake intake = new DayIntake(setup.intake());
        this.plan = setup.plan();
        this.experience = setup.experience();
        this.now = start;
        this.desk = desk;
        this.events = events;
        this.chain = new WireChain(intake.sources(), plan.log().hints(), new ColumnReader(), new FromChain());
        this.pulls = intake.pulls(plan, AlarmWatch.Rules.of(plan), chain);
        this.rows = new LiveRows(intake.sources().size(), plan);
        this.coverage = new ChannelCoverage(intake, chain);
        this.links = new LinkStates(intake.names());
        this.limited = plan;
        this.result = AdviceDesk.evaluate(input(), List.of()).value().orElseThrow();
    }

    /** What follows was captured before and is gone through again: nothing is told and nothing is worked out until {@link #goOn}. */
    void replaying() {
        replaying = true;
    }

    /** Takes what arrived next. */
    void accept(Arrival arrival) {
        pass(arrival.at());
        noteFound();
        if (arrival.source().equals(OperatorLines.SOURCE)) {
            if (arrival instanceof Chunk chunk) {
                operator.acts(chunk).forEach(this::take);
            }
        } else {
            links.see(arrival);
            pulls.see(arrival);
            rows.see(arrival);
            chain.accept(arrival);
        }
        look();
    }

    private void noteFound() {
        coolDown.see(pulls.count(), now.seconds());
        while (replaying && saidBefore.size() < pulls.count()) {
            saidBefore.add(acts);
        }
    }

    /** Notes that time passes though nothing arrives: to be called some times a second. */
    void tick(ArrivalTime at) {
        pass(at);
        noteFound();
        look();
        if (!replaying) {
            coverage.due(limited, at.seconds()).forEach(finding -> say(at, finding));
            coverage.silent(limited, rows.values(at), pulls.loadedSinceS().isPresent())
                    .forEach(finding -> say(at, finding));
        }
        if (pulls.loadedSinceS().isEmpty()
                && !replaying
                && coolDown.isDue(limited, rows.conditions(at), result.advice(), at.seconds())) {
            ask();
        }
    }

    private void pass(ArrivalTime at) {
        now = at;
        OptionalDouble cut = pulls.waitingCutS();
        if (cut.isPresent() && at.seconds() > cut.getAsDouble() + CUT_WAIT_S) {
            chain.tick(new ArrivalTime((long) ((cut.getAsDouble() + CUT_WAIT_S) * NS_A_SECOND), at.wallMs()));
            pulls.cutNow();
        }
        chain.tick(at);
    }

    /** Nothing more will arrive. */
    void finish(ArrivalTime at) {
        now = at;
        chain.finish(at);
        pulls.cutNow();
        look();
    }

    /** The captures are at their end: from now on things are told. What nobody said of earlier pulls is worked out. */
    void goOn() {
        noteFound();
        replaying = false;
        while (settled < pulls.count()) {
            settled++;
            int number = settled;
            if (!acts.isSettled(number)) {
                settle(
                        number,
                        saidBefore.size() < number ? acts : saidBefore.get(number - 1),
                        () -> AdviceDesk.evaluate(input(), PullSettings.first(pulls.pulls(), number - 1))
                                .value()
                                .flatMap(SessionResult::verdict)
                                .flatMap(verdict -> verdict.advice().setting()));
            }
        }
        announced = pulls.count() - (PullSettings.lastWasCut(pulls.pulls()) ? 1 : 0);
        desk.keepEarlier(Instant.ofEpochMilli(now.wallMs()), acts.all());
        AdviceDesk.evaluate(input(), pulls.pulls()).value().ifPresent(found -> result = found);
        ask();
    }

    private void look() {
        pulls.takeNews().forEach(finding -> say(now, finding));
        if (replaying || desk.wasAsked(pulls.count(), pulls.whole())) {
            return;
        }
        while (settled < pulls.count()) {
            settled++;
            events.pullFound();
            settle(settled, acts, () -> result.advice().flatMap(Advice::setting));
        }
        ask();
    }

    private void settle(int number, OperatorActions said, Supplier<Optional<EngineSetting>> proposed) {
        new PullSettings(plan).of(number, pulls.pulls(), said, proposed).ifPresent(act -> {
            events.acted(act);
            take(act);
        });
    }

    private void take(OperatorAction act) {
        Outcome<OperatorActions> taken = acts.with(act, plan, pulls.count());
        taken.findings().forEach(finding -> say(now, finding));
        if (taken.isFailed()) {
            return;
        }
        acts = taken.value().orElse(acts);
        if (act instanceof OperatorAction.ChangeLimit) {
            limited = acts.plan(plan);
            AlarmWatch.Rules limits = AlarmWatch.Rules.of(limited);
            rows.limits(limits);
            pulls.limits(limits);
        }
        if (!replaying) {
            desk.keep(Instant.ofEpochMilli(now.wallMs()), act);
            events.changed();
            ask();
        }
    }

    private void ask() {
        desk.ask(new AdviceDesk.Question(
                input(), pulls.pulls(), pulls.count(), pulls.whole(), Instant.ofEpochMilli(now.wallMs())));
    }

    private SessionInput input() {
        SessionInput day = SessionInput.of(plan, List.of(), List.of()).withNow(rows.conditions(now));
        return acts.applied(experience.map(day::withExperience).orElse(day));
    }

    /** Takes what was worked out meanwhile. */
    void takeAnswers() {
        desk.takeAnswer().ifPresent(answer -> {
            Outcome<SessionResult> outcome = answer.result();
            outcome.findings().forEach(finding -> say(now, finding));
            outcome.value().ifPresent(found -> {
                result = found;
                for (int number = announced + 1; number <= answer.question().count(); number++) {
                    announced = number;
                    found.pull(number).ifPresent(events::pullEnded);
                }
                events.changed();
            });
        });
    }

    /** Says something that does not come from the sources. */
    void say(ArrivalTime at, Finding finding) {
        LiveState.Notice notice = new LiveState.Notice(at, finding);
        notices.addLast(notice);
        if (notices.size() > MOST_NOTICES) {
            notices.removeFirst();
        }
        links.said(finding);
        if (!replaying) {
            events.said(notice);
        }
    }

    LiveState state(LiveState.CaptureState capture, Keeper keeper) {
        OptionalDouble since = pulls.loadedSinceS();
        return new LiveState(
                now,
                result,
                limited,
                links.all(now),
                capture,
                rows.values(now),
                rows.sounding(),
                rows.headroom(),
                since.isPresent() ? OptionalDouble.of(Math.max(0, now.seconds() - since.getAsDouble())) : since,
                rows.pull(since),
                rows.hold(),
                coolDown.coolDownLeftS(limited.start().coolDownS(), now.seconds()),
                pulls.count() + 1,
                acts,
                List.copyOf(notices),
                keeper.session(),
                keeper.failing());
    }

    /** Whether a link changed since this was asked last. */
    boolean takeLinkChange() {
        return links.takeChanged();
    }

    private final class FromChain implements WireChain.Listener {
        @Override
        public void rows(String source, Samples samples) {
            List<Alarm.Event> alarms = rows.take(source, samples, now);
            if (!replaying) {
                alarms.forEach(events::alarm);
            }
        }

        @Override
        public void block(Block block) {
            pulls.block(block);
        }

        @Override
        public void said(ArrivalTime at, Finding finding) {
            say(at, finding);
        }

        @Override
        public void fileComplete(Arrival.FileComplete file) {
            pulls.complete(file);
        }
    }
}
