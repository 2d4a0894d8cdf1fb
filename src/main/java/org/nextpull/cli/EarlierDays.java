package org.nextpull.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.fit.Experience;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.SessionSummary;
import org.nextpull.plan.EngineFacts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.Shown;

/** What the notebook teaches a running session. An engine waits, so one that cannot be read is a warning and teaches nothing. */
final class EarlierDays {
    private final NotebookOption notebook;
    private final Consumer<List<Finding>> said;

    EarlierDays(NotebookOption notebook, Consumer<List<Finding>> said) {
        this.notebook = notebook;
        this.said = said;
    }

    /** For a session that begins now; empty where the plan does not want it. */
    Optional<Experience> known(SweepPlan plan) {
        return plan.wantsEarlierDays() ? read(book -> book.experience(plan)) : Optional.empty();
    }

    /**
     * What a session knew when it began, so that it goes on as it was, whatever the notebook has learnt since; that it began with
     * another plan is said.
     */
    Optional<Experience> begunWith(Path captures, PlanFile plan) {
        return read(book -> {
            Optional<SessionSummary> before = book.onCapture(captures.toString());
            Optional<KeptSession> kept =
                    before.isPresent() ? Optional.of(book.session(before.get().id())) : Optional.empty();
            kept.ifPresent(session -> requireSameEngine(session, plan.plan().engine()));
            kept.filter(session -> !session.start().planText().equals(plan.text()))
                    .ifPresent(session -> said.accept(List.of(
                            Finding.warning(FindingCode.LIVE_PLAN_DIFFERS, Place.inFile(captures.toString())))));
            return kept.flatMap(session -> session.input().experience());
        });
    }

    /** Two engines in one session would be fitted as one. */
    private static void requireSameEngine(KeptSession session, EngineFacts engine) {
        EngineFacts before = session.input().plan().engine();
        if (engine.isOther(before)) {
            throw new Program.BadInput(List.of(Finding.error(
                    FindingCode.LIVE_ENGINE_DIFFERS,
                    Place.nowhere(),
                    Detail.of("session", String.valueOf(session.id())),
                    Detail.of("was", words(before)),
                    Detail.of("now", words(engine)))));
        }
    }

    private static String words(EngineFacts engine) {
        List<String> facts = new ArrayList<>();
        engine.displacementM3().ifPresent(cubicMetres -> facts.add(Shown.fixed(1000 * cubicMetres, 3) + " L"));
        engine.cylinders().ifPresent(count -> facts.add(Shown.count(count, "cylinder")));
        facts.add(engine.isBoosted() ? "boosted" : "natural");
        return engine.name().map(name -> "\"" + name + "\"").orElse("an engine without a name") + " ("
                + String.join(", ", facts) + ")";
    }

    private Optional<Experience> read(NotebookOption.Work<Optional<Experience>> work) {
        if (!notebook.isThere()) {
            return Optional.empty();
        }
        try {
            return notebook.reading(work);
        } catch (Program.BadInput unreadable) {
            if (unreadable.findings().stream().anyMatch(finding -> finding.code() == FindingCode.LIVE_ENGINE_DIFFERS)) {
                throw unreadable;
            }
            said.accept(unreadable.findings().stream().map(Finding::asWarning).toList());
            return Optional.empty();
        }
    }
}
