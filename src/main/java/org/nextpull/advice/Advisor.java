package org.nextpull.advice;

import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.finding.Finding;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** Says the next step of a day. */
public final class Advisor {
    /** Among so many pulls are mostly more than a surface takes. */
    private static final int NEWEST = 2 * SurfacePulls.MOST_PULLS;

    private Advisor() {}

    /** The verdict of a day so far; a stop that was said stands until something opens the day again. */
    public static Verdict judge(Day day) {
        return judge(day, new SaidStops());
    }

    /** The same of a day that is gone through pull by pull. */
    public static Verdict judge(Day day, SaidStops said) {
        return new KeptStop(day, said, Advisor::byPulls, Advisor::surelyGoesOn).verdict();
    }

    /** The same where nothing but the advice is asked for: while a stop stands it costs little however long the day. */
    public static Verdict say(Day day, SaidStops said) {
        return new KeptStop(day, said, Advisor::byPulls, Advisor::surelyGoesOn).brief();
    }

    /** Why there can be no verdict of a day; empty where there can. */
    public static Optional<Finding> hindrance(Day day) {
        return hindrance(day, new SaidStops());
    }

    /** The same of a day that is gone through pull by pull: it costs as much on a long day as on a short one. */
    public static Optional<Finding> hindrance(Day day, SaidStops said) {
        if (!Ignition.of(day, said.shown).isMap()) {
            return Optional.empty();
        }
        int pulls = day.pulls().size();
        DayView newest = DayView.of(day.first(pulls, NEWEST));
        DayReadings maps = new DayReadings(newest);
        boolean areAll =
                pulls <= NEWEST || (maps.leftOut() > 0 && maps.ignition().isMap() && maps.isOfRows());
        return areAll ? new MapFindings(newest, maps).hindrance() : hindranceOfAll(DayView.of(day));
    }

    private static Optional<Finding> hindranceOfAll(DayView view) {
        return new MapFindings(view, new DayReadings(view)).hindrance();
    }

    /**
     * The verdict by the pulls alone. What earlier days taught may shorten a step and never lengthens one: an engine may be another than
     * its name says, so where it would lead further, the step is the one without it.
     */
    private static Verdict byPulls(Judgement judgement) {
        Day day = judgement.day();
        Verdict learned = judgement.verdict();
        if (day.experience().isEmpty()
                || learned.advice().setting().filter(judgement::isDaring).isEmpty()) {
            return learned;
        }
        Verdict usual = new Judgement(DayView.of(day.withoutExperience())).verdict();
        boolean isFurther = usual.advice()
                .setting()
                .map(setting -> isBeyond(learned.advice().setting().get(), setting))
                .orElse(true);
        return isFurther ? learned.withAdvice(usual.advice()) : learned;
    }

    /** Whether the verdict by the pulls alone is no stop, as far as that shows for less; never where the past may have a say. */
    private static boolean surelyGoesOn(Judgement judgement) {
        return judgement.day().experience().isEmpty() && judgement.wantsPull();
    }

    private static boolean isBeyond(EngineSetting one, EngineSetting other) {
        double same = 1e-9;
        boolean isLeaner = one.lambda().isPresent()
                && other.lambda().isPresent()
                && one.lambda().map(Lambda::value).get()
                        > other.lambda().map(Lambda::value).get() + same;
        boolean isMoreAdvanced = (one.map().isPresent() && other.map().isPresent())
                ? one.map().get().cells().stream()
                        .anyMatch(
                                cell -> cell.advance().deg() > other.map().get().degAt(cell.rpm()) + same)
                : number(one) > number(other) + same;
        return isLeaner || isMoreAdvanced;
    }

    private static double number(EngineSetting setting) {
        return setting.advance().or(setting::offset).map(Advance::deg).orElse(0.0);
    }
}
