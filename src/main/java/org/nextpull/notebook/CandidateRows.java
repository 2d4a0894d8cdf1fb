package org.nextpull.notebook;

import java.io.IOException;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.KnockReading;
import org.nextpull.pull.Refusal;
import org.nextpull.pull.RowRange;
import org.nextpull.pull.SpeedSource;
import org.nextpull.session.PullFingerprint;

/** The candidates of a session with their samples. One that was written already is not written again. */
final class CandidateRows {
    private final Database database;
    private final long session;
    private final FindingRows findings;
    private final Map<Key, Candidate> written = new HashMap<>();

    CandidateRows(Database database, long session) {
        this.database = database;
        this.session = session;
        this.findings = new FindingRows(database, session);
    }

    private record Key(int source, int number) {}

    void write(int source, Candidate candidate) throws NotebookException {
        Key key = new Key(source, candidate.number());
        if (candidate.equals(written.get(key))) {
            return;
        }
        InsertRow entry = InsertRow.into("candidate")
                .put("session", session)
                .put("source", source)
                .put("number", candidate.number())
                .put("first_line", candidate.firstLine())
                .put("last_line", candidate.lastLine())
                .put("duration_s", candidate.durationS())
                .put("kind", candidate.kind())
                .put("from_rpm", candidate.fromRpm())
                .put("to_rpm", candidate.toRpm())
                .put("speed_role", candidate.speed().channel().role())
                .put("speed_sensor", candidate.speed().channel().sensor())
                .put("speed_axis", candidate.speed().axis())
                .put("rpm_per_unit", candidate.speed().rpmPerUnit())
                .put("refusal", candidate.refusal().map(Refusal::reason))
                .put("plateaus", plateaus(candidate.plateaus()))
                .put("fingerprint", PullFingerprint.of(candidate.samples()))
                .put("samples", SampleBlob.write(candidate.samples()))
                .put("knock", SampleBlob.write(candidate.knock()));
        align(entry, candidate.lambda());
        entry.replace(database);
        findings.replace(owner(FindingRows.Kind.CANDIDATE, key), candidate.findings());
        findings.replace(
                owner(FindingRows.Kind.REFUSAL, key),
                candidate.refusal().map(Refusal::finding).stream().toList());
        written.put(key, candidate);
    }

    /** What was written may have been rolled back: it must be written again. */
    void forget() {
        written.clear();
    }

    private static FindingRows.Owner owner(FindingRows.Kind kind, Key key) {
        return new FindingRows.Owner(kind, key.source(), key.number());
    }

    private static void align(InsertRow entry, Candidate.LambdaAlignment lambda) {
        if (lambda instanceof Candidate.LambdaAlignment.Given given) {
            entry.put("lambda_aligned", "given").put("lambda_delay_s", given.appliedS());
        } else if (lambda instanceof Candidate.LambdaAlignment.Estimated estimated) {
            entry.put("lambda_aligned", "estimated")
                    .put("lambda_delay_s", estimated.appliedS())
                    .put("lambda_delay_error_s", estimated.errorS());
        } else {
            entry.put("lambda_aligned", "no");
        }
    }

    /** The candidates of a source, by their number. */
    List<Candidate> read(SourceRows.Kept source, Map<FindingRows.Owner, List<Finding>> known) throws IOException {
        return database.list(
                "select * from candidate where session = ? and source = ? order by number",
                row -> candidate(row, source, known),
                session,
                source.position());
    }

    private Candidate candidate(QueryRow row, SourceRows.Kept source, Map<FindingRows.Owner, List<Finding>> known)
            throws SQLException, IOException {
        Key key = new Key(source.position(), row.integer("number"));
        List<Finding> refusals = known.getOrDefault(owner(FindingRows.Kind.REFUSAL, key), List.of());
        Optional<Refusal> refusal = row.findConstant(Refusal.Reason.class, "refusal")
                .flatMap(reason -> refusals.stream().findFirst().map(finding -> new Refusal(reason, finding)));
        Samples samples = samples(row, row.blob("samples"));
        return new Candidate(
                key.number(),
                source.name(),
                new Candidate.Lines(
                        row.wide("first_line"),
                        row.wide("last_line"),
                        row.real("duration_s"),
                        Candidate.Lines.stepS(samples)),
                row.constant(Candidate.Kind.class, "kind"),
                row.real("from_rpm"),
                row.real("to_rpm"),
                new Samples.AtHand(samples),
                plateaus(row.text("plateaus")),
                new SpeedSource(
                        new Channel(row.constant(Role.class, "speed_role"), row.integer("speed_sensor")),
                        row.constant(SpeedSource.Axis.class, "speed_axis"),
                        row.real("rpm_per_unit")),
                alignment(row),
                knock(row),
                refusal,
                known.getOrDefault(owner(FindingRows.Kind.CANDIDATE, key), List.of()));
    }

    /** A candidate that was kept without them has those within its samples. */
    private Samples knock(QueryRow row) throws SQLException, IOException {
        Optional<byte[]> kept = row.findBlob("knock");
        return kept.isPresent()
                ? samples(row, kept.get())
                : KnockReading.rows(samples(row, row.blob("samples")), OptionalDouble.empty());
    }

    private Samples samples(QueryRow row, byte[] bytes) throws SQLException, IOException {
        try {
            return SampleBlob.read(bytes);
        } catch (IOException damaged) {
            throw NotebookException.because(
                    FindingCode.NOTEBOOK_SAMPLES_DAMAGED,
                    database.file(),
                    Detail.of("session", String.valueOf(session)),
                    Detail.of("candidate", String.valueOf(row.integer("number"))),
                    Detail.of("why", String.valueOf(damaged.getMessage())));
        }
    }

    private static Candidate.LambdaAlignment alignment(QueryRow row) throws SQLException {
        OptionalDouble delay = row.findReal("lambda_delay_s");
        return switch (row.text("lambda_aligned")) {
            case "given" -> new Candidate.LambdaAlignment.Given(delay.orElse(0));
            case "estimated" ->
                new Candidate.LambdaAlignment.Estimated(delay.orElse(0), row.real("lambda_delay_error_s"));
            default -> new Candidate.LambdaAlignment.NotApplied();
        };
    }

    private static String plateaus(List<RowRange> plateaus) {
        return plateaus.stream().map(range -> range.first() + "-" + range.end()).collect(Collectors.joining(" "));
    }

    private static List<RowRange> plateaus(String text) {
        List<RowRange> plateaus = new ArrayList<>();
        for (String range : Arrays.asList(text.split(" "))) {
            int hyphen = range.indexOf('-');
            if (hyphen > 0) {
                plateaus.add(new RowRange(
                        Integer.parseInt(range.substring(0, hyphen)), Integer.parseInt(range.substring(hyphen + 1))));
            }
        }
        return plateaus;
    }
}
