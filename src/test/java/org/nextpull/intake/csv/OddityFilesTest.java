package org.nextpull.intake.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Channel;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Finding;
import org.nextpull.unit.Unit;

/**
 * Small files, each with one oddity, and beside each what must come of it. The format of the expectations is told in {@code
 * src/test/resources/intake/README.md}.
 */
class OddityFilesTest {
    private static final Path CASES = Path.of("src/test/resources/intake/cases");

    static Stream<Path> cases() throws IOException {
        try (Stream<Path> files = Files.list(CASES)) {
            return files.filter(file -> file.toString().endsWith(".expect")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void anOddFileGivesWhatIsWrittenBesideIt(Path expectation) throws IOException {
        Path data = Path.of(expectation.toString().replaceFirst("\\.expect$", ""));
        List<String[]> lines = Files.readAllLines(expectation).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> line.split(":\\s*", 2))
                .toList();
        Seen seen = Seen.of(data, hints(lines));
        for (String[] line : lines) {
            if (!line[0].startsWith("hint")) {
                seen.check(line[0], line[1].strip());
            }
        }
    }

    @Test
    void everyOddFileHasAnExpectation() throws IOException {
        try (Stream<Path> files = Files.list(CASES)) {
            assertThat(files.filter(file -> !file.toString().endsWith(".expect")))
                    .isNotEmpty()
                    .allSatisfy(file -> assertThat(Path.of(file + ".expect")).exists());
        }
    }

    private static LogHints hints(List<String[]> lines) {
        Map<Role, String> headers = new EnumMap<>(Role.class);
        Map<Role, Unit> units = new EnumMap<>(Role.class);
        OptionalDouble scale = OptionalDouble.empty();
        OptionalDouble rate = OptionalDouble.empty();
        for (String[] line : lines) {
            String[] pair = line[1].split("=", 2);
            switch (line[0]) {
                case "hint column" -> headers.put(role(pair[0]), pair[1].strip());
                case "hint unit" -> units.put(role(pair[0]), Unit.parse(pair[1]).orElseThrow());
                case "hint afr_scale" -> scale = OptionalDouble.of(Double.parseDouble(line[1]));
                case "hint sample_hz" -> rate = OptionalDouble.of(Double.parseDouble(line[1]));
                default -> {}
            }
        }
        return new LogHints(headers, units, scale, rate);
    }

    private static Role role(String id) {
        return Role.valueOf(id.strip().toUpperCase(Locale.ROOT));
    }

    /** What came of a file. */
    private record Seen(
            String kind,
            Optional<SourceDescription> description,
            Optional<Samples> samples,
            Optional<ResultTable> table,
            Optional<BlockReader.RowCount> rows,
            List<Finding> findings) {

        static Seen of(Path data, LogHints hints) throws IOException {
            Inputs inputs = new LogFiles(hints).read(List.of(data.toString()));
            List<Finding> findings = new ArrayList<>(inputs.findings());
            if (inputs.good().isEmpty()) {
                assertThat(inputs.someFailed()).as("why there is nothing").isTrue();
                return new Seen(
                        "nothing", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), findings);
            }
            if (inputs.good().get(0) instanceof Input.Table table) {
                findings.addAll(table.findings());
                return new Seen(
                        "table",
                        Optional.of(table.table().description()),
                        Optional.empty(),
                        Optional.of(table.table()),
                        Optional.of(table.table().rowCount()),
                        findings);
            }
            try (BlockReader reader = inputs.logs().get(0).recording().open()) {
                Optional<Block> block = reader.next();
                while (reader.next().isPresent()) {
                    // to the end, so that the findings are complete
                }
                findings.addAll(reader.findings());
                return new Seen(
                        "log",
                        Optional.of(reader.description()),
                        block.map(Block::samples),
                        Optional.empty(),
                        Optional.of(reader.rowCount()),
                        findings);
            }
        }

        void check(String key, String wanted) {
            switch (key) {
                case "kind" ->
                    assertThat(kind).as("kind, with findings %s", findings).isEqualTo(wanted);
                case "encoding" ->
                    assertThat(description.orElseThrow().encoding()).isEqualTo(wanted);
                case "separator" ->
                    assertThat(description.orElseThrow().separator())
                            .isEqualTo(wanted.replace("tab", "\t").replace("blank", " "));
                case "decimal" ->
                    assertThat(description.orElseThrow().decimal()).isEqualTo(wanted.charAt(0));
                case "rows" ->
                    assertThat(rows.orElseThrow().good()).as("good rows").isEqualTo(Long.parseLong(wanted));
                case "bad" ->
                    assertThat(rows.orElseThrow().bad()).as("bad rows").isEqualTo(Long.parseLong(wanted));
                case "column" -> checkColumn(wanted);
                case "value" -> checkValue(wanted);
                case "absent" -> {
                    String[] parts = wanted.split(" ", -1);
                    assertThat(samples.orElseThrow().isPresent(channel(parts[0]), Integer.parseInt(parts[1])))
                            .as(wanted)
                            .isFalse();
                }
                case "line" -> {
                    String[] parts = wanted.split(" ", -1);
                    assertThat(samples.orElseThrow().line(Integer.parseInt(parts[0])))
                            .isEqualTo(Long.parseLong(parts[1]));
                }
                case "label" -> {
                    String[] parts = wanted.split(" ", 2);
                    assertThat(samples.orElseThrow().label(Integer.parseInt(parts[0])))
                            .contains(parts[1]);
                }
                case "row" -> checkRow(wanted);
                case "finding" -> checkFinding(wanted);
                case "no finding" ->
                    assertThat(findings)
                            .noneMatch(finding -> finding.code().id().equals(wanted));
                case "only findings" ->
                    assertThat(findings.stream().map(finding -> finding.code().id()))
                            .containsExactlyInAnyOrder(wanted.isEmpty() ? new String[0] : wanted.split(" ", -1));
                default -> throw new IllegalArgumentException("no such expectation: " + key);
            }
        }

        private void checkColumn(String wanted) {
            int equals = wanted.lastIndexOf(" = ");
            String header = wanted.substring(0, equals).strip();
            String[] parts = wanted.substring(equals + 3).strip().split(" ", -1);
            SourceDescription.Column column = description.orElseThrow().columns().stream()
                    .filter(each -> each.header().replace('\n', ' ').equals(header))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no column " + header + " in " + description));
            assertThat(column.channel().map(Channel::id).orElse("unused"))
                    .as(header)
                    .isEqualTo(parts[0]);
            if (parts.length > 1) {
                assertThat(column.unit().map(Unit::symbol).orElse("none"))
                        .as(header)
                        .isEqualTo(parts[1]);
            }
        }

        private void checkValue(String wanted) {
            String[] parts = wanted.split("\\s+", -1);
            int row = Integer.parseInt(parts[1]);
            double value = Double.parseDouble(parts[3]);
            assertThat(samples.orElseThrow().value(channel(parts[0]), row))
                    .as(wanted)
                    .isCloseTo(value, within(1e-9 * Math.max(1, Math.abs(value))));
        }

        private void checkRow(String wanted) {
            assertThat(table.orElseThrow().rows().stream().map(Object::toString))
                    .as("row")
                    .anyMatch(row -> Stream.of(wanted.split("\\s*;\\s*", -1)).allMatch(row::contains));
        }

        /** A code, then the line where it applies, then a word of any detail. */
        private void checkFinding(String wanted) {
            String[] parts = wanted.split(" ", 3);
            assertThat(findings).as(wanted).anySatisfy(finding -> {
                assertThat(finding.code().id()).isEqualTo(parts[0]);
                if (parts.length > 1 && !parts[1].equals("-")) {
                    assertThat(finding.place().line()).hasValue(Long.parseLong(parts[1]));
                }
                if (parts.length > 2) {
                    assertThat(finding.details().toString()).contains(parts[2]);
                }
            });
        }

        private static Channel channel(String id) {
            int underscore = id.lastIndexOf('_');
            boolean numbered = underscore > 0 && id.substring(underscore + 1).matches("\\d+");
            return numbered
                    ? new Channel(role(id.substring(0, underscore)), Integer.parseInt(id.substring(underscore + 1)))
                    : Channel.of(role(id));
        }
    }
}
