package org.nextpull.simulator;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.intake.wire.SentenceFrame;
import org.nextpull.plan.WireFacts;

/**
 * How the rows of the model engine are written on a wire.
 *
 * @param lines how a line is made up
 * @param groups what each line carries: one group, or for sentences one for each address
 * @param sendsHeader whether a header line goes before
 */
record WireFormat(WireFacts.Lines lines, List<Group> groups, boolean sendsHeader) {
    private static final String END = "\r\n";

    /**
     * The values of one line.
     *
     * @param address of the sentence; blank for other lines
     * @param fields in order; empty where the reader has no use for the field
     */
    record Group(String address, List<Optional<WireField>> fields) {
        Group {
            fields = List.copyOf(fields);
        }
    }

    WireFormat {
        groups = List.copyOf(groups);
    }

    /** What must be measured for it. */
    Set<Role> roles() {
        Set<Role> roles = new LinkedHashSet<>();
        for (Group group : groups) {
            group.fields().stream().flatMap(Optional::stream).forEach(field -> {
                roles.add(field.role());
                if (field.aboveAir()) {
                    roles.add(Role.BAROMETER);
                }
            });
        }
        return roles;
    }

    /** The header line, with its end; blank where none is sent. */
    String header() {
        return sendsHeader
                ? groups.get(0).fields().stream()
                                .map(field -> field.map(WireField::name).orElse("-"))
                                .collect(Collectors.joining(","))
                        + END
                : "";
    }

    /** A row as the lines that are sent, each with its end. */
    String text(Samples samples, int row) {
        StringBuilder text = new StringBuilder();
        for (Group group : groups) {
            text.append(line(group, samples, row));
        }
        return text.toString();
    }

    private String line(Group group, Samples samples, int row) {
        List<String> cells = new ArrayList<>();
        for (Optional<WireField> field : group.fields()) {
            String value = field.map(each -> each.text(samples, row)).orElse("");
            if (lines != WireFacts.Lines.PAIRS) {
                cells.add(value);
            } else if (!value.isEmpty()) {
                cells.add(field.orElseThrow().name() + "=" + value);
            }
        }
        return switch (lines) {
            case SEPARATED -> String.join(",", cells) + END;
            case PAIRS -> String.join(";", cells) + END;
            case SENTENCE -> SentenceFrame.of(group.address() + "," + String.join(",", cells));
        };
    }
}
