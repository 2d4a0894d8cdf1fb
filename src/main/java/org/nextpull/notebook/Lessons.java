package org.nextpull.notebook;

import java.util.List;
import java.util.Optional;
import org.nextpull.advice.Factor;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.advice.Verdict;
import org.nextpull.fit.Belief;
import org.nextpull.fit.CurvatureLesson;
import org.nextpull.fit.SweepPoint;
import org.nextpull.fit.SweepPriors;
import org.nextpull.response.Reading;
import org.nextpull.response.Setting;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Advance;

/** What a session teaches, kept beside it. */
final class Lessons {
    private static final double HUNDREDTHS = 100;

    private Lessons() {}

    static void replace(Database database, long session, SessionResult result) throws NotebookException {
        database.run("delete from lesson where session = ?", session);
        Optional<SweepAnswer> timing = result.verdict().flatMap(Verdict::timing);
        Optional<SweepAnswer> mixture = result.verdict().flatMap(Verdict::mixture);
        write(database, session, timing.flatMap(answer -> lesson(answer, result)), Factor.TIMING);
        write(database, session, mixture.flatMap(answer -> lesson(answer, result)), Factor.MIXTURE);
    }

    private static Optional<Belief> lesson(SweepAnswer answer, SessionResult result) {
        if (!answer.bracketed()) {
            return Optional.empty();
        }
        List<SweepPoint> points = Reading.of(
                        result.pulls(), result.plan().goal().response())
                .stream()
                .filter(reading -> answer.pulls().contains(reading.pull()))
                .flatMap(reading -> point(reading, answer.factor()).stream())
                .toList();
        return CurvatureLesson.of(
                points, answer.factor() == Factor.TIMING ? SweepPriors.timing(0) : SweepPriors.mixture(0));
    }

    private static Optional<SweepPoint> point(Reading reading, Factor factor) {
        Setting setting = reading.setting();
        Optional<Double> at = factor == Factor.TIMING
                ? setting.advance().or(setting::offset).map(Advance::deg)
                : setting.lambda().map(lambda -> HUNDREDTHS * lambda.value());
        return at.map(value -> new SweepPoint(value, reading.value(), reading.pull(), reading.order()));
    }

    private static void write(Database database, long session, Optional<Belief> lesson, Factor factor)
            throws NotebookException {
        if (lesson.isPresent()) {
            Entry.into("lesson")
                    .put("session", session)
                    .put("factor", Ids.of(factor))
                    .put("ln_curvature", lesson.get().centre())
                    .put("sd", lesson.get().sd())
                    .insert(database);
        }
    }
}
