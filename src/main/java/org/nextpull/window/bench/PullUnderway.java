package org.nextpull.window.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.advice.Advice;
import org.nextpull.advice.HoldNow;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.Role;
import org.nextpull.chart.Point;
import org.nextpull.chart.SpeedPlots;
import org.nextpull.live.LiveState;
import org.nextpull.plan.Limit;
import org.nextpull.report.AdviceText;
import org.nextpull.report.AlarmText;
import org.nextpull.report.HoldText;
import org.nextpull.report.LinkText;
import org.nextpull.report.NextStep;
import org.nextpull.report.Shown;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Quantity;
import org.nextpull.window.look.Tone;

/** Makes the page of a pull in progress from what a running session knows of this moment. */
final class PullUnderway {
    /** A value older than this is not one of this moment. */
    private static final double STALE_S = 2;

    /** From here on a limit is called near. */
    private static final double NEAR = 0.97;

    private final LiveState state;
    private final Shown shown;

    PullUnderway(LiveState state, Shown shown) {
        this.state = state;
        this.shown = shown;
    }

    /** The page; empty between pulls. */
    Optional<BenchPage.PullPage> page() {
        if (state.pullSinceS().isEmpty()) {
            return Optional.empty();
        }
        List<Point> course = state.pull().course().stream()
                .map(at -> new Point(at.rpm(), at.torqueNm()))
                .toList();
        return Optional.of(new BenchPage.PullPage(
                LinkText.pulling(state.nextPull(), state.pullSinceS().getAsDouble()) + set(),
                figures(),
                SpeedPlots.underway(state.result(), shown.units(), course),
                nearest()));
    }

    /** What is to be set; at a held speed that is guided it changes under way and stands among the figures. */
    private String set() {
        return held().isPresent()
                ? ""
                : state.advice()
                        .flatMap(Advice::setting)
                        .map(AdviceText::setting)
                        .filter(setting -> !setting.isEmpty())
                        .map(setting -> " To be run at " + setting + ".")
                        .orElse("");
    }

    private Optional<HoldNow> held() {
        return state.hold().filter(hold -> hold.step() != HoldNow.Step.PROVE);
    }

    private static Tone tone(HoldNow.Step step) {
        return switch (step) {
            case CLOSE_DONE -> Tone.GOOD;
            case SET -> Tone.WARN;
            case GO, HOLD, PROVE -> Tone.PLAIN;
            default -> Tone.BAD;
        };
    }

    private List<BenchPage.PullPage.Live> figures() {
        List<BenchPage.PullPage.Live> figures = new ArrayList<>();
        held().ifPresent(hold -> figures.add(new BenchPage.PullPage.Live(HoldText.advance(hold), tone(hold.step()))));
        figures.add(live(
                Role.ENGINE_SPEED,
                "speed",
                Optional.of(Limit.SPEED),
                held().map(hold -> "hold " + Shown.fixed(hold.rpm(), 0)).orElse("")));
        figures.add(live(Role.TORQUE, "torque", Optional.empty(), ""));
        figures.add(live(Role.LAMBDA, "lambda", Optional.of(Limit.LEAN), target()));
        String knocks = state.pull().knockEvents().isPresent()
                ? String.valueOf(state.pull().knockEvents().getAsLong())
                : "-";
        boolean isCounted = state.pull().knockEvents().isPresent();
        figures.add(new BenchPage.PullPage.Live(
                new NextStep.Figure(knocks, "", "knock", isCounted ? "counted in this pull" : "not measured: listen"),
                state.pull().knockEvents().orElse(0) > 0 ? Tone.BAD : Tone.PLAIN));
        figures.add(live(Role.EXHAUST_TEMPERATURE, "hottest exhaust", Optional.of(Limit.EXHAUST), ""));
        return figures;
    }

    /** Of several sensors the one of the greatest value: the leanest mixture, the hottest exhaust. */
    private BenchPage.PullPage.Live live(Role role, String name, Optional<Limit> limit, String beside) {
        OptionalDouble value = state.latest().stream()
                .filter(latest -> latest.channel().role() == role && latest.ageS() <= STALE_S)
                .mapToDouble(LiveState.LatestValue::value)
                .max();
        boolean hasUnit = value.isPresent() && role.quantity() != Quantity.LAMBDA;
        return new BenchPage.PullPage.Live(
                new NextStep.Figure(
                        value.isPresent() ? shown.number(role.quantity(), value.getAsDouble()) : "-",
                        hasUnit ? shown.unit(role.quantity()).sign() : "",
                        name,
                        value.isPresent() ? beside : "not measured"),
                limit.map(this::tone).orElse(Tone.PLAIN));
    }

    private String target() {
        Optional<Lambda> asked =
                state.nextSetting().flatMap(set -> set.setting().lambda());
        return asked.or(() -> state.advice().flatMap(Advice::setting).flatMap(EngineSetting::lambda))
                .map(lambda -> "target " + shown.number(Quantity.LAMBDA, lambda.value()))
                .orElse("");
    }

    private Tone tone(Limit limit) {
        if (state.sounding().stream().anyMatch(alarm -> alarm.limit() == limit)) {
            return Tone.BAD;
        }
        return state.headroom().stream()
                .filter(headroom -> headroom.limit() == limit)
                .findFirst()
                .map(PullUnderway::tone)
                .orElse(Tone.PLAIN);
    }

    private static Tone tone(Alarm.Headroom headroom) {
        return headroom.used() > 1 ? Tone.BAD : headroom.used() >= NEAR ? Tone.WARN : Tone.PLAIN;
    }

    private Optional<BenchPage.PullPage.Nearest> nearest() {
        return state.headroom().stream()
                .max(Comparator.comparingDouble(Alarm.Headroom::used))
                .map(headroom -> new BenchPage.PullPage.Nearest(
                        new AlarmText(shown).nearness(headroom), headroom.used(), tone(headroom)));
    }
}
