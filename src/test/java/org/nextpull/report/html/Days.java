package org.nextpull.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.Inputs;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.session.Amendments;
import org.nextpull.session.Replay;
import org.nextpull.session.SessionInput;
import org.nextpull.simulator.DemoLog;
import org.nextpull.simulator.DemoLogs;

/** Days to make sheets of. */
final class Days {
    /** What a label, a note or a name might hold. */
    static final String HOSTILE = "</td><script>alert('x')</script>\"&<img src=http://example.invalid/a.png>";

    private Days() {}

    /** The timing sweep of the demo engine: invented. */
    static Replay demo(Path folder) throws IOException {
        DemoLog log = DemoLogs.timing();
        Path file = Files.writeString(folder.resolve(log.name()), log.log());
        String plan = Files.readString(Path.of("sweep-plans/hillclimb-e10-timing.toml"));
        return Replay.of(input(plan, file));
    }

    /** A table of results of which every word is hostile, with a struck pull. */
    static Replay hostile(Path folder) throws IOException {
        String plan = """
                [engine]
                name = '%s'
                [fuel]
                blend = "e10"
                [timing]
                start_deg = 20
                least_deg = 12
                most_deg = 36
                [sheet]
                customer = '%s'
                place = 'cell 2'
                """.formatted(HOSTILE.replace("'", ""), HOSTILE.replace("'", ""));
        String quoted = '"' + HOSTILE.replace("\"", "\"\"") + '"';
        StringBuilder table = new StringBuilder("order,advance_deg,torque_nm,label,knock\n");
        double[] advances = {20, 20, 22, 24, 26, 28, 30};
        for (int index = 0; index < advances.length; index++) {
            double torque = 200 - 0.1 * Math.pow(advances[index] - 28, 2) + (index == 1 ? 0.3 : 0);
            table.append(index + 1)
                    .append(',')
                    .append(advances[index])
                    .append(',')
                    .append(torque)
                    .append(',')
                    .append(quoted)
                    .append(",no\n");
        }
        Path file = Files.writeString(folder.resolve("day.csv"), table);
        return Replay.of(input(plan, file).withAmendments(new Amendments(Map.of(7, HOSTILE), Set.of(), Map.of())));
    }

    /** A table of results of an archive that sweeps nothing. */
    static Replay ofMany(Path folder, int pulls) throws IOException {
        StringBuilder table = new StringBuilder("order,advance_deg,torque_nm\n");
        for (int pull = 1; pull <= pulls; pull++) {
            table.append(pull).append(",20,").append(200 + pull % 3).append('\n');
        }
        return Replay.of(input("[fuel]\nblend = 'e10'\n", Files.writeString(folder.resolve("many.csv"), table)));
    }

    private static SessionInput input(String planText, Path file) {
        SweepPlan plan = PlanText.read(planText, "plan.toml").value().orElseThrow();
        Inputs inputs = new LogFiles(plan.log().hints()).read(List.of(file.toString()));
        assertThat(inputs.good()).as(inputs.findings().toString()).hasSize(1);
        return SessionInput.of(
                plan,
                inputs.logs().stream().map(Input.Log::recording).toList(),
                inputs.tables().stream().map(Input.Table::table).toList());
    }
}
