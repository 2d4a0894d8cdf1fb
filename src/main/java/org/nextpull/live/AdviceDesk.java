package org.nextpull.live;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.session.MeasureCache;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;
import org.nextpull.session.SourcePulls;
import org.tinylog.Logger;

/**
 * Works out the result of the day and keeps it, away from the thread that reads and sounds alarms. Of several questions that wait only
 * the newest is answered.
 */
final class AdviceDesk {
    private final Executor executor;
    private final Keeper keeper;
    /** Used where answers are worked out alone. */
    private final MeasureCache measured = new MeasureCache();

    private final AtomicReference<Optional<Question>> waiting = new AtomicReference<>(Optional.empty());
    private final AtomicReference<Optional<Answer>> done = new AtomicReference<>(Optional.empty());
    private int asked;
    private int askedWhole;

    /**
     * What is asked.
     *
     * @param input the day, without its pulls
     * @param sources its pulls
     * @param count how many pulls that is
     * @param whole how many of them are final
     * @param at when it was asked
     */
    record Question(SessionInput input, List<SourcePulls> sources, int count, int whole, Instant at) {
        Question {
            sources = List.copyOf(sources);
        }
    }

    /**
     * The answer.
     *
     * @param question what was asked
     * @param result the result; empty with the finding why
     */
    record Answer(Question question, Outcome<SessionResult> result) {}

    /** Works on one thread, in the order in which it is asked. */
    AdviceDesk(Executor executor, Keeper keeper) {
        this.executor = executor;
        this.keeper = keeper;
    }

    void ask(Question question) {
        asked = question.count();
        askedWhole = question.whole();
        waiting.set(Optional.of(question));
        executor.execute(() -> waiting.getAndSet(Optional.empty()).ifPresent(this::answer));
    }

    /** Whether the last question was of so many pulls, and so many of them final. */
    boolean wasAsked(int count, int whole) {
        return count == asked && whole == askedWhole;
    }

    void keep(Instant at, OperatorAction act) {
        executor.execute(() -> keeper.act(at, act));
    }

    void keepEarlier(Instant at, List<OperatorAction> acts) {
        executor.execute(() -> keeper.earlier(at, acts));
    }

    void close(Instant at) {
        executor.execute(() -> keeper.close(at));
    }

    /** The newest answer since this was asked last. */
    Optional<Answer> takeAnswer() {
        return done.getAndSet(Optional.empty());
    }

    private void answer(Question question) {
        Outcome<SessionResult> outcome = evaluate(question.input(), question.sources(), measured);
        done.set(Optional.of(new Answer(question, outcome)));
        if (question.whole() == question.count()) {
            outcome.value().ifPresent(result -> keeper.day(question.at(), question.input(), result));
        }
    }

    /** The result of a day, or a finding: a fault in the arithmetic must not end a running session. */
    static Outcome<SessionResult> evaluate(SessionInput input, List<SourcePulls> sources) {
        return evaluate(input, sources, new MeasureCache());
    }

    private static Outcome<SessionResult> evaluate(
            SessionInput input, List<SourcePulls> sources, MeasureCache measured) {
        try {
            return Outcome.of(Session.evaluate(input, sources, measured));
        } catch (RuntimeException fault) {
            Logger.error(fault, "the day could not be evaluated");
            return Outcome.failed(
                    Finding.error(FindingCode.LIVE_ADVICE_FAILED, Place.nowhere(), Detail.of("why", fault.toString())));
        }
    }
}
