package org.nextpull.report.text;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.nextpull.channel.Role;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanKeys;
import org.nextpull.session.SourcePulls;

/**
 * The table {@code [log]} of a first plan: how the columns were understood, what was told of them, and what could be told besides.
 *
 * @param sources the logs
 * @param told what the operator said about them
 */
record FirstPlanLog(List<SourcePulls> sources, SweepPlan.LogFacts told) {
    private static final String AFR_SCALE =
            "# afr_scale =               # What the gauge calls stoichiometric, as 14.7: then its column is lambda.";

    boolean isLogged(Role role) {
        return columns()
                .anyMatch(column ->
                        column.channel().filter(known -> known.role() == role).isPresent());
    }

    String text() {
        String known = columns()
                .filter(column -> column.channel().isPresent())
                .map(column -> "#   " + onOneLine(column.header()) + " is "
                        + column.channel().orElseThrow().id()
                        + column.unit().map(unit -> " in " + unit.symbol()).orElse(""))
                .distinct()
                .collect(Collectors.joining("\n"));
        String unknown = columns()
                .filter(column -> column.channel().isEmpty() && !column.header().isBlank())
                .map(column -> onOneLine(column.header()))
                .distinct()
                .collect(Collectors.joining(", "));
        return "\n[log]\n# As the columns were understood:\n"
                + known
                + (unknown.isEmpty() ? "" : "\n# Not used: " + unknown)
                + "\n# Where that is wrong: columns.torque = \"its header\", units.torque = \"N.m\"\n"
                + Stream.concat(PlanKeys.lines(told).stream(), open())
                        .map(line -> line + "\n")
                        .collect(Collectors.joining());
    }

    /** The scale of an air-fuel ratio, and the columns that may be what is missing. */
    private Stream<String> open() {
        Stream<String> scale =
                isLogged(Role.AIR_FUEL_RATIO) && !isLogged(Role.LAMBDA) ? Stream.of(AFR_SCALE) : Stream.of();
        return Stream.concat(
                scale,
                sources.stream()
                        .flatMap(source -> source.findings().stream())
                        .filter(finding -> finding.code() == FindingCode.COLUMN_MAY_BE)
                        .map(FirstPlanLog::mayBe)
                        .distinct());
    }

    private static String mayBe(Finding finding) {
        String line = "# " + PlanKeys.column(detail(finding, "channel"), detail(finding, "header"));
        return line + FirstPlanText.pad(line.length()) + "# Not used; may be that, by its " + detail(finding, "because")
                + ".";
    }

    private static String detail(Finding finding, String name) {
        return finding.text(name).orElse("");
    }

    private Stream<SourceDescription.Column> columns() {
        return sources.stream()
                .flatMap(source -> source.description().stream())
                .flatMap(known -> known.columns().stream());
    }

    /** A header may hold line breaks, and a comment may not. */
    private static String onOneLine(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ");
    }
}
