package org.nextpull.window;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.nextpull.app.DayInput;
import org.nextpull.app.DayReader;
import org.nextpull.app.LabelledLog;
import org.nextpull.app.NotebookAccess;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.Inputs;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.session.SessionInput;

/** The days that come with the project: invented. */
public final class SampleDays {
    private SampleDays() {}

    /** The log and the plan of that name. */
    public static SessionInput input(String name) {
        SweepPlan plan = plan(Path.of("sweep-plans", name + ".toml"));
        Inputs inputs = new LogFiles(plan.log().hints()).read(List.of("sample-logs/" + name + ".csv"));
        return SessionInput.of(
                plan, inputs.logs().stream().map(Input.Log::recording).toList(), List.of());
    }

    private static SweepPlan plan(Path file) {
        try {
            return PlanText.read(Files.readString(file), file.toString())
                    .value()
                    .orElseThrow();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** A day as the command line reads it. */
    public static DayInput day(String name) {
        return DayReader.day(
                        NotebookAccess.ofUser(),
                        Optional.of("sweep-plans/" + name + ".toml"),
                        List.of(LabelledLog.unlabelled("sample-logs/" + name + ".csv")))
                .value()
                .orElseThrow();
    }
}
