package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.FuelChoice;
import org.nextpull.plan.SweepPlan;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;
import org.tomlj.TomlVersion;

/** Reads the text of a plan (TOML 1.0) and names everything that is wrong with it, each with its place. */
public final class PlanText {
    /** Far more than a plan with all its comments needs; so no more of a file is read. */
    public static final int MOST_BYTES = 500_000;

    private static final char BYTE_ORDER_MARK = '\ufeff';
    private static final String LIMITS = "[limits]";
    private static final char REPLACEMENT = '\ufffd';

    /** What can be trusted of a plan that does not parse: the keys that did parse. */
    private static final Set<FindingCode> OF_ONE_KEY = Set.of(
            FindingCode.PLAN_UNKNOWN_KEY,
            FindingCode.PLAN_WRONG_TYPE,
            FindingCode.PLAN_NOT_FINITE,
            FindingCode.PLAN_OUT_OF_RANGE,
            FindingCode.PLAN_UNKNOWN_WORD);

    private PlanText() {}

    /**
     * Reads a plan.
     *
     * @param text the whole text
     * @param fileName as the user named it, for the places of findings
     * @return the plan, perhaps with warnings; or no plan and every error in the order of the file
     */
    public static Outcome<SweepPlan> read(String text, String fileName) {
        Optional<Finding> unreadable = unreadable(text, fileName);
        return unreadable.isPresent()
                ? Outcome.failed(unreadable.get())
                : read(Toml.parse(plain(text), TomlVersion.V1_0_0), plain(text), fileName);
    }

    /**
     * The plan with another limit, under the checks that hold for the text of a plan.
     *
     * @param plan the plan as it stands
     * @param key a key of the table {@code [limits]}
     * @param value in the unit of that key
     * @return the plan, or what is wrong with key or value
     */
    public static Outcome<SweepPlan> withLimit(SweepPlan plan, String key, double value) {
        List<String> lines = new ArrayList<>();
        lines.add(LIMITS);
        lines.addAll(Arrays.stream(LimitsTable.TABLE.write(plan.limits()).split("\n"))
                .filter(line -> !line.isBlank() && !line.equals(LIMITS) && !line.startsWith(key + " "))
                .toList());
        lines.add(quoted(key) + " = " + number(value));
        String text = lines.stream().collect(Collectors.joining("\n", "", "\n"));
        return read(text, LIMITS).map(read -> plan.withLimits(read.limits()));
    }

    /** A bare key where it is one; anything else becomes a key that no plan has, and is named as unknown. */
    private static String quoted(String key) {
        return key.matches("[A-Za-z0-9_-]+") ? key : "'" + key.replaceAll("['\\p{Cntrl}]", "?") + "'";
    }

    private static String number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.format(Locale.ROOT, "%.0f", value)
                : Double.toString(value);
    }

    /** The text as TOML, whatever its keys; failed where it is none. */
    static Outcome<TomlTable> toml(String text, String fileName) {
        Optional<Finding> unreadable = unreadable(text, fileName);
        if (unreadable.isPresent()) {
            return Outcome.failed(unreadable.get());
        }
        TomlParseResult parsed = Toml.parse(plain(text), TomlVersion.V1_0_0);
        return parsed.hasErrors()
                ? Outcome.failed(new BrokenText(parsed.errors(), plain(text), fileName).merge(List.of()))
                : Outcome.of(parsed);
    }

    /** Without a byte order mark. */
    static String plain(String text) {
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    private static Optional<Finding> unreadable(String text, String fileName) {
        if (text.length() > MOST_BYTES) {
            return Optional.of(Finding.error(
                    FindingCode.PLAN_TOO_LONG,
                    Place.inFile(fileName),
                    Detail.of("length", text.length()),
                    Detail.of("most", MOST_BYTES)));
        }
        OptionalInt strange = firstStrange(plain(text));
        return strange.isPresent() ? Optional.of(notText(plain(text), strange.getAsInt(), fileName)) : Optional.empty();
    }

    private static Outcome<SweepPlan> read(TomlParseResult parsed, String text, String fileName) {
        PlanProblems problems = new PlanProblems(fileName);
        TableReader top = TableReader.top(parsed, problems);
        PlanTables tables = PlanTables.of(top);
        SweepPlan plan = plan(tables);
        new CrossTableChecks(tables, problems).check(plan);
        top.finish();
        if (parsed.hasErrors()) {
            return Outcome.failed(new BrokenText(parsed.errors(), text, fileName).merge(ofOneKey(problems)));
        }
        List<Finding> found = problems.inOrder();
        return found.stream().anyMatch(Finding::isError) ? Outcome.failed(found) : Outcome.of(plan, found);
    }

    private static SweepPlan plan(PlanTables tables) {
        FuelChoice fuels = FuelTable.read(tables.fuel(), tables.blends());
        return new SweepPlan(
                EngineTable.read(tables.engine()),
                fuels,
                CandidateTables.read(tables.candidates(), fuels),
                DynoTable.read(tables.dyno()),
                AirTable.read(tables.air()),
                BandTable.read(tables.band()),
                PullTable.read(tables.pull()),
                TimingTable.read(tables.timing()),
                MixtureTable.read(tables.mixture()),
                LimitsTable.read(tables.limits()),
                StartTable.read(tables.start()),
                SheetTable.read(tables.sheet()),
                GoalTable.read(tables.goal()),
                LogTable.read(tables.log()),
                WireTables.read(tables.wires()));
    }

    private static List<Finding> ofOneKey(PlanProblems problems) {
        return problems.inOrder().stream()
                .filter(finding -> OF_ONE_KEY.contains(finding.code()))
                .toList();
    }

    private static OptionalInt firstStrange(String text) {
        return IntStream.range(0, text.length())
                .filter(index -> isStrange(text.charAt(index)))
                .findFirst();
    }

    /** Characters that no text editor leaves behind; the last stands for bytes that were no UTF-8. */
    private static boolean isStrange(char character) {
        boolean blank = character == '\t' || character == '\n' || character == '\r';
        return (character < ' ' && !blank) || character == REPLACEMENT;
    }

    private static Finding notText(String text, int index, String fileName) {
        long line = text.substring(0, index)
                        .chars()
                        .filter(character -> character == '\n')
                        .count()
                + 1;
        int column = index - text.lastIndexOf('\n', index - 1);
        String shown = String.format(Locale.ROOT, "U+%04X", (int) text.charAt(index));
        return Finding.error(
                FindingCode.PLAN_NOT_TEXT, Place.atLine(fileName, line).withColumn(column), Detail.of("value", shown));
    }

    /** Text that is no TOML: what the parser says, with the keys that can be told to be wrong all the same. */
    private record BrokenText(List<TomlParseError> errors, String text, String file) {
        private static final Pattern DECIMAL_COMMA = Pattern.compile("=\\s*(-?\\d+),(\\d+)\\s*(?:#.*)?$");

        /** The parser's errors and those of single keys, in the order of the file. */
        List<Finding> merge(List<Finding> ofKeys) {
            if (isLog()) {
                return List.of(Finding.error(FindingCode.PLAN_IS_LOG, Place.inFile(file)));
            }
            List<String> lines = text.lines().toList();
            long trusted = firstBrokenHeader(lines);
            Stream<Finding> told =
                    ofKeys.stream().filter(finding -> finding.place().line().orElse(Long.MAX_VALUE) < trusted);
            return Stream.concat(errors.stream().map(error -> syntax(error, lines)), told)
                    .sorted(Comparator.<Finding>comparingLong(
                                    finding -> finding.place().line().orElse(Long.MAX_VALUE))
                            .thenComparingInt(
                                    finding -> finding.place().column().orElse(Integer.MAX_VALUE)))
                    .toList();
        }

        /** Below a broken header keys may have landed in the wrong table. */
        private long firstBrokenHeader(List<String> lines) {
            return errors.stream()
                    .mapToInt(error -> error.position().line())
                    .filter(line ->
                            line <= lines.size() && lines.get(line - 1).strip().startsWith("["))
                    .min()
                    .orElse(Integer.MAX_VALUE);
        }

        /** The first line of a log has separators and neither a key nor a table. */
        private boolean isLog() {
            return text.lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                    .findFirst()
                    .filter(line -> line.indexOf('=') < 0)
                    .filter(line -> line.chars()
                                    .filter(sign -> ",;\t".indexOf(sign) >= 0)
                                    .count()
                            > 1)
                    .isPresent();
        }

        private static Optional<Finding> comma(TomlParseError error, List<String> lines, Place place) {
            return lines.stream()
                    .skip(error.position().line() - 1L)
                    .findFirst()
                    .map(DECIMAL_COMMA::matcher)
                    .filter(Matcher::find)
                    .map(number -> Finding.error(
                            FindingCode.PLAN_DECIMAL_COMMA,
                            place,
                            Detail.of("value", number.group(1) + "," + number.group(2)),
                            Detail.of("corrected", number.group(1) + "." + number.group(2))));
        }

        private Finding syntax(TomlParseError error, List<String> lines) {
            Place place = Place.atLine(file, error.position().line())
                    .withColumn(error.position().column());
            return comma(error, lines, place)
                    .orElseGet(
                            () -> Finding.error(FindingCode.PLAN_SYNTAX, place, Detail.of("message", message(error))));
        }

        private static String message(TomlParseError error) {
            String said = String.valueOf(error.getMessage());
            return said.isEmpty() ? "not TOML" : said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1);
        }
    }

    public static String write(SweepPlan plan) {
        String text = EngineTable.TABLE.write(plan.engine())
                + FuelTable.TABLE.write(plan.fuel())
                + all(BlendTables.TABLE, plan.fuel().own())
                + all(CandidateTables.TABLE, plan.candidates())
                + DynoTable.TABLE.write(plan.dyno())
                + AirTable.TABLE.write(plan.air())
                + all(BandTable.TABLE, plan.band().stream().toList())
                + PullTable.TABLE.write(plan.pull())
                + all(TimingTable.TABLE, plan.timing().stream().toList())
                + all(MixtureTable.TABLE, plan.mixture().stream().toList())
                + LimitsTable.TABLE.write(plan.limits())
                + StartTable.TABLE.write(plan.start())
                + SheetTable.TABLE.write(plan.sheet())
                + GoalTable.TABLE.write(plan.goal())
                + LogTable.TABLE.write(plan.log())
                + all(WireTables.TABLE, plan.wires());
        return text.stripTrailing() + "\n";
    }

    private static <R> String all(PlanTable<R> table, List<R> members) {
        return members.stream().map(table::write).collect(Collectors.joining());
    }
}
