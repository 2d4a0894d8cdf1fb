package org.nextpull.window.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.nextpull.channel.EngineSetting;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.Goal;
import org.nextpull.plan.Limit;
import org.nextpull.report.AlarmText;
import org.nextpull.report.FindingText;
import org.nextpull.report.KnockText;
import org.nextpull.report.PullColumn;
import org.nextpull.report.Shown;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;
import org.nextpull.session.SessionResult;
import org.nextpull.window.look.Tone;

/** The pulls of a day as cards. */
final class PullCards {
    private static final int EVERY = 3;

    private final SessionResult result;
    private final Shown shown;
    private final AlarmText alarms;
    private final FindingText sentences;
    /** What is on every pull is no news on one: the list of the day says it once. */
    private final Set<FindingCode> common;

    PullCards(SessionResult result, Shown shown, FindingText sentences) {
        this.result = result;
        this.shown = shown;
        this.alarms = new AlarmText(shown);
        this.sentences = sentences;
        this.common = common(result.pulls());
    }

    private static Set<FindingCode> common(List<MeasuredPull> pulls) {
        Set<FindingCode> common = EnumSet.noneOf(FindingCode.class);
        if (pulls.size() >= EVERY) {
            common.addAll(codes(pulls.get(0)));
            pulls.forEach(pull -> common.retainAll(codes(pull)));
        }
        return common;
    }

    private static List<FindingCode> codes(MeasuredPull pull) {
        return pull.findings().stream().map(Finding::code).toList();
    }

    List<BenchPage.PullCard> cards() {
        List<Reading> readings = Reading.of(result.pulls(), result.plan().goal().response());
        return result.measured().stream().map(one -> card(one, readings)).toList();
    }

    private BenchPage.PullCard card(MeasuredPull.Curve one, List<Reading> readings) {
        MeasuredPull pull = one.pull();
        Optional<Reading> reading = readings.stream()
                .filter(each -> each.pull().number() == pull.number())
                .findFirst();
        return new BenchPage.PullCard(
                pull.number(),
                setting(pull),
                response(pull),
                reading.map(each -> change(each, readings.get(0))).orElse(""),
                tone(one),
                mark(one),
                remarks(one));
    }

    private List<String> setting(MeasuredPull pull) {
        // where nothing is swept, the label is what pulls differ in
        Optional<String> label =
                result.verdict().isPresent() ? Optional.empty() : pull.setting().label();
        return Stream.concat(
                        label.stream(),
                        Stream.of(PullColumn.ADVANCE, PullColumn.OFFSET, PullColumn.LAMBDA)
                                .flatMap(column -> column.said(pull, shown).stream()))
                .toList();
    }

    private String response(MeasuredPull pull) {
        boolean torque = result.plan().goal().response() == Goal.Response.TORQUE;
        PullColumn column = torque ? PullColumn.MEAN_TORQUE : PullColumn.MEAN_POWER;
        return column.said(pull, shown).orElse("no figure");
    }

    private static String change(Reading reading, Reading first) {
        if (reading.pull().number() == first.pull().number()) {
            return "baseline";
        }
        double percent = reading.percentOver(first);
        return (percent < 0 ? "" : "+") + Shown.fixed(percent, 2) + " %";
    }

    private Tone tone(MeasuredPull.Curve one) {
        MeasuredPull pull = one.pull();
        if (!pull.isClean() || !one.alarms().isEmpty()) {
            return Tone.BAD;
        } else if (!pull.isUsed()) {
            return Tone.PLAIN;
        }
        boolean warned = pull.findings().stream()
                .anyMatch(finding -> finding.severity() != Finding.Severity.NOTE && !common.contains(finding.code()));
        return warned ? Tone.WARN : Tone.GOOD;
    }

    private static String mark(MeasuredPull.Curve one) {
        MeasuredPull pull = one.pull();
        List<String> words = new ArrayList<>();
        if (!pull.standing().isUsed()) {
            words.add(PullColumn.status(pull));
        }
        if (pull.knock().isHeard()) {
            words.add("knock");
        }
        if (!pull.limitsMet().isEmpty()) {
            words.add("limit");
        }
        return String.join(", ", words);
    }

    private List<BenchPage.Remark> remarks(MeasuredPull.Curve one) {
        List<BenchPage.Remark> remarks = new ArrayList<>();
        KnockText.sentence(one.pull(), result.plan().band())
                .ifPresent(knock -> remarks.add(new BenchPage.Remark(Tone.BAD, knock)));
        one.alarms().stream()
                .filter(alarm -> alarm.limit() != Limit.KNOCK)
                .map(alarm ->
                        new BenchPage.Remark(Tone.BAD, alarms.inPull(one.pull().number(), alarm)))
                .forEach(remarks::add);
        one.pull().findings().stream()
                .filter(finding -> finding.severity() != Finding.Severity.NOTE && !common.contains(finding.code()))
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .map(finding -> BenchPage.Remark.of(finding.severity(), sentences.sentence(finding)))
                .forEach(remarks::add);
        EngineSetting setting = one.pull().setting();
        setting.label()
                .ifPresent(label -> remarks.add(new BenchPage.Remark(Tone.PLAIN, "Configuration: " + label + ".")));
        setting.note().ifPresent(note -> remarks.add(new BenchPage.Remark(Tone.PLAIN, "Note: " + note)));
        Optional.ofNullable(result.amendments().struck().get(one.pull().number()))
                .ifPresent(why -> remarks.add(new BenchPage.Remark(Tone.PLAIN, "Excluded by the operator: " + why)));
        return remarks;
    }
}
