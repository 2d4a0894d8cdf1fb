package examples;

import java.io.PrintStream;
import java.nio.file.Path;
import org.nextpull.api.DayAnswer;
import org.nextpull.api.LoggedDay;
import org.nextpull.finding.Outcome;

/** Asks for advice on a plan and a log. */
public final class AdviceOnLogs {
    private AdviceOnLogs() {}

    /** Writes the advice. */
    public static void show(PrintStream out) {
        Outcome<LoggedDay> read = LoggedDay.ofPlanFile(Path.of("sweep-plans/hillclimb-e10-timing.toml"));
        LoggedDay day = read.value().orElseThrow(() -> new IllegalStateException("" + read.findings()));
        DayAnswer answer =
                day.withFiles(Path.of("sample-logs/hillclimb-e10-timing.csv")).answer();

        DayAnswer.Next next = answer.next().orElseThrow();
        out.println(next.action().id() + ", because " + next.code().id());
        next.set()
                .ifPresent(set -> out.println("set " + set.spark().orElseThrow().degAt(5000) + " deg"));
        next.leave()
                .ifPresent(leave ->
                        out.println("leave " + leave.spark().orElseThrow().degAt(5000) + " deg"));
        out.println(answer.pulls().stream().filter(DayAnswer.Pull::isUsed).count() + " pulls count");
    }
}
