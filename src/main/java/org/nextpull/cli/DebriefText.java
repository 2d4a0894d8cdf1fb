package org.nextpull.cli;

import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.report.CandidateWords;
import org.nextpull.report.Shown;
import org.nextpull.session.CandidateDay;
import org.nextpull.session.SessionResult;
import org.nextpull.simulator.Debrief;
import org.nextpull.unit.Quantity;

/** The truth beside what was found, in words. */
final class DebriefText {
    private final Shown shown;

    DebriefText(Shown shown) {
        this.shown = shown;
    }

    /** The truth of what is left in the engine, and of each candidate beside the first, with what the day found of it. */
    String text(Debrief debrief, Map<String, Debrief> candidates, SessionResult result) {
        StringBuilder text = new StringBuilder(text(debrief));
        result.candidates().ifPresent(day -> {
            CandidateWords words = new CandidateWords(day, result.plan().goal().response(), shown);
            OptionalDouble first = OptionalDouble.empty();
            for (CandidateDay.State state : day.candidates()) {
                Debrief own = Objects.requireNonNull(candidates.get(state.plan().label()));
                double torqueNm = own.truth().torqueNm();
                first = first.isPresent() ? first : OptionalDouble.of(torqueNm);
                text.append("True best of \"" + state.plan().label() + "\": MBT "
                                + Shown.fixed(own.truth().timing().goodDeg(), 1) + " deg, lambda "
                                + Shown.fixed(own.truth().lambda(), 3) + ", "
                                + shown.value(Quantity.TORQUE, torqueNm)
                                + gain(torqueNm / first.getAsDouble() - 1) + ".\n")
                        .append(found(own, words.gain(state)));
            }
        });
        return text.toString();
    }

    /** What the sweep of a candidate found, and what the decision runs said of it. */
    private static String found(Debrief own, Optional<String> gain) {
        return own.left()
                .map(left -> "  found: " + gain.map(told -> told + ", ").orElse("")
                        + Shown.fixed(left.advanceDeg(), 1) + " deg, lambda " + Shown.fixed(left.lambda(), 3)
                        + ", where "
                        + Shown.fixed(own.torqueLeftPercent().orElse(0), 2) + " % of its torque is left.\n")
                .orElse("  found: no setting of its own.\n");
    }

    private static String gain(double share) {
        return share == 0 ? "" : ", " + signed(100 * share, 2) + " %";
    }

    String text(Debrief debrief) {
        Debrief.Timing timing = debrief.truth().timing();
        StringBuilder text = new StringBuilder("The truth of engine " + debrief.seed() + ":\n");
        text.append("  most torque over the band at ")
                .append(Shown.fixed(timing.peakDeg(), 1))
                .append(" deg, MBT ")
                .append(Shown.fixed(timing.goodDeg(), 1))
                .append(" deg, lambda ")
                .append(Shown.fixed(debrief.truth().lambda(), 3))
                .append(", ")
                .append(shown.value(Quantity.TORQUE, debrief.truth().torqueNm()))
                .append('\n');
        text.append(
                timing.onsetDeg().isPresent()
                        ? "  knock once a pull from "
                                + Shown.fixed(timing.onsetDeg().getAsDouble(), 1) + " deg\n"
                        : "  no knock within ten degrees beyond that\n");
        text.append("  repeatability ")
                .append(Shown.fixed(debrief.scatterPercent(), 2))
                .append(" %\n");
        text.append(found(debrief));
        text.append("Pulls: ")
                .append(debrief.pulls())
                .append(", with knock: ")
                .append(debrief.knockingPulls())
                .append(".\n");
        return text.toString();
    }

    private static String found(Debrief debrief) {
        if (debrief.left().isEmpty()) {
            return "No final setting: no clean pull was run.\n";
        }
        Debrief.Left left = debrief.left().get();
        return "Your final setting: " + Shown.fixed(left.advanceDeg(), 1) + " deg ("
                + signed(debrief.degreesOff().orElse(0), 1) + " deg off) and lambda "
                + Shown.fixed(left.lambda(), 3) + " ("
                + signed(debrief.lambdaOff().orElse(0), 3) + " off): "
                + Shown.fixed(debrief.torqueLeftPercent().orElse(0), 2) + " % of torque is left.\n";
    }

    private static String signed(double value, int decimals) {
        return String.format(Locale.ROOT, "%+." + decimals + "f", value);
    }
}
