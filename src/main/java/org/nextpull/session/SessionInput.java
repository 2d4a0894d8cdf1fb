package org.nextpull.session;

import java.util.List;
import java.util.Optional;
import org.nextpull.advice.NextConfiguration;
import org.nextpull.advice.PresentConditions;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Recording;
import org.nextpull.channel.ResultTable;
import org.nextpull.finding.Finding;
import org.nextpull.fit.Experience;
import org.nextpull.plan.SweepPlan;

/**
 * All that a result is made from.
 *
 * @param plan the sweep plan
 * @param recordings logs in the order of the day
 * @param tables tables of results in the order of the day, after the logs
 * @param settings what the operator asked for, as rows
 * @param amendments what the operator changed by hand
 * @param experience what earlier days taught, where there were any and the plan wants it
 * @param now the temperatures of this moment
 * @param next what is fitted for the next pull, as far as it differs from the last one
 * @param found what was found on reading plan, settings and files, which the result says too
 */
public record SessionInput(
        SweepPlan plan,
        List<Recording> recordings,
        List<ResultTable> tables,
        List<AskedSetting> settings,
        Amendments amendments,
        Optional<Experience> experience,
        PresentConditions now,
        NextConfiguration next,
        List<Finding> found) {
    public SessionInput {
        recordings = List.copyOf(recordings);
        tables = List.copyOf(tables);
        settings = List.copyOf(settings);
        found = List.copyOf(found);
    }

    /** Logs and tables under a plan, with nothing changed by hand and nothing known from before. */
    public static SessionInput of(SweepPlan plan, List<Recording> recordings, List<ResultTable> tables) {
        return new SessionInput(
                plan, recordings, tables, List.of(), Amendments.none(), Optional.empty(), PresentConditions.unknown());
    }

    /** A day whose next pull is of the same configuration as its last. */
    public SessionInput(
            SweepPlan plan,
            List<Recording> recordings,
            List<ResultTable> tables,
            List<AskedSetting> settings,
            Amendments amendments,
            Optional<Experience> experience,
            PresentConditions now) {
        this(plan, recordings, tables, settings, amendments, experience, now, NextConfiguration.same(), List.of());
    }

    public SessionInput withSources(List<Recording> newRecordings, List<ResultTable> newTables) {
        return new SessionInput(plan, newRecordings, newTables, settings, amendments, experience, now, next, found);
    }

    public SessionInput withSettings(List<AskedSetting> newSettings) {
        return new SessionInput(plan, recordings, tables, newSettings, amendments, experience, now, next, found);
    }

    public SessionInput withAmendments(Amendments newAmendments) {
        return new SessionInput(plan, recordings, tables, settings, newAmendments, experience, now, next, found);
    }

    public SessionInput withExperience(Experience newExperience) {
        return new SessionInput(
                plan, recordings, tables, settings, amendments, Optional.of(newExperience), now, next, found);
    }

    public SessionInput withNow(PresentConditions newNow) {
        return new SessionInput(plan, recordings, tables, settings, amendments, experience, newNow, next, found);
    }

    SessionInput withNext(NextConfiguration newNext) {
        return new SessionInput(plan, recordings, tables, settings, amendments, experience, now, newNext, found);
    }

    SessionInput withPlan(SweepPlan newPlan) {
        return new SessionInput(newPlan, recordings, tables, settings, amendments, experience, now, next, found);
    }

    public SessionInput withFound(List<Finding> newFound) {
        return new SessionInput(plan, recordings, tables, settings, amendments, experience, now, next, newFound);
    }
}
