package org.nextpull.intake.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.GatheredFindings;
import org.nextpull.finding.NearestNames;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.ByteSource;
import org.nextpull.intake.NumberReader;
import org.nextpull.intake.SourceFinder;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * Reads a settings file: what the operator set for each pull. Its columns are {@code file, pull, order, advance_deg, offset_deg, lambda,
 * fuel, label, knock, note}, in any order, any of them left out.
 */
public final class SettingsFile {
    private static final List<String> COLUMNS =
            List.of("file", "pull", "order", "advance_deg", "offset_deg", "lambda", "fuel", "label", "knock", "note");
    /** Columns that say which pull a row is for, and columns that say what was set. */
    private static final Set<String> PULL_COLUMNS = Set.of("file", "pull");

    private static final double MOST_ADVANCE_DEG = 90;
    private static final double MOST_LAMBDA = 5;

    private final String name;
    private final List<String> header;
    private final NumberReader numbers;
    private final GatheredFindings findings = new GatheredFindings();
    private final Set<String> pulls = new HashSet<>();

    private SettingsFile(String name, List<String> header, NumberReader numbers) {
        this.name = name;
        this.header = header;
        this.numbers = numbers;
    }

    /**
     * Reads the settings file of that name.
     *
     * @param file one file, relative to the working directory or absolute
     * @return as {@link #read(ByteSource)}; a name that leads to no file, or to several, is an error
     */
    public static Outcome<List<AskedSetting>> read(String file) {
        SourceFinder.Found found = SourceFinder.find(List.of(file));
        if (found.sources().size() == 1) {
            return read(found.sources().get(0));
        }
        FindingCode code = found.sources().isEmpty() ? FindingCode.FILE_NOT_FOUND : FindingCode.FILE_UNREADABLE;
        return Outcome.failed(Finding.error(code, Place.inFile(file)));
    }

    /**
     * Reads a settings file.
     *
     * @param source its bytes
     * @return the good rows in the order of the file, with a finding on each bad one; none where the file is no settings file
     */
    public static Outcome<List<AskedSetting>> read(ByteSource source) {
        try {
            return FirstPart.of(source)
                    .then(part -> part.complete() ? read(source.name(), part.text()) : tooLong(source));
        } catch (IOException | UncheckedIOException e) {
            return Outcome.failed(Finding.error(FindingCode.FILE_UNREADABLE, Place.inFile(source.name())));
        }
    }

    private static Outcome<List<AskedSetting>> tooLong(ByteSource source) {
        return Outcome.failed(Finding.error(
                FindingCode.SETTINGS_TOO_LONG, Place.inFile(source.name()), Detail.of("most", FirstPart.MOST_CHARS)));
    }

    /** Whether a header is that of a settings file and not that of a log or a table: it names pulls and has no result. */
    static boolean isHeader(List<String> fields) {
        List<String> known = fields.stream()
                .map(SettingsFile::plain)
                .filter(COLUMNS::contains)
                .toList();
        boolean namesPulls = known.containsAll(PULL_COLUMNS) && known.size() > PULL_COLUMNS.size();
        boolean nothingElse = known.contains("pull") && known.size() == fields.size() && known.size() > 1;
        return namesPulls || nothingElse;
    }

    private static Outcome<List<AskedSetting>> read(String name, String text) {
        Separator separator = Separator.COMMA;
        List<TextRow> rows = List.of();
        int most = -1;
        for (Separator candidate : Separator.values()) {
            List<TextRow> split = CsvText.rows(text, candidate).stream()
                    .filter(row -> !row.isComment() && row.filled() > 0)
                    .toList();
            int known = split.isEmpty() ? 0 : known(split.get(0).fields());
            if (known > most && candidate != Separator.BLANKS) {
                most = known;
                separator = candidate;
                rows = split;
            }
        }
        if (most <= 0) {
            return Outcome.failed(Finding.error(
                    FindingCode.SETTINGS_WITHOUT_HEADER,
                    Place.atLine(name, 1),
                    Detail.of("columns", String.join(separator.shown(), COLUMNS))));
        }
        List<String> header =
                rows.get(0).fields().stream().map(SettingsFile::plain).toList();
        NumberReader numbers =
                new NumberReader(NumberMarks.of(rows.subList(1, rows.size())).style());
        SettingsFile file = new SettingsFile(name, header, numbers);
        file.sayUnknown(rows.get(0));
        List<AskedSetting> settings = new ArrayList<>();
        rows.stream().skip(1).forEach(row -> file.row(row).ifPresent(settings::add));
        return Outcome.of(List.copyOf(settings), file.findings.findings());
    }

    private static int known(List<String> fields) {
        return (int) fields.stream()
                .map(SettingsFile::plain)
                .filter(COLUMNS::contains)
                .count();
    }

    private static String plain(String header) {
        return header.strip().toLowerCase(Locale.ROOT).replace(' ', '_');
    }

    private void sayUnknown(TextRow headerRow) {
        for (int index = 0; index < header.size(); index++) {
            String written = headerRow.field(index).strip();
            if (!written.isEmpty() && !COLUMNS.contains(header.get(index))) {
                findings.add(Finding.warning(
                        FindingCode.SETTINGS_COLUMN_UNKNOWN,
                        Place.atLine(name, headerRow.line())
                                .withColumn(index + 1)
                                .withKey(written),
                        Detail.of("header", written),
                        Detail.of(
                                "nearest",
                                NearestNames.of(written, COLUMNS).stream()
                                        .findFirst()
                                        .orElse(String.join(", ", COLUMNS)))));
            }
        }
    }

    private Optional<AskedSetting> row(TextRow row) {
        RowCells cells = new RowCells(row, numbers);
        AskedSetting setting = new AskedSetting(
                cells.word(index("file")),
                cells.whole(index("pull")),
                cells.whole(index("order")),
                EngineSetting.ofNumbers(
                                advance(cells, "advance_deg"),
                                advance(cells, "offset_deg"),
                                bounded(cells, "lambda", MOST_LAMBDA).stream()
                                        .filter(value -> value > 0)
                                        .mapToObj(Lambda::of)
                                        .findFirst())
                        .fitted(cells.word(index("label")), cells.word(index("fuel")))
                        .withNote(cells.word(index("note"))),
                cells.knock(index("knock")));
        if (cells.broken().isPresent()) {
            broken(row, cells.broken().getAsInt());
            return Optional.empty();
        }
        if (setting.pull().isPresent()
                && !pulls.add(setting.file().orElse("") + "/" + setting.pull().getAsInt())) {
            broken(row, index("pull").orElseThrow());
            return Optional.empty();
        }
        return Optional.of(setting);
    }

    private Optional<Advance> advance(RowCells cells, String column) {
        return bounded(cells, column, MOST_ADVANCE_DEG).stream()
                .mapToObj(Advance::ofDeg)
                .findFirst();
    }

    private OptionalDouble bounded(RowCells cells, String column, double most) {
        OptionalDouble value = cells.number(index(column));
        boolean positive = column.equals("lambda");
        if (value.isPresent() && (Math.abs(value.getAsDouble()) > most || (positive && value.getAsDouble() <= 0))) {
            cells.breakAt(index(column).orElseThrow());
        }
        return value;
    }

    private void broken(TextRow row, int index) {
        findings.add(Finding.error(
                FindingCode.SETTINGS_ROW_BROKEN,
                Place.atLine(name, row.line()).withColumn(index + 1).withKey(header.get(index)),
                Detail.of("header", header.get(index)),
                Detail.of("value", row.field(index))));
    }

    private OptionalInt index(String column) {
        int index = header.indexOf(column);
        return index < 0 ? OptionalInt.empty() : OptionalInt.of(index);
    }
}
