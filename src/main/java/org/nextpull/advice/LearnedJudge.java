package org.nextpull.advice;

/**
 * Judges a sweep with what earlier days taught, and never lets that lengthen a step: a pull beyond the most daring clean one goes no
 * further than it would without. An engine may be another than its name says.
 */
final class LearnedJudge implements SweepJudge {
    private final Day day;

    LearnedJudge(Day day) {
        this.day = day;
    }

    @Override
    public SweepState judge(Question question) {
        SweepState learned = new FittedJudge(day).judge(question);
        boolean isDaring = learned.next() instanceof SweepStep.Pull pull && pull.setting() > question.mostDaring();
        if (day.experience().isEmpty() || !isDaring) {
            return learned;
        }
        SweepState usual = new FittedJudge(day.withoutExperience()).judge(question);
        return reach(usual.next(), question) < reach(learned.next(), question)
                ? learned.withNext(usual.next(), usual.evidence())
                : learned;
    }

    /** How far a step goes; an end goes nowhere. */
    private static double reach(SweepStep step, Question question) {
        return step instanceof SweepStep.Pull pull ? pull.setting() : question.mostDaring();
    }
}
