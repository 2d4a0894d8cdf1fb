package org.nextpull.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fit.Experience;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.plan.EngineFacts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.Shown;

/** What the notebook teaches a running session. An engine waits, so one that cannot be read is a warning and teaches nothing. */
public record EarlierDays(NotebookAccess notebook) {

    /** For a session that begins now; empty where the plan does not want it. Never failed. */
    public Outcome<Optional<Experience>> known(SweepPlan plan) {
        return plan.wantsEarlierDays() ? read(book -> book.experience(plan)) : Outcome.of(Optional.empty());
    }

    /**
     * What a session knew when it began, so that it goes on as it was, whatever the notebook has learnt since; that it began with
     * another plan is a finding. Failed where it was a session of another engine.
     */
    public Outcome<Optional<Experience>> begunWith(Path captures, PlanFile plan) {
        Outcome<Optional<KeptSession>> kept = read(book -> {
            Optional<SessionSummary> before = book.onCapture(captures.toString());
            return before.isPresent() ? Optional.of(book.session(before.get().id())) : Optional.empty();
        });
        return kept.then(found ->
                found.map(session -> goingOn(session, captures, plan)).orElseGet(() -> Outcome.of(Optional.empty())));
    }

    private static Outcome<Optional<Experience>> goingOn(KeptSession session, Path captures, PlanFile plan) {
        EngineFacts before = session.input().plan().engine();
        EngineFacts engine = plan.plan().engine();
        if (engine.isOther(before)) {
            // two engines in one session would be fitted as one
            return Outcome.failed(Finding.error(
                    FindingCode.LIVE_ENGINE_DIFFERS,
                    Place.nowhere(),
                    Detail.of("session", String.valueOf(session.id())),
                    Detail.of("was", words(before)),
                    Detail.of("now", words(engine))));
        }
        List<Finding> differs = session.start().planText().equals(plan.text())
                ? List.of()
                : List.of(Finding.warning(FindingCode.LIVE_PLAN_DIFFERS, Place.inFile(captures.toString())));
        return Outcome.of(session.input().experience(), differs);
    }

    private static String words(EngineFacts engine) {
        List<String> facts = new ArrayList<>();
        engine.displacementM3().ifPresent(cubicMetres -> facts.add(Shown.fixed(1000 * cubicMetres, 3) + " L"));
        engine.cylinders().ifPresent(count -> facts.add(Shown.count(count, "cylinder")));
        facts.add(engine.isBoosted() ? "boosted" : "natural");
        return engine.name().map(name -> "\"" + name + "\"").orElse("an engine without a name") + " ("
                + String.join(", ", facts) + ")";
    }

    private <T> Outcome<Optional<T>> read(NotebookAccess.Work<Optional<T>> work) {
        if (!notebook.isThere()) {
            return Outcome.of(Optional.empty());
        }
        Outcome<Optional<T>> read = notebook.read(work);
        return Outcome.of(
                read.value().flatMap(known -> known),
                read.findings().stream().map(Finding::asWarning).toList());
    }
}
