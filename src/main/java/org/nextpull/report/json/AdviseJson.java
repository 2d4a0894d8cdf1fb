package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.advice.Advice;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.MapState;
import org.nextpull.advice.Optimum;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.advice.Verdict;
import org.nextpull.advice.WaitFor;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.finding.Finding;
import org.nextpull.plan.Goal;
import org.nextpull.report.AdviceText;
import org.nextpull.report.Shown;
import org.nextpull.response.MeasuredPull;
import org.nextpull.scatter.Repeatability;
import org.nextpull.scatter.Scatter;
import org.nextpull.session.Replay;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.UnitSystem;

/** The documents of {@code advise} and {@code replay}. */
public final class AdviseJson {
    private static final int INTERVAL_PERCENT = 90;

    private final FindingsJson findings = new FindingsJson();
    private final PullJson pulls = new PullJson(findings);
    private final AdviceText words = new AdviceText(new Shown(UnitSystem.METRIC));

    /** The document of {@code advise}. */
    public String advise(SessionResult result) {
        return Json.pretty(document(result));
    }

    /** The same, written as it is made, and a line end. */
    public void advise(SessionResult result, Writer out) throws IOException {
        Json.pretty(document(result), out);
        out.write("\n");
    }

    ObjectNode document(SessionResult result) {
        ObjectNode document = Json.document();
        document.put("standard", result.plan().air().standard().id());
        document.put("torque_at", result.plan().dyno().torqueAt().id());
        document.put("interval_percent", INTERVAL_PERCENT);
        notWatched(document.putArray("not_watched"), result);
        document.set("pulls", Json.array(result.pulls(), pulls::node));
        Optional<Scatter> scatter = result.repeatability().scatter();
        Json.put(document, "scatter_percent", scatter.map(Scatter::percent), 3);
        Json.put(document, "scatter_df", scatter.map(Scatter::degreesOfFreedom), 0);
        Json.put(
                document,
                "drift_percent_per_pull",
                result.repeatability().drift().map(Repeatability.Drift::percentPerPull),
                4);
        verdict(document, result);
        CandidateJson.put(document, result);
        List<Finding> all = result.foundOfDay();
        if (result.isWithoutAnswer()) {
            findings.putError(document, all);
        }
        findings.addAll(document.putArray("findings"), all);
        return document;
    }

    private static void notWatched(ArrayNode array, SessionResult result) {
        for (SessionResult.WatchGap gap : result.watchGaps()) {
            ObjectNode node = array.addObject();
            node.put("limit", gap.limit().id());
            node.put("channel", gap.what().channel().id());
            node.put("why", gap.what().life().id());
            ArrayNode pulls = node.putArray("pulls");
            gap.pulls().forEach(pulls::add);
        }
    }

    private void verdict(ObjectNode document, SessionResult result) {
        Optional<Verdict> verdict = result.verdict();
        Goal.Response response = result.plan().goal().response();
        KnockMark knock = dayKnock(result.pulls());
        Optional<MapState> map = verdict.flatMap(Verdict::map);
        Optional<ObjectNode> timing = map.isPresent()
                ? map.map(state -> MapJson.timing(state, knock))
                : verdict.flatMap(Verdict::timing).map(answer -> timing(answer, knock, response));
        putOrNull(document, "timing", timing);
        putOrNull(document, "mixture", verdict.flatMap(Verdict::mixture).map(AdviseJson::mixture));
        putOrNull(document, "chosen", verdict.flatMap(Verdict::chosen).map(AdviseJson::chosen));
        putOrNull(document, "next", verdict.map(this::next));
    }

    private static void putOrNull(ObjectNode document, String key, Optional<ObjectNode> node) {
        node.ifPresentOrElse(present -> document.set(key, present), () -> document.putNull(key));
    }

    /** The worst that is known of knock over the pulls: heard in one is heard, not measured in one is not "none". */
    private static KnockMark dayKnock(List<MeasuredPull> pulls) {
        if (pulls.stream().anyMatch(pull -> pull.knock().isHeard())) {
            return KnockMark.HEARD;
        }
        boolean all =
                !pulls.isEmpty() && pulls.stream().allMatch(pull -> pull.knock().isMeasured());
        return all ? KnockMark.NONE : KnockMark.NOT_MEASURED;
    }

    private static ObjectNode timing(SweepAnswer answer, KnockMark knock, Goal.Response response) {
        ObjectNode node = Json.object();
        Optional<Optimum> optimum = answer.optimum();
        Json.put(node, "peak_deg", optimum.filter(Optimum::isPeakPlaced).map(Optimum::peak), 2);
        Json.put(node, "best_deg", optimum.map(Optimum::best), 2);
        Json.put(node, "low_deg", optimum.map(found -> found.bestInterval().low()), 2);
        Json.put(node, "high_deg", optimum.map(found -> found.bestInterval().high()), 2);
        Json.put(node, "capped_deg", answer.capped().map(SweepAnswer.Capped::best), 2);
        node.put("bracketed", answer.bracketed());
        node.put("knock", knock.id());
        Json.put(node, "knock_limit_deg", answer.limit(), 2);
        OptionalDouble fitted = optimum.map(Optimum::response)
                .or(() -> answer.capped().map(SweepAnswer.Capped::response))
                .orElse(OptionalDouble.empty());
        Json.put(node, "torque_nm", response == Goal.Response.TORQUE ? fitted : OptionalDouble.empty(), 2);
        Json.put(
                node,
                "power_kw",
                response == Goal.Response.POWER && fitted.isPresent()
                        ? OptionalDouble.of(fitted.getAsDouble() / 1000)
                        : OptionalDouble.empty(),
                2);
        node.put("rows_proven", answer.rowsProven());
        ArrayNode rows = node.putArray("rows");
        for (SweepAnswer.RowOptimum row : answer.rows()) {
            ObjectNode each = rows.addObject();
            Json.put(each, "rpm", row.rpm(), 0);
            Json.put(each, "best_deg", row.bestDeg(), 2);
            Json.put(each, "low_deg", row.intervalDeg().low(), 2);
            Json.put(each, "high_deg", row.intervalDeg().high(), 2);
        }
        ArrayNode open = node.putArray("open_rows");
        for (SweepAnswer.OpenRow row : answer.openRows()) {
            Json.put(open.addObject().put("why", row.why().id()), "rpm", row.rpm(), 0);
        }
        node.putArray("knock_limits");
        MapJson.putGain(node, answer.mapGain());
        outliers(node, answer);
        return node;
    }

    private static void outliers(ObjectNode node, SweepAnswer answer) {
        ArrayNode outliers = node.putArray("outliers");
        answer.outliers().forEach(outliers::add);
    }

    private static ObjectNode mixture(SweepAnswer answer) {
        ObjectNode node = Json.object();
        Optional<Optimum> optimum = answer.optimum();
        Json.put(node, "peak_lambda", optimum.map(Optimum::peak), 4);
        Json.put(node, "best_lambda", optimum.map(Optimum::best), 4);
        Json.put(node, "low_lambda", optimum.map(found -> found.peakInterval().low()), 4);
        Json.put(node, "high_lambda", optimum.map(found -> found.peakInterval().high()), 4);
        Json.put(node, "lean_edge_lambda", answer.edges().map(edges -> edges.high()), 4);
        Json.put(node, "rich_edge_lambda", answer.edges().map(edges -> edges.low()), 4);
        Json.put(node, "flat_low_lambda", optimum.map(found -> found.flat().low()), 4);
        Json.put(node, "flat_high_lambda", optimum.map(found -> found.flat().high()), 4);
        node.put("bracketed", answer.bracketed());
        outliers(node, answer);
        return node;
    }

    private static ObjectNode chosen(Chosen chosen) {
        ObjectNode node = Json.object();
        setting(node, chosen.setting());
        node.put("by", chosen.by().id());
        return node;
    }

    private static void setting(ObjectNode node, EngineSetting setting) {
        Json.put(node, "advance_deg", setting.advance().map(Advance::deg), 2);
        Json.put(node, "offset_deg", setting.offset().map(Advance::deg), 2);
        MapJson.put(node, "map", setting.map());
        Json.put(node, "lambda", setting.lambda().map(Lambda::value), 4);
    }

    private ObjectNode next(Verdict verdict) {
        Advice advice = verdict.advice();
        ObjectNode node = Json.object();
        node.put("action", advice.action().id());
        setting(node, advice.setting().orElse(EngineSetting.none()));
        MapJson.putShift(node, advice.setting().flatMap(EngineSetting::map), verdict.map());
        node.put("code", advice.code().id());
        node.put("because", words.because(advice));
        putOrNull(node, "wait", advice.waitFor().map(AdviseJson::wait));
        return node;
    }

    private static ObjectNode wait(WaitFor wait) {
        ObjectNode node = Json.object();
        node.put("channel", wait.condition().id());
        Json.put(node, "now", wait.now().celsius(), 1);
        Json.put(node, "want", wait.want().celsius(), 1);
        Json.put(node, "at_least_s", wait.atLeastSeconds(), 0);
        return node;
    }

    /** The document of {@code replay}. */
    public String replay(Replay replay) {
        ObjectNode document = document(replay.whole());
        ArrayNode steps = document.putArray("steps");
        replay.steps().forEach(step -> steps.add(step(step)));
        if (replay.stoppedAfter().isPresent()) {
            document.put("stopped_after", replay.stoppedAfter().getAsInt());
        } else {
            document.putNull("stopped_after");
        }
        document.put("pulls_saved", replay.pullsSaved());
        ArrayNode days = document.putArray("days");
        replay.days().forEach(day -> day(days.addObject(), day));
        return Json.pretty(document);
    }

    /** One line a pull, for {@code replay --json --lines}. */
    public List<String> replayLines(Replay replay) {
        return replay.steps().stream()
                .map(step -> Json.line(Json.document().setAll(step(step))))
                .toList();
    }

    private static void day(ObjectNode node, Replay.OneDay day) {
        node.put("source", day.steps().get(0).pull().origin().source());
        ArrayNode pulls = node.putArray("pulls");
        day.steps().forEach(step -> pulls.add(step.pull().number()));
        if (day.stoppedAfter().isPresent()) {
            node.put("stopped_after", day.stoppedAfter().getAsInt());
        } else {
            node.putNull("stopped_after");
        }
        node.set("alone", dayAnswer(day.alone()));
        node.set("together", dayAnswer(day.together()));
    }

    private static ObjectNode dayAnswer(Verdict verdict) {
        ObjectNode node = Json.object();
        putOrNull(node, "chosen", verdict.chosen().map(AdviseJson::chosen));
        Json.put(
                node,
                "left_percent",
                verdict.map().map(state -> state.leftAtPeak().expectedPercent()),
                3);
        return node;
    }

    private ObjectNode step(Replay.Step step) {
        ObjectNode node = Json.object();
        node.set("pull", pulls.node(step.pull()));
        ArrayNode alarms = node.putArray("alarms");
        for (Alarm alarm : step.alarms()) {
            alarms.addObject()
                    .put("limit", alarm.limit().id())
                    .put("line", alarm.since().line())
                    .put("text", words.passed(alarm));
        }
        answer(node, Optional.of(step.verdict()));
        return node;
    }

    /** A pull of a running session, and what comes next. */
    void answer(ObjectNode node, SessionResult result, MeasuredPull pull) {
        node.set("pull", pulls.node(pull));
        answer(node, result);
    }

    /** What comes next in a running session, and what would stay. */
    void answer(ObjectNode node, SessionResult result) {
        answer(node, result.verdict());
    }

    private void answer(ObjectNode node, Optional<Verdict> verdict) {
        putOrNull(node, "chosen", verdict.flatMap(Verdict::chosen).map(AdviseJson::chosen));
        putOrNull(node, "next", verdict.map(this::next));
    }
}
