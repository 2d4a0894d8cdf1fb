package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.nextpull.advice.HoldNow;
import org.nextpull.alarm.Alarm;
import org.nextpull.finding.Finding;
import org.nextpull.finding.WrittenId;
import org.nextpull.report.AlarmText;
import org.nextpull.report.Shown;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.UnitSystem;

/** What happens in a running session, an object a line. */
public final class LiveJson {
    private final AdviseJson advice = new AdviseJson();
    private final FindingsJson findings = new FindingsJson();
    private final AlarmText alarms = new AlarmText(new Shown(UnitSystem.METRIC));

    /** A pull that ended, and what comes next. */
    public String pull(Instant at, SessionResult result, MeasuredPull pull) {
        ObjectNode line = line("pull", at);
        advice.answer(line, result, pull);
        return Json.line(line);
    }

    /** An advice that changed without a pull. */
    public String next(Instant at, SessionResult result) {
        ObjectNode line = line("next", at);
        advice.answer(line, result);
        return Json.line(line);
    }

    /** What to do now at held speeds. */
    public String hold(Instant at, HoldNow now, OptionalDouble coolDownLeftS) {
        ObjectNode line = line("hold", at);
        line.put("phase", WrittenId.of(now.step().name()));
        line.put("number", now.number());
        line.put("count", now.count());
        Json.put(line, "rpm", now.rpm(), 0);
        Json.put(line, "advance_deg", now.advanceDeg(), 2);
        Json.put(line, "asked_deg", deg(now, HoldNow.OtherAdvance::askedDeg), 2);
        Json.put(line, "logged_deg", deg(now, HoldNow.OtherAdvance::readDeg), 2);
        line.put("steady_points", now.plateaus());
        Json.put(line, "load_left_s", now.leftS(), 0);
        Json.put(line, "cool_down_left_s", coolDownLeftS, 0);
        return Json.line(line);
    }

    private static OptionalDouble deg(HoldNow now, ToDoubleFunction<HoldNow.OtherAdvance> which) {
        return now.other().stream().mapToDouble(which).findFirst();
    }

    /** A limit that was passed, got worse, or is within again. */
    public String alarm(Instant at, Alarm.Event event) {
        ObjectNode line = line("alarm", at);
        line.put("kind", WrittenId.of(event.kind().name()));
        line.put("limit", event.alarm().limit().id());
        line.put("text", alarms.text(event));
        return Json.line(line);
    }

    /** Something that was found while it ran. */
    public String finding(Instant at, Finding finding) {
        return Json.line(line("finding", at).setAll(findings.node(finding)));
    }

    private static ObjectNode line(String event, Instant at) {
        return Json.document().put("event", event).put("at", at.toString());
    }
}
