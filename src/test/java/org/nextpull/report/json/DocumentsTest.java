package org.nextpull.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.Inputs;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.pull.PullRules;
import org.nextpull.session.LogReading;
import org.nextpull.session.Replay;
import org.nextpull.session.SessionInput;
import org.nextpull.simulator.DemoLog;
import org.nextpull.simulator.DemoLogs;

/** The keys of the JSON documents are a promise: more may be added, none may go. */
class DocumentsTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String FINDING = "code severity text file line pull";

    @TempDir
    private static Path folder = Path.of("unset");

    private static JsonNode advise = MAPPER.createObjectNode();
    private static JsonNode replay = MAPPER.createObjectNode();
    private static JsonNode inspect = MAPPER.createObjectNode();
    private static List<String> replayLines = List.of();
    private static List<String> inspectLines = List.of();

    @BeforeAll
    static void writeDocuments() throws IOException {
        DemoLog log = DemoLogs.timing();
        Path file = Files.writeString(folder.resolve(log.name()), log.log());
        SweepPlan plan = PlanText.read(Files.readString(Path.of("sweep-plans/hillclimb-e10-timing.toml")), "plan.toml")
                .value()
                .orElseThrow();
        Inputs inputs = new LogFiles(plan.log().hints()).read(List.of(file.toString()));
        Input.Log input = inputs.logs().get(0);
        List<Finding> odd = List.of(Finding.warning(FindingCode.FILE_NAMED_TWICE, Place.inFile("again.csv")));
        Replay day = Replay.of(
                SessionInput.of(plan, List.of(input.recording()), List.of()).withFound(odd));
        advise = MAPPER.readTree(new AdviseJson().advise(day.whole()));
        replay = MAPPER.readTree(new AdviseJson().replay(day));
        replayLines = new AdviseJson().replayLines(day);
        InspectJson files = new InspectJson()
                .add(LogReading.read(input.recording(), PullRules.of(plan), AlarmWatch.Rules.of(plan)));
        inspect = MAPPER.readTree(files.document(odd));
        inspectLines = files.takeLines();
    }

    private static void hasKeys(JsonNode node, String keys) {
        assertThat(node.isObject()).as(node.toString()).isTrue();
        Set<String> found = new TreeSet<>();
        node.fieldNames().forEachRemaining(found::add);
        assertThat(found).contains(keys.split(" "));
    }

    @Test
    void adviseHasItsKeys() {
        hasKeys(
                advise,
                "schema standard torque_at interval_percent pulls scatter_percent scatter_df drift_percent_per_pull timing mixture "
                        + "chosen next findings");
        assertThat(advise.get("schema").asInt()).isEqualTo(1);
        assertThat(advise.get("standard").asText()).isEqualTo("iso-1585");
        assertThat(advise.get("torque_at").asText()).isEqualTo("crank");
        hasKeys(
                advise.get("timing"),
                "peak_deg best_deg low_deg high_deg bracketed knock knock_limit_deg torque_nm rows_proven rows");
        hasKeys(advise.get("chosen"), "advance_deg lambda by");
        hasKeys(advise.get("next"), "action advance_deg offset_deg lambda code because wait");
        assertThat(advise.get("mixture").isNull()).as("the plan has no mixture").isTrue();
    }

    @Test
    void aPullHasItsKeys() {
        assertThat(advise.get("pulls")).isNotEmpty().allSatisfy(pull -> {
            hasKeys(
                    pull,
                    "number source first_line label fuel advance_deg offset_deg lambda correction mean_torque_nm mean_power_kw "
                            + "peak_torque_nm peak_torque_rpm peak_power_kw peak_power_rpm knock used findings");
            pull.get("findings").forEach(finding -> hasKeys(finding, FINDING));
        });
    }

    @Test
    void aFindingIsEverywhereTheSame() {
        Stream.of(advise, replay, inspect)
                .forEach(document -> assertThat(document.get("findings"))
                        .isNotEmpty()
                        .allSatisfy(finding -> hasKeys(finding, FINDING)));
    }

    @Test
    void replayHoldsAStepForEachPullOnLinesToo() throws IOException {
        assertThat(replayLines).hasSize(advise.get("pulls").size());
        for (String line : replayLines) {
            JsonNode step = MAPPER.readTree(line);
            hasKeys(step, "schema pull chosen next");
            hasKeys(step.get("next"), "action advance_deg offset_deg lambda code because wait");
            assertThat(line).doesNotContain("\n");
        }
    }

    @Test
    void inspectHasItsKeys() throws IOException {
        assertThat(inspect.get("files")).hasSize(1).allSatisfy(file -> {
            hasKeys(file, "source kind encoding separator decimal rows bad_rows sample_hz columns pulls findings");
            assertThat(file.get("columns")).isNotEmpty().allSatisfy(column -> hasKeys(column, "header channel unit"));
            assertThat(file.get("pulls"))
                    .isNotEmpty()
                    .allSatisfy(pull -> hasKeys(pull, "number first_line last_line from_rpm to_rpm kind used"));
        });
        assertThat(inspectLines).hasSize(1);
        hasKeys(MAPPER.readTree(inspectLines.get(0)), "schema source kind");
    }

    @Test
    void aFailureIsADocumentToo() throws IOException {
        Finding finding = Finding.error(
                FindingCode.PLAN_OUT_OF_RANGE,
                Place.atLine("hill.toml", 7).withColumn(14).withKey("timing.start_deg"),
                Detail.of("value", "180"),
                Detail.of("low", "-20"),
                Detail.of("high", "70"));
        JsonNode failed = MAPPER.readTree(new FindingsJson().failure(List.of(finding)));
        JsonNode usage = MAPPER.readTree(new FindingsJson().failure("wrong-usage", "There is no option --plans."));
        for (JsonNode document : List.of(failed, usage)) {
            hasKeys(document, "schema error");
            hasKeys(document.get("error"), "code message file line column key value do");
        }
        JsonNode error = failed.get("error");
        assertThat(error.get("line").asInt()).isEqualTo(7);
        assertThat(error.get("value").asText()).isEqualTo("180");
        assertThat(error.get("do").asText()).isEqualTo("give a number from -20 to 70.");
    }
}
