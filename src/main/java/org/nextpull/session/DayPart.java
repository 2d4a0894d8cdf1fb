package org.nextpull.session;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.SourceDescription;
import org.nextpull.pull.Candidate;

/**
 * A day, or a part of one, that can be put beside others.
 *
 * @param input tables, settings and amendments; its plan does not count
 * @param sources its logs
 */
public record DayPart(SessionInput input, List<SourcePulls> sources) {
    public DayPart {
        sources = List.copyOf(sources);
    }

    int candidates() {
        return sources.stream().mapToInt(source -> source.candidates().size()).sum();
    }

    int rows() {
        return input.tables().stream().mapToInt(table -> table.rows().size()).sum();
    }

    /**
     * The same under another name: its only log or table is called that, several are called that with their own name behind a slash. Each
     * setting then names the pull that it belongs to.
     */
    public DayPart named(String name) {
        boolean single = sources.size() + input.tables().size() == 1;
        AskedSettings asked = AskedSettings.match(input.settings(), sources);
        List<SourcePulls> renamed = new ArrayList<>();
        List<AskedSetting> settings = new ArrayList<>();
        for (SourcePulls source : sources) {
            String to = single ? name : name + "/" + source.name();
            renamed.add(renamed(source, to));
            for (Candidate candidate : source.candidates()) {
                asked.of(source.name(), candidate.number())
                        .map(setting -> setting.of(to, candidate.number()))
                        .ifPresent(settings::add);
            }
        }
        List<ResultTable> tables = input.tables().stream()
                .map(table -> renamed(
                        table, single ? name : name + "/" + table.description().name()))
                .toList();
        SessionInput changed = new SessionInput(
                input.plan(), List.of(), tables, settings, input.amendments(), input.experience(), input.now());
        return new DayPart(changed, renamed);
    }

    private static SourcePulls renamed(SourcePulls source, String name) {
        return new SourcePulls(
                name,
                source.description(),
                source.rowCount(),
                source.candidates().stream()
                        .map(candidate -> candidate.withSource(name))
                        .toList(),
                source.alarms(),
                source.findings(),
                source.thrownAway());
    }

    private static ResultTable renamed(ResultTable table, String name) {
        SourceDescription before = table.description();
        return new ResultTable(
                new SourceDescription(name, before.encoding(), before.separator(), before.decimal(), before.columns()),
                table.rows(),
                table.rowCount());
    }
}
