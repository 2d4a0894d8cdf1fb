package org.nextpull.window;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
}
