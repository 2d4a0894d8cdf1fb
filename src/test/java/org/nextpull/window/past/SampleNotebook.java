package org.nextpull.window.past;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.Inputs;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.notebook.Notebook;
import org.nextpull.notebook.SessionStart;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;

/** A notebook with the invented days that come with the project. */
public final class SampleNotebook {
    private SampleNotebook() {}

    /** Keeps the samples of these names, one session each. */
    public static Path with(Path folder, List<String> names) throws IOException {
        Path file = folder.resolve("notebook.db");
        try (Notebook notebook = Notebook.open(file)) {
            Instant at = Instant.parse("2026-05-02T08:30:00Z");
            for (String name : names) {
                keep(notebook, name, at);
                at = at.plusSeconds(86_400 * 7);
            }
        }
        return file;
    }

    private static void keep(Notebook notebook, String name, Instant at) throws IOException {
        String planFile = "sweep-plans/" + name + ".toml";
        String text = Files.readString(Path.of(planFile));
        SweepPlan plan = PlanText.read(text, planFile).value().orElseThrow();
        Inputs inputs = new LogFiles(plan.log().hints()).read(List.of("sample-logs/" + name + ".csv"));
        SessionInput input = SessionInput.of(
                plan, inputs.logs().stream().map(Input.Log::recording).toList(), List.of());
        long id = notebook.begin(new SessionStart(at, "test", planFile, text, Optional.empty()));
        notebook.keepPull(id, at, input, Session.evaluate(input));
        notebook.keepAct(
                id, at.plusSeconds(60), new OperatorAction.Note(OptionalInt.of(1), "belt squeal on the overrun"));
        notebook.close(id, at.plusSeconds(7200));
    }
}
