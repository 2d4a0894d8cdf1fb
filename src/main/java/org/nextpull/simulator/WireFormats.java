package org.nextpull.simulator;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.channel.Hints;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.ColumnTable;
import org.nextpull.intake.MappedColumn;
import org.nextpull.intake.NumberStyle;
import org.nextpull.intake.ProbeColumn;
import org.nextpull.plan.WireFacts;

/** Works out what the lines of a plan's wires are to carry: their columns are understood as the reader of the wire understands them. */
final class WireFormats {
    private static final String NO_COLUMN = "-";
    private static final ProbeColumn NOTHING = ProbeColumn.of(List.of(), NumberStyle.point());

    private final RigKit kit;
    private final Hints hints;
    private final ColumnReader reader = new ColumnReader();

    WireFormats(RigKit kit, Hints hints) {
        this.kit = kit;
        this.hints = hints;
    }

    /** The lines of a wire, or the columns that the model engine has nothing for. */
    Outcome<WireFormat> of(WireFacts wire) {
        boolean pairs = wire.lines() == WireFacts.Lines.PAIRS;
        if (pairs || wire.columns().isEmpty()) {
            LogDialect dialect = pairs ? LogDialect.COMPACT : LogDialect.PLAIN;
            List<Optional<WireField>> fields = new ArrayList<>();
            for (Role role : kit.instruments().roles()) {
                fields.add(Optional.of(WireField.usual(role, dialect.header(role), dialect)));
            }
            return Outcome.of(new WireFormat(wire.lines(), List.of(new WireFormat.Group("", fields)), !pairs));
        }
        List<Finding> wrong = new ArrayList<>();
        List<WireFormat.Group> groups = new ArrayList<>();
        List<String> columns = new ArrayList<>();
        String address = "";
        for (String column : wire.columns()) {
            if (wire.lines() == WireFacts.Lines.SENTENCE && column.startsWith("$")) {
                group(address, columns, groups, wrong);
                address = column.substring(1);
                columns.clear();
            } else {
                columns.add(column.isBlank() ? NO_COLUMN : column);
            }
        }
        group(address, columns, groups, wrong);
        return wrong.isEmpty() ? Outcome.of(new WireFormat(wire.lines(), groups, false)) : Outcome.failed(wrong);
    }

    private void group(String address, List<String> columns, List<WireFormat.Group> groups, List<Finding> wrong) {
        if (columns.isEmpty()) {
            return;
        }
        List<ProbeColumn> probes = columns.stream().map(column -> NOTHING).toList();
        Map<Integer, MappedColumn> known = new HashMap<>();
        reader.read(new ColumnTable("[[wire]]", 1, columns, List.of(), probes), hints)
                .mapped()
                .forEach(column -> known.put(column.index(), column));
        List<Optional<WireField>> fields = new ArrayList<>();
        for (int index = 0; index < columns.size(); index++) {
            Optional<WireField> field = Optional.ofNullable(known.get(index))
                    .filter(column -> kit.measures(column.channel().role()))
                    .map(WireField::asked);
            if (field.isEmpty() && !columns.get(index).equals(NO_COLUMN)) {
                wrong.add(Finding.error(
                        FindingCode.RIG_COLUMN_NOT_MEASURED,
                        Place.nowhere().withKey("[[wire]] columns"),
                        Detail.of("column", columns.get(index))));
            }
            fields.add(field);
        }
        groups.add(new WireFormat.Group(address, fields));
    }
}
