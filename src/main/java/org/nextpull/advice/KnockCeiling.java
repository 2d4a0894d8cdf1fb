package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import org.nextpull.fit.KnockTrend;
import org.nextpull.fit.Ladder;
import org.nextpull.unit.Span;

/** How far a graded knock channel lets a sweep go: up to where the next reading exceeds the limit with a chance of one in ten. */
final class KnockCeiling {
    private static final double CHANCE = 0.1;

    /** Share of the torque that must be at stake for another reading at the ceiling, and how many readings there may be. */
    private static final double STAKE = 0.003;

    private static final int MOST_READINGS = 4;

    private final SweepQuestion question;
    private final double setting;

    private KnockCeiling(SweepQuestion question, double setting) {
        this.question = question;
        this.setting = setting;
    }

    /** The ceiling of a sweep with a graded channel that gave a reading; empty without. */
    static Optional<KnockCeiling> of(SweepQuestion question) {
        List<KnockTrend.Reading> readings = question.tried().stream()
                .filter(pull -> pull.lnKnock().isPresent())
                .map(pull ->
                        new KnockTrend.Reading(pull.setting(), pull.lnKnock().getAsDouble()))
                .toList();
        if (question.knockGauge().isEmpty() || readings.isEmpty()) {
            return Optional.empty();
        }
        SweepQuestion.KnockGauge gauge = question.knockGauge().get();
        KnockTrend trend = KnockTrend.of(readings, gauge.lnFloor());
        SweepRoom room = question.room();
        double low = Math.min(room.allowed().low(), room.highest());
        Ladder ladder = new Ladder(room.start(), room.resolution().step(), Span.of(low, room.highest()));
        double ceiling = low;
        for (int i = 0; i < ladder.count() && trend.chanceAbove(ladder.setting(i), gauge.lnLimit()) <= CHANCE; i++) {
            ceiling = ladder.setting(i);
        }
        return Optional.of(new KnockCeiling(question, ceiling));
    }

    double setting() {
        return setting;
    }

    /** Whether the sweep stands at the ceiling and cannot go on. */
    boolean isReached() {
        return question.mostDaring().orElse(Double.NEGATIVE_INFINITY) >= setting - same();
    }

    /** Whether one more reading at the ceiling may lift it by enough to matter. */
    boolean isWorthAnotherReading(double lossAtCeiling, double lossOfWanted) {
        long readings = question.tried().stream()
                .filter(pull -> pull.setting() >= setting - same())
                .count();
        return lossAtCeiling - lossOfWanted > STAKE && readings < MOST_READINGS;
    }

    private double same() {
        return 0.6 * question.room().resolution().step();
    }
}
