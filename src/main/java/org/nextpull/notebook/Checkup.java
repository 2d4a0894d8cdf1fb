package org.nextpull.notebook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.nextpull.air.Correction;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/**
 * What a check of a notebook found.
 *
 * @param sessions sessions that were made again
 * @param pulls pulls whose figures were compared
 * @param findings damage, and figures that come out otherwise now than they were kept; empty when all is well
 */
public record Checkup(int sessions, int pulls, List<Finding> findings) {
    private static final int MOST_NAMED = 20;

    public Checkup {
        findings = List.copyOf(findings);
    }

    static Checkup of(Database database) throws IOException {
        Place place = Place.inFile(database.file().toString());
        List<Finding> findings = new ArrayList<>();
        damage(database).stream()
                .limit(MOST_NAMED)
                .map(fault -> Finding.error(FindingCode.NOTEBOOK_DAMAGED, place, Detail.of("why", fault)))
                .forEach(findings::add);
        database.list("pragma foreign_key_check", row -> row.text("table")).stream()
                .distinct()
                .map(table -> Finding.error(
                        FindingCode.NOTEBOOK_DAMAGED,
                        place,
                        Detail.of("why", "rows of " + table + " belong to nothing")))
                .forEach(findings::add);
        int sessions = 0;
        int pulls = 0;
        for (SessionSummary summary : new Summaries(database).all()) {
            try {
                KeptSession kept = database.inOneView(() -> new SessionReader(database, summary).readAsFigured());
                findings.addAll(Differences.of(kept, place));
                sessions++;
                pulls += kept.pulls().size();
            } catch (NotebookException damaged) {
                findings.add(damaged.finding());
            }
        }
        return new Checkup(sessions, pulls, findings);
    }

    /** What SQLite's own check says; empty when it is content. */
    static List<String> damage(Database database) throws IOException {
        return database.list("pragma integrity_check", row -> row.text("integrity_check")).stream()
                .filter(line -> !line.equals("ok"))
                .toList();
    }

    /** Whether nothing was found. */
    public boolean isGood() {
        return findings.isEmpty();
    }

    /** Figures of a session as they were kept, beside the same made again from its samples. */
    private static final class Differences {
        /** Far below what anybody reads, and above what another processor's last digit makes. */
        private static final double SAME_SHARE = 1e-9;

        private final KeptSession kept;
        private final Place place;
        private final List<Finding> findings = new ArrayList<>();

        private Differences(KeptSession kept, Place place) {
            this.kept = kept;
            this.place = place;
        }

        static List<Finding> of(KeptSession kept, Place place) {
            Differences differences = new Differences(kept, place);
            SessionResult now = kept.result();
            Map<Integer, MeasuredPull> made =
                    now.pulls().stream().collect(Collectors.toMap(MeasuredPull::number, Function.identity()));
            for (KeptSession.Pull before : kept.pulls()) {
                MeasuredPull pull = made.remove(before.number());
                if (pull == null) {
                    differences.add(before.number(), "pull", "kept", "not found");
                } else {
                    differences.compare(before, pull);
                }
            }
            made.keySet().stream().sorted().forEach(number -> differences.add(number, "pull", "not kept", "found"));
            differences.compareAdvice(now);
            return differences.findings;
        }

        private void compare(KeptSession.Pull before, MeasuredPull now) {
            int pull = before.number();
            compare(pull, "standing", before.standing(), now.standing().id());
            compare(pull, "knock", before.knock(), now.knock().mark().id());
            KeptSession.Pull.KeptSetting setting = before.setting();
            compare(
                    pull,
                    "advance",
                    setting.advanceDeg(),
                    real(now.setting().advance().map(Advance::deg)));
            compare(
                    pull,
                    "lambda",
                    setting.lambda(),
                    real(now.setting().lambda().map(Lambda::value)));
            KeptSession.Pull.KeptFigures figures = before.figures();
            compare(
                    pull,
                    "mean torque",
                    figures.meanTorqueNm(),
                    real(now.figures().flatMap(Figures::meanTorque).map(Torque::newtonMetres)));
            compare(
                    pull,
                    "mean power",
                    figures.meanPowerW(),
                    real(now.figures().flatMap(Figures::meanPower).map(Power::watts)));
            compare(pull, "correction", figures.factor(), real(now.correction().map(Correction::factor)));
        }

        /** The last word only: what was said before came from fewer pulls. */
        private void compareAdvice(SessionResult now) {
            if (kept.advice().isEmpty() || now.verdict().isEmpty()) {
                return;
            }
            KeptSession.Advice before = kept.advice().get(kept.advice().size() - 1);
            compare(
                    before.pulls(),
                    "advice",
                    before.code(),
                    now.verdict().get().advice().code().id());
        }

        private static OptionalDouble real(Optional<Double> value) {
            return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
        }

        private void compare(int pull, String name, OptionalDouble before, OptionalDouble now) {
            boolean same = (before.isPresent() && now.isPresent())
                    ? Math.abs(before.getAsDouble() - now.getAsDouble()) <= SAME_SHARE * Math.abs(before.getAsDouble())
                    : before.isPresent() == now.isPresent();
            if (!same) {
                add(pull, name, shown(before), shown(now));
            }
        }

        private void compare(int pull, String name, String before, String now) {
            if (!before.equals(now)) {
                add(pull, name, before, now);
            }
        }

        private static String shown(OptionalDouble value) {
            return value.isPresent() ? String.format(Locale.ROOT, "%.9g", value.getAsDouble()) : "nothing";
        }

        private void add(int pull, String name, String before, String now) {
            findings.add(Finding.warning(
                    FindingCode.NOTEBOOK_FIGURE_DIFFERS,
                    place.withPull(pull),
                    Detail.of("session", String.valueOf(kept.id())),
                    Detail.of("name", name),
                    Detail.of("before", before),
                    Detail.of("now", now),
                    Detail.of("version", kept.start().version())));
        }
    }
}
