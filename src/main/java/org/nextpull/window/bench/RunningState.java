package org.nextpull.window.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.nextpull.advice.PresentConditions;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.Role;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.live.LiveState;
import org.nextpull.report.AlarmText;
import org.nextpull.report.FindingText;
import org.nextpull.report.LinkText;
import org.nextpull.report.Shown;
import org.nextpull.unit.Temperature;
import org.nextpull.window.look.Tone;

/** What a running session adds to the page: links, recording, alarms, temperatures of the moment, and what was said. */
final class RunningState {
    /** A value older than this is not one of this moment. */
    private static final double STALE_S = 10;

    private static final int NOTICES = 5;

    private final LiveState state;
    private final AlarmText alarms;
    private final FindingText sentences;

    RunningState(LiveState state, Shown shown, FindingText sentences) {
        this.state = state;
        this.alarms = new AlarmText(shown);
        this.sentences = sentences;
    }

    /** All sources in one line; the worst gives the sign. */
    BenchPage.Remark link() {
        List<BenchPage.Remark> links = state.links().stream().map(this::link).toList();
        Tone worst = links.stream()
                .map(BenchPage.Remark::tone)
                .max(Comparator.naturalOrder())
                .orElse(Tone.PLAIN);
        return new BenchPage.Remark(
                worst,
                String.join(" ", links.stream().map(BenchPage.Remark::sentence).toList()));
    }

    private BenchPage.Remark link(LiveState.LinkState link) {
        return switch (link.link()) {
            case WAITING -> new BenchPage.Remark(Tone.WARN, LinkText.waiting(link.source()));
            case CONNECTED -> new BenchPage.Remark(Tone.GOOD, LinkText.connected(link.source(), link.sinceLastS()));
            case SILENT -> new BenchPage.Remark(Tone.BAD, LinkText.silent(link.source(), link.sinceLastS()));
            case LOST -> new BenchPage.Remark(Tone.BAD, LinkText.lost(link.source(), link.sinceLastS()));
        };
    }

    BenchPage.Remark recording() {
        return state.capture()
                .failing()
                .map(why -> new BenchPage.Remark(Tone.BAD, sentences.sentence(why)))
                .orElseGet(() -> new BenchPage.Remark(
                        Tone.GOOD, LinkText.recording(state.capture().bytes())));
    }

    /** Alarms that sound, then what does not arrive or is not kept; each stays as long as it holds. */
    List<BenchPage.Remark> urgent() {
        List<BenchPage.Remark> urgent = new ArrayList<>();
        for (Alarm alarm : state.sounding()) {
            urgent.add(new BenchPage.Remark(Tone.BAD, alarms.sentence(alarm)));
        }
        state.links().stream()
                .map(this::link)
                .filter(remark -> remark.tone() == Tone.BAD)
                .forEach(urgent::add);
        state.capture()
                .failing()
                .map(why -> new BenchPage.Remark(Tone.BAD, sentences.sentence(why)))
                .ifPresent(urgent::add);
        return urgent;
    }

    PresentConditions conditions() {
        return new PresentConditions(
                latest(Role.COOLANT_TEMPERATURE),
                latest(Role.OIL_TEMPERATURE),
                latest(Role.INLET_AIR_TEMPERATURE),
                latest(Role.EXHAUST_TEMPERATURE));
    }

    /** The hottest of several sensors. */
    private Optional<Temperature> latest(Role role) {
        return state.latest().stream()
                .filter(value -> value.channel().role() == role && value.ageS() <= STALE_S)
                .max(Comparator.comparingDouble(LiveState.LatestValue::value))
                .map(value -> Temperature.ofKelvins(value.value()));
    }

    /** What was said last, the latest first; of a port only what was said since its lines were good. */
    List<BenchPage.Remark> notices() {
        List<LiveState.Notice> all = state.notices();
        List<BenchPage.Remark> last = new ArrayList<>();
        boolean isWell = false;
        for (int index = all.size() - 1; index >= Math.max(0, all.size() - NOTICES); index--) {
            Finding finding = all.get(index).finding();
            isWell |= finding.code() == FindingCode.WIRE_WELL_AGAIN || finding.code() == FindingCode.WIRE_CONNECTED;
            if (!isWell || !finding.code().name().startsWith("WIRE_")) {
                last.add(BenchPage.Remark.of(finding.severity(), sentences.sentence(finding)));
            }
        }
        return last;
    }
}
