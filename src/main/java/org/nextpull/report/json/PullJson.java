package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.nextpull.response.Figures;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Torque;

/** One pull as JSON. */
final class PullJson {
    private final FindingsJson findings;

    PullJson(FindingsJson findings) {
        this.findings = findings;
    }

    ObjectNode node(MeasuredPull pull) {
        ObjectNode node = Json.object();
        node.put("number", pull.number());
        node.put("source", pull.origin().source());
        node.put("candidate", pull.origin().candidate());
        node.put("first_line", pull.origin().firstLine());
        Json.putText(node, "label", pull.setting().label());
        Json.putText(node, "fuel", pull.setting().fuel());
        Json.put(node, "advance_deg", pull.setting().advance().map(Advance::deg), 2);
        Json.put(node, "offset_deg", pull.setting().offset().map(Advance::deg), 2);
        Json.put(node, "lambda", pull.setting().lambda().map(Lambda::value), 4);
        Json.put(node, "correction", pull.correction().map(correction -> correction.factor()), 5);
        Optional<Figures> figures = pull.figures();
        Json.put(node, "mean_torque_nm", figures.flatMap(Figures::meanTorque).map(Torque::newtonMetres), 3);
        Json.put(node, "mean_power_kw", figures.flatMap(Figures::meanPower).map(power -> power.kilowatts()), 3);
        var torque = figures.flatMap(Figures::peakTorque);
        Json.put(node, "peak_torque_nm", torque.map(peak -> peak.torque().newtonMetres()), 3);
        Json.put(node, "peak_torque_rpm", torque.map(peak -> peak.rpm()), 0);
        var power = figures.flatMap(Figures::peakPower);
        Json.put(node, "peak_power_kw", power.map(peak -> peak.power().kilowatts()), 3);
        Json.put(node, "peak_power_rpm", power.map(peak -> peak.rpm()), 0);
        node.put("knock", pull.knock().mark().id());
        Json.put(node, "knock_events", pull.knock().events(), 0);
        Json.put(node, "knock_from_rpm", pull.knock().speeds().map(KnockHeard.Speeds::lowRpm), 0);
        Json.put(node, "knock_to_rpm", pull.knock().speeds().map(KnockHeard.Speeds::highRpm), 0);
        node.put("used", pull.isUsed());
        node.put("standing", pull.standing().id());
        var limits = node.putArray("limits");
        for (MeasuredPull.LimitMet met : pull.limitsMet()) {
            limits.add(met.limit().id());
        }
        findings.addAll(node.putArray("findings"), pull.findings());
        return node;
    }
}
