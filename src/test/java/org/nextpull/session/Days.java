package org.nextpull.session;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.Recording;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.SourceDescription;
import org.nextpull.channel.SparkMap;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.pull.BenchLog;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Torque;

/** Days for tests of the chain: tables of results and invented logs. */
final class Days {
    private Days() {}

    /** A log under a name of its own. */
    record Named(String name, BenchLog log) implements Recording {
        @Override
        public BlockReader open() throws IOException {
            return log.open();
        }
    }

    /** A setting and the torque that it made. */
    record Run(double advanceDeg, double torqueNm, KnockMark knock) {
        Run(double advanceDeg, double torqueNm) {
            this(advanceDeg, torqueNm, KnockMark.NONE);
        }
    }

    static SweepPlan plan(String text) {
        return PlanText.read(text, "test.toml").value().orElseThrow();
    }

    /** A timing sweep from 10 to 46 deg, on a band of 3000 to 5500 rpm. */
    static SweepPlan timing() {
        return plan("""
                [band]
                from_rpm = 3000
                to_rpm = 5500
                [timing]
                start_deg = 20
                least_deg = 10
                most_deg = 46
                """);
    }

    static ResultTable table(List<Run> runs) {
        List<ResultTable.Row> rows = new ArrayList<>();
        for (Run run : runs) {
            rows.add(new ResultTable.Row(
                    rows.size() + 2L,
                    OptionalInt.empty(),
                    Optional.of(Advance.ofDeg(run.advanceDeg())),
                    Optional.empty(),
                    Optional.of(Torque.ofNewtonMetres(run.torqueNm())),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    run.knock(),
                    true));
        }
        return new ResultTable(
                new SourceDescription("table.csv", "UTF-8", ",", '.', List.of()),
                rows,
                new BlockReader.RowCount(rows.size(), 0));
    }

    static SessionResult ofTable(List<Run> runs) {
        return Session.evaluate(SessionInput.of(timing(), List.of(), List.of(table(runs))));
    }

    static SessionInput ofLogs(SweepPlan plan, Recording... logs) {
        return SessionInput.of(plan, List.of(logs), List.of());
    }

    static BenchLog pull(BenchLog log, double factor) {
        return log.torqueFactor(factor).pull(2800, 5800, 500);
    }

    static AskedSetting asked(Optional<String> file, OptionalInt pull, OptionalInt order, double advanceDeg) {
        return new AskedSetting(
                file,
                pull,
                order,
                EngineSetting.none()
                        .with(
                                Optional.of(SparkMap.flat(Advance.ofDeg(advanceDeg))),
                                Optional.empty(),
                                Optional.empty()),
                KnockMark.NONE);
    }

    static List<FindingCode> codes(List<Finding> findings) {
        return findings.stream().map(Finding::code).toList();
    }
}
