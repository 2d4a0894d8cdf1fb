package org.nextpull.notebook;

import java.io.IOException;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.advice.Advice;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.Optimum;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** What was advised, whenever it changed. */
record AdviceRows(Database database, long session) {
    void add(Instant at, int pulls, Verdict verdict) throws IOException {
        Advice advice = verdict.advice();
        if (isSaidAlready(pulls, verdict)) {
            return;
        }
        InsertRow entry = InsertRow.into("advice")
                .put("session", session)
                .put("position", count())
                .put("at", at)
                .put("pulls", pulls)
                .put("action", advice.action().id())
                .put("code", advice.code().id())
                .put("leave_by", verdict.chosen().map(chosen -> chosen.by().id()));
        put(entry, "", advice.setting());
        put(entry, "leave_", verdict.chosen().map(Chosen::setting));
        Optional<Optimum> timing = verdict.timing().flatMap(SweepAnswer::optimum);
        Optional<Optimum> mixture = verdict.mixture().flatMap(SweepAnswer::optimum);
        entry.put("timing_peak_deg", timing.filter(Optimum::isPeakPlaced).map(Optimum::peak))
                .put("timing_best_deg", timing.map(Optimum::best))
                .put("timing_low_deg", timing.map(one -> one.bestInterval().low()))
                .put("timing_high_deg", timing.map(one -> one.bestInterval().high()))
                .put("mixture_peak", mixture.map(Optimum::peak))
                .put("mixture_low", mixture.map(one -> one.peakInterval().low()))
                .put("mixture_high", mixture.map(one -> one.peakInterval().high()))
                .insert(database);
    }

    private static void put(InsertRow entry, String prefix, Optional<EngineSetting> setting) {
        entry.put(
                        prefix + "advance_deg",
                        setting.flatMap(EngineSetting::advance).map(Advance::deg))
                .put(
                        prefix + "offset_deg",
                        setting.flatMap(EngineSetting::offset).map(Advance::deg))
                .put(prefix + "map", setting.flatMap(EngineSetting::map).map(AdviceRows::text))
                .put(prefix + "lambda", setting.flatMap(EngineSetting::lambda).map(Lambda::value));
    }

    /** Whether the last word was the same: a session that is taken up again, or kept twice, says nothing new. */
    private boolean isSaidAlready(int pulls, Verdict verdict) throws IOException {
        List<KeptSession.Advice> said = read();
        if (said.isEmpty()) {
            return false;
        }
        KeptSession.Advice last = said.get(said.size() - 1);
        EngineSetting nothing = EngineSetting.none();
        return last.pulls() == pulls
                && last.action().equals(verdict.advice().action().id())
                && last.code().equals(verdict.advice().code().id())
                && last.setting().equals(verdict.advice().setting().orElse(nothing))
                && last.leave().equals(verdict.chosen().map(Chosen::setting).orElse(nothing));
    }

    private int count() throws IOException {
        return database.first("select count(*) as n from advice where session = ?", row -> row.integer("n"), session)
                .orElse(0);
    }

    List<KeptSession.Advice> read() throws IOException {
        return database.list(
                "select * from advice where session = ? order by position",
                row -> new KeptSession.Advice(
                        Instant.parse(row.text("at")),
                        row.integer("pulls"),
                        row.text("action"),
                        row.text("code"),
                        setting(row, ""),
                        setting(row, "leave_"),
                        row.find("leave_by")),
                session);
    }

    private static EngineSetting setting(QueryRow row, String prefix) throws SQLException {
        Optional<SparkMap> flat =
                row.find(prefix + "advance_deg", Advance::ofDeg).map(SparkMap::flat);
        return EngineSetting.none()
                .with(
                        row.find(prefix + "map").map(AdviceRows::map).or(() -> flat),
                        row.find(prefix + "offset_deg", Advance::ofDeg),
                        row.find(prefix + "lambda", Lambda::of));
    }

    /** Cells as speed and degrees: {@code 3500.0 22.0, 4000.0 23.5}. */
    private static String text(SparkMap map) {
        return map.cells().stream()
                .map(cell -> cell.rpm() + " " + cell.advance().deg())
                .collect(Collectors.joining(", "));
    }

    private static SparkMap map(String text) {
        return new SparkMap(Arrays.stream(text.split(", "))
                .map(cell -> cell.split(" "))
                .map(cell -> new SparkMap.Cell(Double.parseDouble(cell[0]), Advance.ofDeg(Double.parseDouble(cell[1]))))
                .toList());
    }
}
