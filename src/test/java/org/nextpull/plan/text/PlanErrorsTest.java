package org.nextpull.plan.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.SparkMap;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.TimingPlan;

/** Every class of error with its place; a plan with an error gives no plan. */
class PlanErrorsTest {
    private static List<Finding> errors(String text) {
        var outcome = PlanText.read(text, "plan.toml");
        assertThat(outcome.isFailed()).isTrue();
        assertThat(outcome.findings())
                .allSatisfy(finding -> assertThat(finding.place().file()).contains("plan.toml"));
        return outcome.findings();
    }

    private static Finding only(String text) {
        List<Finding> errors = errors(text);
        assertThat(errors).hasSize(1);
        return errors.get(0);
    }

    private static void assertPlace(Finding finding, FindingCode code, long line, int column) {
        assertThat(finding.code()).isEqualTo(code);
        assertThat(finding.place().line()).hasValue(line);
        assertThat(finding.place().column()).hasValue(column);
    }

    private static String withSlash(String text) {
        return text.replace("/", "\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[timing]/strat_deg = 3 | timing.strat_deg | 2 | 1 | start_deg",
                "[enigne]/name = 'a' | enigne | 1 | 1 | engine",
                "[engine]/  inducton = 'natural' | engine.inducton | 2 | 3 | induction",
                "[log]/columns = { torq = 'x' } | log.columns.torq | 2 | 13 | torque",
                "[air]/start_deg = 3 | air.start_deg | 2 | 1 | timing.start_deg",
                "from_rpm = 3 | from_rpm | 1 | 1 | band.from_rpm",
                "[[wire]]/device = 'a'/buad = 9600 | wire[1].buad | 3 | 1 | baud",
            })
    void anUnknownKeyNamesTheNearestKnownOne(String text, String key, long line, int column, String nearest) {
        Finding finding = errors(withSlash(text)).stream()
                .filter(found -> found.code() == FindingCode.PLAN_UNKNOWN_KEY)
                .findFirst()
                .orElseThrow();
        assertPlace(finding, FindingCode.PLAN_UNKNOWN_KEY, line, column);
        assertThat(finding.place().key()).contains(key);
        assertThat(finding.text("nearest")).contains(nearest);
    }

    @Test
    void aKeyThatResemblesNothingShowsWhatIsKnown() {
        Finding finding = only("[band]\nfrom_rpm = 2000\nto_rpm = 6000\nxylophone = 1");
        assertThat(finding.text("nearest")).isEmpty();
        assertThat(finding.text("allowed")).contains("from_rpm, to_rpm, rows_every_rpm");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[limits]/most_rpm = 'high' | limits.most_rpm | a number | \"high\"",
                "[limits]/exhaust_c = true | limits.exhaust_c | a number | true",
                "[engine]/name = 3 | engine.name | a text in quotes | 3",
                "[engine]/name = ' ' | engine.name | a text that is not empty | \" \"",
                "[engine]/cylinders = 4.5 | engine.cylinders | a whole number | 4.5",
                "[goal]/learn_from_notebook = 'yes' | goal.learn_from_notebook | true or false | \"yes\"",
                "[start]/coolant_c = 80 | start.coolant_c | a list of two numbers, [low, high] | 80",
                "[start]/oil_c = [80] | start.oil_c | a list of two numbers, [low, high] | [80]",
                "[log]/columns = 'torque' | log.columns | a table | \"torque\"",
                "# none/band = 3 | band | a table | 3",
                "# none/wire = 3 | wire | a list of tables, each headed [[wire]] | 3",
                "# none/[wire] | wire | a list of tables, each headed [[wire]] | a table",
                "# none/[[goal]] | goal | a table | [a table]",
                "[air]/baro_kpa = 2026-01-01 | air.baro_kpa | a number | 2026-01-01",
            })
    void aWrongTypeIsRefused(String text, String key, String want, String value) {
        Finding finding = only(withSlash(text));
        assertThat(finding.code()).isEqualTo(FindingCode.PLAN_WRONG_TYPE);
        assertThat(finding.place().line()).hasValue(2);
        assertThat(finding.place().key()).contains(key);
        assertThat(finding.text("want")).contains(want);
        assertThat(finding.text("value")).contains(value);
    }

    @Test
    void oneElementOfAListIsNamedByItsPlace() {
        Finding finding = only("[start]\ncoolant_c = [80, 'hot']");
        assertPlace(finding, FindingCode.PLAN_WRONG_TYPE, 2, 18);
        assertThat(finding.place().key()).contains("start.coolant_c[2]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"nan", "inf", "-inf", "+nan"})
    void aNumberMustBeFinite(String number) {
        assertPlace(only("[limits]\noil_c = " + number), FindingCode.PLAN_NOT_FINITE, 2, 1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[limits]/knock_margin_deg = -1 | -1 | 0 | 20",
                "[air]/baro_kpa = 1013 | 1013 | 30 | 120",
                "[air]/humidity_percent = 101 | 101 | 0 | 100",
                "[limits]/lean_lambda = 13.2 | 13.2 | 0.3 | 2.5",
                "[engine]/compression_ratio = 0.9 | 0.9 | 2 | 40",
                "[engine]/displacement_l = 1998 | 1998 | 0.01 | 100",
                "[goal]/max_pulls = 0 | 0 | 1 | 10000",
                "[pull]/full_load_percent = 0.95 | 0.95 | 10 | 100",
                "[log]/afr_scale = 0 | 0 | 1 | 40",
                "[limits]/knock_events = 1e300 | 1"
                        + "000000000000000000000000000000000000000000000000000000000000... | 1 | 1000000",
            })
    void aNumberOutOfRangeSaysTheRange(String text, String value, String low, String high) {
        Finding finding = only(withSlash(text));
        assertPlace(finding, FindingCode.PLAN_OUT_OF_RANGE, 2, 1);
        assertThat(finding.text("low")).contains(low);
        assertThat(finding.text("high")).contains(high);
        assertThat(finding.text("value").orElseThrow()).startsWith(value.substring(0, Math.min(4, value.length())));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[engine]/induction = 'bosted' | boosted",
                "[dyno]/kind = 'engine brake' | engine-brake",
                "[air]/standard = 'iso1585' | iso-1585",
                "[goal]/response = 'torqe' | torque",
                "[log]/units = { torque = 'lbf.tf' } | lbf.ft",
            })
    void anUnknownWordNamesTheNearestKnownOne(String text, String nearest) {
        Finding finding = only(withSlash(text));
        assertThat(finding.code()).isEqualTo(FindingCode.PLAN_UNKNOWN_WORD);
        assertThat(finding.place().line()).hasValue(2);
        assertThat(finding.text("nearest")).contains(nearest);
        assertThat(finding.text("allowed").orElseThrow()).contains(nearest);
    }

    @Test
    void stopBitsAreOneOfThree() {
        Finding finding = only("[[wire]]\ndevice = 'a'\nstop = 1.2");
        assertPlace(finding, FindingCode.PLAN_UNKNOWN_WORD, 3, 1);
        assertThat(finding.text("allowed")).contains("1, 1.5, 2");
    }

    @Test
    void whatATableNeedsIsNamedAtTheTable() {
        List<Finding> errors = errors("\n[timing]\nstart_deg = 20\n[mixture]\n[band]\nto_rpm = 6000\n[[blend]]\n");
        assertThat(errors).allMatch(finding -> finding.code() == FindingCode.PLAN_MISSING_KEY);
        assertThat(errors.stream()
                        .map(finding -> finding.place().key().orElse("") + "@"
                                + finding.place().line().orElse(0)))
                .containsExactlyInAnyOrder(
                        "timing.least_deg@2",
                        "timing.most_deg@2",
                        "mixture.start_lambda@4",
                        "mixture.richest_lambda@4",
                        "mixture.leanest_lambda@4",
                        "band.from_rpm@5",
                        "blend[1].name@7",
                        "blend[1].carbon@7",
                        "blend[1].hydrogen@7");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[timing]/start_deg = 36/least_deg = 10/most_deg = 34 | timing.start_deg | not above | timing.most_deg",
                "[timing]/start_deg = 8/least_deg = 10/most_deg = 34 | timing.least_deg | not above | timing.start_deg",
                "[timing]/start_deg = 20/least_deg = 34/most_deg = 10 | timing.least_deg | not above | timing.most_deg",
                "[timing]/start_deg = 20/least_deg = 10/most_deg = 34/resolution_deg = 3 | timing.resolution_deg | not above | timing.largest_step_deg",
                "[mixture]/start_lambda = 0.87/richest_lambda = 0.95/leanest_lambda = 0.8 | mixture.richest_lambda | not above | mixture.leanest_lambda",
                "[mixture]/start_lambda = 0.99/richest_lambda = 0.8/leanest_lambda = 0.95 | mixture.start_lambda | not above | mixture.leanest_lambda",
                "[mixture]/start_lambda = 0.79/richest_lambda = 0.8/leanest_lambda = 0.95 | mixture.richest_lambda | not above | mixture.start_lambda",
                "[mixture]/start_lambda = 0.9/richest_lambda = 0.8/leanest_lambda = 0.95/resolution_lambda = 0.05 | mixture.resolution_lambda | not above | mixture.largest_step_lambda",
                "[band]/from_rpm = 6000/to_rpm = 3000 | band.from_rpm | below | band.to_rpm",
                "[band]/from_rpm = 6000/to_rpm = 6000 | band.from_rpm | below | band.to_rpm",
                "[band]/from_rpm = 3000/to_rpm = 7000/[limits]/most_rpm = 6500 | band.to_rpm | not above | limits.most_rpm",
                "[start]/oil_c = [130, 140]/[limits]/oil_c = 120 | start.oil_c | not above | limits.oil_c",
                "[pull]/throw_away_first = 5/[goal]/max_pulls = 5 | pull.throw_away_first | below | goal.max_pulls",
            })
    void numbersInTheWrongOrderNameBothKeys(String text, String key, String relation, String other) {
        Finding finding = only(withSlash(text));
        assertThat(finding.code()).isEqualTo(FindingCode.PLAN_ORDER);
        assertThat(finding.place().key()).contains(key);
        assertThat(finding.place().line()).isPresent();
        assertThat(finding.text("relation")).contains(relation);
        assertThat(finding.text("other")).contains(other);
        assertThat(finding.text("value").orElseThrow()).isNotEmpty();
        assertThat(finding.text("other_value").orElseThrow()).isNotEmpty();
    }

    @Test
    void theStartOutsideBothLimitsIsOneErrorEach() {
        assertThat(errors("[timing]\nstart_deg = 40\nleast_deg = 10\nmost_deg = 34\nlargest_step_deg = 0.1\n"))
                .extracting(Finding::code)
                .containsExactly(FindingCode.PLAN_ORDER, FindingCode.PLAN_ORDER);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[dyno]/engine_side_inertia_kg_m2 = 0.2 | dyno.inertia_in_log | PLAN_KEY_NEEDED",
                "[dyno]/kind = 'chassis-brake'/roller_inertia_kg_m2 = 20 | dyno.inertia_in_log | PLAN_KEY_NEEDED",
                "[dyno]/kind = 'chassis-inertia' | dyno.roller_inertia_kg_m2 | PLAN_KEY_NEEDED",
                "[dyno]/inertia_in_log = false | dyno.engine_side_inertia_kg_m2 | PLAN_KEY_NEEDED",
                "[dyno]/roller_radius_m = 0.3 | dyno.roller_radius_m | PLAN_KEY_MEANINGLESS",
                "[dyno]/torque_at = 'roller' | dyno.torque_at | PLAN_KEYS_CONFLICT",
                "[dyno]/torque_at = 'wheel' | dyno.torque_at | PLAN_KEYS_CONFLICT",
                "[air]/standard = 'iso-1585'/[log]/corrected_by = 'sae-j607' | log.corrected_by | PLAN_KEYS_CONFLICT",
                "[limits]/lean_for_s = 1 | limits.lean_lambda | PLAN_KEY_NEEDED",
                "[[wire]]/lines = 'pairs'/columns = ['a'] | wire[1].columns | PLAN_KEY_MEANINGLESS",
                "[[wire]]/lines = 'sentence' | wire[1].columns | PLAN_KEY_NEEDED",
                "[[wire]]/device = 'a'/[[wire]]/device = 'a' | wire[2].device | PLAN_NAME_TWICE",
                "[[wire]]/device = 'a'/[[wire]]/bits = 8 | wire[2].device | PLAN_MISSING_KEY",
                "[start]/inlet_c = [40, 10] | start.inlet_c | PLAN_WINDOW_REVERSED",
            })
    void keysThatDoNotGoTogetherAreRefused(String text, String key, FindingCode code) {
        Finding finding = only(withSlash(text));
        assertThat(finding.code()).isEqualTo(code);
        assertThat(finding.place().key()).contains(key);
        assertThat(finding.place().line()).isPresent();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[fuel]/blend = 'e11' | fuel.blend | FUEL_UNKNOWN",
                "[[blend]]/name = 'a'/of = { ethanol = 0.3, e10 = 0.6 } | blend[1] | FUEL_PARTS_MISSING",
                "[[blend]]/name = 'a'/of = { ethanol = 0.6, e10 = 0.6 } | blend[1] | FUEL_FRACTIONS_OVER_ONE",
                "[[blend]]/name = 'a'/of = { ethanoll = 1 } | blend[1] | FUEL_UNKNOWN",
                "[[blend]]/name = 'a'/of = { a = 1 } | blend[1] | FUEL_UNKNOWN",
                "[[blend]]/name = 'a'/of = { ethanol = -0.1, e10 = 1 } | blend[1].of.ethanol | PLAN_OUT_OF_RANGE",
                "[[blend]]/name = 'e10'/of = { ethanol = 1 } | blend[1] | FUEL_NAME_TAKEN",
                "[[blend]]/name = 'a'/carbon = 0.9/hydrogen = 0.2 | blend[1] | FUEL_FRACTIONS_OVER_ONE",
                "[[blend]]/name = 'a'/carbon = 0.9/of = { e10 = 1 } | blend[1].carbon | PLAN_KEY_MEANINGLESS",
                "[[blend]]/name = 'a'/carbon = 0.86/hydrogen = 0.14/by = 'mass' | blend[1].of | PLAN_KEY_NEEDED",
            })
    void aBlendThatIsNoFuelIsRefused(String text, String key, FindingCode code) {
        Finding finding = only(withSlash(text));
        assertThat(finding.code()).isEqualTo(code);
        assertThat(finding.place().key()).contains(key);
        assertThat(finding.place().line()).isPresent();
    }

    private static final String TIMING = "[timing]/start_deg = 20/least_deg = 10/most_deg = 30/";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "present_map = [[3000, 18], [3000, 20]] | timing.present_map[2] | PLAN_NOT_RISING | 28",
                "present_map = [[3000, 18], [2500, 20]] | timing.present_map[2] | PLAN_NOT_RISING | 28",
                "present_map = [[3000, 18, 1]] | timing.present_map[1] | PLAN_WRONG_TYPE | 16",
                "present_map = [[3000, 180]] | timing.present_map[1] | PLAN_OUT_OF_RANGE | 16",
                "present_map = [3000, 18] | timing.present_map[1] | PLAN_WRONG_TYPE | 16",
                "present_map = [] | timing.present_map | PLAN_WRONG_TYPE | 1",
                "map_rpm = [3000, 3500, 3500] | timing.map_rpm[3] | PLAN_NOT_RISING | 24",
                "map_rpm = 3000 | timing.map_rpm | PLAN_WRONG_TYPE | 1",
            })
    void aMapThatIsNoneIsRefusedAtItsCell(String line, String key, FindingCode code, int column) {
        Finding finding = errors(withSlash(TIMING + line)).stream()
                .filter(Finding::isError)
                .findFirst()
                .orElseThrow();
        assertPlace(finding, code, 5, column);
        assertThat(finding.place().key()).contains(key);
    }

    @Test
    void aPresentMapCoversTheBand() {
        String text = withSlash(TIMING + "present_map = [[3000, 18], [6000, 26]]/[band]/from_rpm = %d/to_rpm = %d");
        assertThat(PlanText.read(text.formatted(3000, 6000), "p").isFailed()).isFalse();
        Finding above = errors(text.formatted(3000, 6500)).stream()
                .filter(Finding::isError)
                .findFirst()
                .orElseThrow();
        assertPlace(above, FindingCode.PLAN_MAP_SHORT, 5, 1);
        assertThat(above.place().key()).contains("timing.present_map");
        assertThat(errors(text.formatted(2500, 6000))).extracting(Finding::code).contains(FindingCode.PLAN_MAP_SHORT);
    }

    @ParameterizedTest
    @CsvSource(
            delimiterString = "|",
            value = {
                "18 | 26 | 0 | true",
                "18 | 47 | 0 | false",
                "9 | 26 | 0 | false",
                "18 | 40 | 7 | false",
                "18 | 26 | -9 | false",
            })
    void theFirstPullOfAMapLiesWithinThePlansLimits(double low, double high, double start, boolean isFine) {
        String text = withSlash("[timing]/least_deg = 10/most_deg = 46/sets = 'map'/start_deg = %s"
                + "/present_map = [[3000, %s], [6000, %s]]");
        assertThat(PlanText.read(text.formatted(start, low, high), "p").findings().stream()
                        .noneMatch(finding -> finding.code() == FindingCode.PLAN_MAP_OUTSIDE))
                .isEqualTo(isFine);
    }

    @Test
    void aKeyThatThePlanDoesNotGoByIsKeptAndSaid() {
        var outcome = PlanText.read(
                withSlash(TIMING.replace("start_deg = 20/", "")
                        + "sets = 'map'/present_map = [[3000, 18]]/[pull]/hold_speeds = [3000]/hold_most_s = 40"),
                "p");
        assertThat(outcome.findings())
                .extracting(finding -> finding.code() + " " + finding.severity() + " "
                        + finding.place().key().orElse(""))
                .containsExactly(
                        "PLAN_KEY_UNUSED WARNING pull.hold_speeds", "PLAN_KEY_UNUSED WARNING pull.hold_most_s");
        var plan = outcome.value().orElseThrow();
        assertThat(plan.timing().orElseThrow().sets()).isEqualTo(TimingPlan.Sets.MAP);
        assertThat(plan.timing().orElseThrow().map().present())
                .contains(SparkMap.of(new double[] {3000}, new double[] {18}));
        assertThat(plan.pull().held().speedsRpm()).containsExactly(3000.0);
        assertThat(plan.pull().held().mostS()).hasValue(40);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[pull]/hold_speeds = [3000, 7000]/[limits]/most_rpm = 6500 | pull.hold_speeds | PLAN_ORDER",
                "[pull]/hold_speeds = [3000, 3000] | pull.hold_speeds[2] | PLAN_NOT_RISING",
                "[pull]/hold_s = 5/hold_most_s = 4 | pull.hold_s | PLAN_ORDER",
                "[timing]/start_deg = 20/least_deg = 10/most_deg = 30/sets = 'flat'/map_rpm = [3000] | timing.map_rpm | PLAN_KEY_MEANINGLESS",
                "[sheet]/customer = 3 | sheet.customer | PLAN_WRONG_TYPE",
                "[sheet]/custommer = 'a' | sheet.custommer | PLAN_UNKNOWN_KEY",
            })
    void newerKeysAreCheckedToo(String text, String key, FindingCode code) {
        Finding finding = errors(withSlash(text)).stream()
                .filter(Finding::isError)
                .findFirst()
                .orElseThrow();
        assertThat(finding.code()).isEqualTo(code);
        assertThat(finding.place().key()).contains(key);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[dyno]\nkind = 'chassis-brake'\ntorque_at = 'crank'",
                "[start]\noil_c = [90, 125]\n[limits]\noil_c = 120",
                "[limits]\nlean_lambda = 0.9\n[mixture]\nstart_lambda = 0.85\nrichest_lambda = 0.8\nleanest_lambda = 0.95"
            })
    void aPlanThatIsOnlyOddIsReadWithAWarning(String text) {
        var outcome = PlanText.read(text, "plan.toml");
        assertThat(outcome.isFailed()).isFalse();
        assertThat(outcome.findings()).extracting(Finding::severity).containsExactly(Finding.Severity.WARNING);
    }

    @Test
    void anInertiaRollerWhoseLogHoldsTorqueNeedsNoInertia() {
        String text = "[dyno]\nkind = 'chassis-inertia'\ninertia_in_log = true";
        assertThat(PlanText.read(text, "plan.toml").findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[air]/baro_kpa = 0.8.0 | 2 | 15",
                "[air]/baro_kpa = | 2 | 11",
                "[engine]/name = \"open | 2 | 13",
                "[air]/air_c = 1/air_c = 2 | 3 | 1",
                "[air]/[air] | 2 | 1",
                "[air]/air_c = 1e400 | 2 | 9",
            })
    void textThatIsNoTomlSaysWhere(String text, long line, int column) {
        assertPlace(only(withSlash(text)), FindingCode.PLAN_SYNTAX, line, column);
    }

    @Test
    void everyErrorIsReportedAtOnceInTheOrderOfTheFile() {
        List<Finding> errors = errors("[engine]\nnam = 'a'\ncylinders = 'four'\n[air]\nbaro_kpa = 0,8\nair_c = 999\n");
        assertThat(errors)
                .extracting(Finding::code)
                .containsExactly(
                        FindingCode.PLAN_UNKNOWN_KEY,
                        FindingCode.PLAN_WRONG_TYPE,
                        FindingCode.PLAN_DECIMAL_COMMA,
                        FindingCode.PLAN_OUT_OF_RANGE);
        assertThat(errors.stream().mapToLong(finding -> finding.place().line().orElse(0)))
                .containsExactly(2L, 3L, 5L, 6L);
    }

    @Test
    void aDecimalCommaIsSaidWithTheNumberToWrite() {
        Finding finding = only("[air]\nbaro_kpa = 98,45  # at the wall\n");
        assertPlace(finding, FindingCode.PLAN_DECIMAL_COMMA, 2, 14);
        assertThat(finding.text("corrected")).contains("98.45");
        assertThat(errors("[pull]\nhold_speeds = [3600 4900,5]\n"))
                .extracting(Finding::code)
                .containsOnly(FindingCode.PLAN_SYNTAX);
    }

    @Test
    void belowABrokenHeaderNoKeyIsCalledUnknown() {
        assertThat(errors("[engine]\nname = 'a'\n[timing\nstart_deg = 20\n"))
                .extracting(Finding::code)
                .containsOnly(FindingCode.PLAN_SYNTAX);
    }

    @Test
    void binaryDataIsNoPlan() {
        Finding finding = only("[engine]\nname\u0000 = 1");
        assertPlace(finding, FindingCode.PLAN_NOT_TEXT, 2, 5);
        assertThat(finding.text("value")).contains("U+0000");
        assertThat(only("abc\ufffd").code()).isEqualTo(FindingCode.PLAN_NOT_TEXT);
    }

    @Test
    void aLineOfMostOfAPlanIsReadOrRefusedLikeAnyOther() {
        String long1 = "x".repeat(400_000);
        assertThat(PlanText.read("# " + long1, "plan.toml").isFailed()).isFalse();
        assertThat(PlanText.read("[engine]\nname = '" + long1 + "'", "plan.toml")
                        .isFailed())
                .isFalse();
        Finding unknown = only(long1 + " = 1");
        assertThat(unknown.code()).isEqualTo(FindingCode.PLAN_UNKNOWN_KEY);
        Finding wrong = only("[air]\nbaro_kpa = '" + long1 + "'");
        assertThat(wrong.text("value").orElseThrow().length()).isLessThan(100);
        assertThat(only("#".repeat(5_000_000)).code()).isEqualTo(FindingCode.PLAN_TOO_LONG);
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 1_000, 100_000})
    void deepNestingIsRefusedWithoutAFault(int depth) {
        assertThat(errors("[start]\noil_c = " + "[".repeat(depth) + "]".repeat(depth)))
                .isNotEmpty();
        assertThat(errors("[log]\ncolumns = " + "{a=".repeat(depth) + "1" + "}".repeat(depth)))
                .isNotEmpty();
        assertThat(errors("a.".repeat(depth) + "b = 1")).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anyDamageToAPlanGivesAPlanOrErrorsWithLines(long seed) {
        Random random = new Random(seed);
        for (int trial = 0; trial < 60; trial++) {
            StringBuilder text = new StringBuilder(FullPlan.TEXT);
            for (int edits = random.nextInt(4) + 1; edits > 0; edits--) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(3)) {
                    case 0 -> text.deleteCharAt(at);
                    case 1 -> text.insert(at, (char) (' ' + random.nextInt(95)));
                    default -> text.setCharAt(at, "[]{}=\"'\n#.,-0".charAt(random.nextInt(13)));
                }
            }
            var outcome = PlanText.read(text.toString(), "plan.toml");
            assertThat(outcome.isFailed()).isEqualTo(outcome.findings().stream().anyMatch(Finding::isError));
        }
    }
}
