package org.nextpull.plan.text;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.FuelChoice;
import org.nextpull.plan.SweepPlan;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;
import org.tomlj.TomlVersion;

/** Reads the text of a plan (TOML 1.0) and names everything that is wrong with it, each with its place. */
public final class PlanText {
    /** Far more than a plan with all its comments needs; so no more of a file is read. */
    public static final int MOST_BYTES = 500_000;

    private static final char BYTE_ORDER_MARK = '\ufeff';
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
        Problems problems = new Problems(fileName);
        TableReader top = TableReader.top(parsed, problems);
        PlanTables tables = PlanTables.of(top);
        SweepPlan plan = plan(tables);
        new AcrossTables(tables, problems).check(plan);
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

    private static List<Finding> ofOneKey(Problems problems) {
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
}
