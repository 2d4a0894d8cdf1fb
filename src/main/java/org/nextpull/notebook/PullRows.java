package org.nextpull.notebook;

import java.io.IOException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.air.Correction;
import org.nextpull.channel.EngineSetting;
import org.nextpull.curve.CorrectedCurve;
import org.nextpull.curve.CurvePoint;
import org.nextpull.response.Conditions;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Power;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Torque;

/** What became of the pulls of a session: figures, curves, limits met, findings. Written anew as a whole. */
record PullRows(Database database, long session) {
    /** Writes the pulls in place of those before; a pull that was known keeps the time at which it was first kept. */
    void replace(Instant at, List<MeasuredPull.Curve> pulls) throws IOException {
        Map<Integer, String> known = new HashMap<>();
        database.list(
                "select number, kept_at from pull where session = ?",
                row -> known.put(row.integer("number"), row.text("kept_at")),
                session);
        database.run("delete from pull where session = ?", session);
        FindingRows findings = new FindingRows(database, session);
        findings.clear(FindingRows.Kind.PULL);
        for (MeasuredPull.Curve one : pulls) {
            MeasuredPull pull = one.pull();
            insert(
                    pull,
                    known.getOrDefault(
                            pull.number(), at.truncatedTo(ChronoUnit.MILLIS).toString()));
            for (MeasuredPull.LimitMet met : pull.limitsMet()) {
                insert(pull, met);
            }
            findings.replace(new FindingRows.Owner(FindingRows.Kind.PULL, 0, pull.number()), pull.findings());
        }
        curves(pulls);
    }

    private void insert(MeasuredPull pull, String keptAt) throws NotebookException {
        InsertRow entry = InsertRow.into("pull")
                .put("session", session)
                .put("number", pull.number())
                .put("kept_at", keptAt)
                .put("source", pull.origin().source())
                .put("first_line", pull.origin().firstLine())
                .put("candidate", pull.origin().candidate())
                .put("day_order", pull.order())
                .put("standing", pull.standing().id())
                .put("leanest_lambda", pull.leanestLambda().map(Lambda::value))
                .put("standard", pull.correction().map(one -> one.standard().id()))
                .put("correction", pull.correction().map(Correction::factor))
                .put("knock", pull.knock().mark())
                .put("knock_events", pull.knock().events())
                .put("knock_level", pull.knock().worstLevel());
        put(entry, pull.setting(), pull.asked());
        put(entry, pull.figures());
        put(entry, pull.conditions());
        entry.insert(database);
    }

    private static void put(InsertRow entry, EngineSetting setting, EngineSetting asked) {
        entry.put("advance_deg", setting.advance().map(Advance::deg))
                .put("offset_deg", setting.offset().map(Advance::deg))
                .put("lambda", setting.lambda().map(Lambda::value))
                .put("asked_lambda", asked.lambda().map(Lambda::value))
                .put("fuel", setting.fuel())
                .put("label", setting.label())
                .put("note", setting.note());
    }

    private static void put(InsertRow entry, Optional<Figures> figures) {
        Optional<Figures.TorqueAtSpeed> torque = figures.flatMap(Figures::peakTorque);
        Optional<Figures.PowerAtSpeed> power = figures.flatMap(Figures::peakPower);
        entry.put("mean_torque_nm", figures.flatMap(Figures::meanTorque).map(Torque::newtonMetres))
                .put("mean_power_w", figures.flatMap(Figures::meanPower).map(Power::watts))
                .put(
                        "within_pull_percent",
                        figures.map(Figures::withinPullPercent).orElse(OptionalDouble.empty()))
                .put("peak_torque_nm", torque.map(peak -> peak.torque().newtonMetres()))
                .put("peak_torque_rpm", torque.map(Figures.TorqueAtSpeed::rpm))
                .put("peak_power_w", power.map(peak -> peak.power().watts()))
                .put("peak_power_rpm", power.map(Figures.PowerAtSpeed::rpm));
    }

    private static void put(InsertRow entry, Conditions conditions) {
        entry.put("coolant_k", conditions.coolant().map(Temperature::kelvins))
                .put("oil_k", conditions.oil().map(Temperature::kelvins))
                .put("inlet_air_k", conditions.inletAir().map(Temperature::kelvins))
                .put("exhaust_k", conditions.hottestExhaust().map(Temperature::kelvins))
                .put("manifold_pa", conditions.manifold().map(Pressure::pascals));
    }

    private void insert(MeasuredPull pull, MeasuredPull.LimitMet met) throws NotebookException {
        InsertRow.into("limit_met")
                .put("session", session)
                .put("pull", pull.number())
                .put("limit_name", met.limit().id())
                .put("worst", met.worst())
                .put("allowed", met.allowed())
                .replace(database);
    }

    private void curves(List<MeasuredPull.Curve> pulls) throws NotebookException {
        List<Object[]> rows = new ArrayList<>();
        for (MeasuredPull.Curve one : pulls) {
            List<CurvePoint> points = one.curve().map(CorrectedCurve::points).orElse(List.of());
            for (int position = 0; position < points.size(); position++) {
                CurvePoint point = points.get(position);
                rows.add(new Object[] {
                    session,
                    one.pull().number(),
                    position,
                    point.rpm(),
                    point.torque().newtonMetres(),
                    point.power().watts()
                });
            }
        }
        database.runAll(
                "insert into curve_point (session, pull, position, rpm, torque_nm, power_w) values (?, ?, ?, ?, ?, ?)",
                rows);
    }
}
