package org.nextpull.plan.text;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.fuel.Blends;
import org.nextpull.plan.DynoFacts;
import org.nextpull.plan.EngineFacts;
import org.nextpull.plan.Goal;
import org.nextpull.plan.PortFacts;
import org.nextpull.plan.PullFacts;
import org.nextpull.plan.TimingPlan;
import org.nextpull.plan.WireFacts;

/** The words that a key takes, as a plan writes them. */
public final class PlanWords {
    private PlanWords() {}

    /** The words of a key by {@code table.key}, a list of tables without its number; empty for a key that takes anything. */
    public static List<String> of(String key, PlanDraft draft) {
        return switch (key) {
            case "engine.induction" -> of(EngineFacts.Induction.class);
            case "fuel.blend" -> blends(draft);
            case "dyno.kind" -> of(DynoFacts.Kind.class);
            case "dyno.torque_at" -> of(DynoFacts.Shaft.class);
            case "air.standard", "log.corrected_by" ->
                CorrectionStandard.all().stream().map(CorrectionStandard::id).toList();
            case "pull.kind" -> of(PullFacts.Kind.class);
            case "timing.sets" -> of(TimingPlan.Sets.class);
            case "goal.stages" -> of(Goal.Stages.class);
            case "goal.response" -> of(Goal.Response.class);
            case "wire.parity" -> of(PortFacts.Parity.class);
            case "wire.flow" -> of(PortFacts.Flow.class);
            case "wire.lines" -> of(WireFacts.Lines.class);
            case "wire.stop" ->
                Arrays.stream(PortFacts.Stop.values())
                        .map(stop -> Shown.number(stop.bits()))
                        .toList();
            default -> List.of();
        };
    }

    static <E extends Enum<E>> List<String> of(Class<E> words) {
        return Arrays.stream(words.getEnumConstants()).map(Shown::word).toList();
    }

    private static List<String> blends(PlanDraft draft) {
        Stream<String> own = draft.tables().stream()
                .filter(table -> PlanDraft.listOf(table).equals("blend"))
                .flatMap(table -> draft.typed(table, "name").stream());
        return Stream.concat(Blends.listed().names().stream(), own).toList();
    }
}
