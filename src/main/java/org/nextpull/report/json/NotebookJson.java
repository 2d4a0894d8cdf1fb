package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import org.nextpull.channel.EngineSetting;
import org.nextpull.curve.CorrectedCurve;
import org.nextpull.curve.CurvePoint;
import org.nextpull.notebook.Checkup;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.report.ActText;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** The documents of the commands over the notebook. */
public final class NotebookJson {
    /** The document of {@code notebook list} and {@code search}. */
    public String list(List<SessionSummary> sessions) {
        ObjectNode document = Json.document();
        ArrayNode array = document.putArray("sessions");
        sessions.forEach(session -> array.add(summary(session)));
        return Json.pretty(document);
    }

    private static ObjectNode summary(SessionSummary session) {
        ObjectNode node = Json.object();
        node.put("id", session.id());
        node.put("started", session.started().toString());
        Json.putText(node, "engine", session.engine());
        node.put("pulls", session.pulls());
        Json.putText(node, "closed", session.closed().map(Instant::toString));
        node.put("used", session.used());
        Json.putText(node, "fuel", session.fuel());
        ArrayNode labels = node.putArray("labels");
        session.labels().forEach(labels::add);
        node.put("plan", session.planName());
        node.put("version", session.version());
        Json.putText(node, "last_advice", session.lastAdvice());
        return node;
    }

    /** Everything of one session: its answer as {@code advise} gives it, plan, curves, acts and advice. */
    public String session(KeptSession session, SessionResult result) {
        ObjectNode document = new AdviseJson().document(result);
        document.set("session", summary(session.summary()));
        document.put("plan_text", session.start().planText());
        ArrayNode acts = document.putArray("acts");
        session.acts().forEach(act -> acts.add(act(act)));
        ArrayNode advice = document.putArray("advised");
        session.advice().forEach(said -> advice.add(advice(said)));
        document.set(
                "curves",
                Json.array(
                        result.measured().stream()
                                .filter(MeasuredPull.Curve::hasCurve)
                                .toList(),
                        one -> curve(one, one.curve().orElseThrow())));
        return Json.pretty(document);
    }

    private static ObjectNode act(KeptSession.Act act) {
        ObjectNode node = Json.object();
        node.put("at", act.at().toString());
        node.put("pulls", act.pulls());
        node.put("text", ActText.of(act.act()));
        return node;
    }

    private static ObjectNode advice(KeptSession.Advice advice) {
        ObjectNode node = Json.object();
        node.put("at", advice.at().toString());
        node.put("pulls", advice.pulls());
        node.put("action", advice.action());
        node.put("code", advice.code());
        put(node, "", advice.setting());
        put(node, "leave_", advice.leave());
        Json.putText(node, "leave_by", advice.leaveBy());
        return node;
    }

    private static void put(ObjectNode node, String prefix, EngineSetting setting) {
        Json.put(node, prefix + "advance_deg", setting.advance().map(Advance::deg), 2);
        Json.put(node, prefix + "offset_deg", setting.offset().map(Advance::deg), 2);
        MapJson.put(node, prefix + "map", setting.map());
        Json.put(node, prefix + "lambda", setting.lambda().map(Lambda::value), 4);
    }

    private static ObjectNode curve(MeasuredPull.Curve one, CorrectedCurve curve) {
        ObjectNode node = Json.object();
        node.put("pull", one.pull().number());
        ArrayNode points = node.putArray("points");
        for (CurvePoint point : curve.points()) {
            ObjectNode each = points.addObject();
            Json.put(each, "rpm", point.rpm(), 1);
            Json.put(each, "torque_nm", point.torque().newtonMetres(), 3);
            Json.put(each, "power_kw", point.power().kilowatts(), 3);
        }
        return node;
    }

    /** The document of {@code notebook check}. */
    public String check(Checkup checkup) {
        ObjectNode document = Json.document();
        document.put("good", checkup.isGood());
        document.put("sessions", checkup.sessions());
        document.put("pulls", checkup.pulls());
        new FindingsJson().addAll(document.putArray("findings"), checkup.findings());
        return Json.pretty(document);
    }
}
