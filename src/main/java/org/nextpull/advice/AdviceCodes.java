package org.nextpull.advice;

import java.util.List;
import org.nextpull.channel.EngineSetting;
import org.nextpull.unit.Lambda;

/** The one word of what the planner wants. */
final class AdviceCodes {
    private final DayView view;
    private final DayReadings maps;

    AdviceCodes(DayView view, DayReadings maps) {
        this.view = view;
        this.maps = maps;
    }

    AdviceCode of(PlannerDecision.Purpose purpose, EngineSetting setting) {
        return switch (purpose) {
            case CLIMB -> AdviceCode.CLIMB_TIMING;
            case BRACKET_BELOW, BRACKET_ABOVE, UP_TO_KNOCK -> AdviceCode.BRACKET_TIMING;
            case EXPLORE -> maps.ignition() == Ignition.STANDING ? ofMixture(setting) : AdviceCode.EXPLORE;
            case LOOK_AGAIN -> AdviceCode.LOOK_AGAIN;
            case PROVE -> AdviceCode.CONFIRM;
        };
    }

    /** Whether a mixture lies beyond what was run, to either side. */
    private AdviceCode ofMixture(EngineSetting setting) {
        double wanted = setting.lambda().orElseThrow().value();
        double[] run = maps.tried().stream()
                .flatMap(pull -> pull.lambda().stream())
                .mapToDouble(Lambda::value)
                .sorted()
                .toArray();
        if (wanted > run[run.length - 1]) {
            return AdviceCode.CLIMB_MIXTURE;
        }
        return wanted < run[0] ? AdviceCode.RICH_STEP : AdviceCode.BRACKET_MIXTURE;
    }

    AdviceCode of(PlannerDecision.StopReason reason, PlannerDecision.Answer answer) {
        return switch (reason) {
            case SETTLED -> settled(answer);
            case SCATTER_LIMITED -> AdviceCode.SCATTER_LIMITED;
            case KNOCK_LIMITED -> AdviceCode.KNOCK_LIMITED;
            case PLAN_LIMITED ->
                maps.ignition() == Ignition.STANDING && view.blocks().hasKnock(view.fuel())
                        ? AdviceCode.KNOCK_LIMITED
                        : AdviceCode.PLAN_LIMIT;
            case BUDGET -> AdviceCode.BUDGET;
            case NO_ROOM -> view.blocks().hasKnock(view.fuel()) ? AdviceCode.KNOCK_LIMITED : AdviceCode.PLAN_LIMIT;
        };
    }

    /** A best that knock, or the plan, holds at every speed is settled as that. */
    private static AdviceCode settled(PlannerDecision.Answer answer) {
        List<ChosenBy> decided = answer.decidedBy().stream().distinct().toList();
        if (decided.equals(List.of(ChosenBy.KNOCK_LIMIT))) {
            return AdviceCode.KNOCK_LIMITED;
        }
        return decided.equals(List.of(ChosenBy.PLAN_LIMIT)) ? AdviceCode.PLAN_LIMIT : AdviceCode.SETTLED;
    }
}
