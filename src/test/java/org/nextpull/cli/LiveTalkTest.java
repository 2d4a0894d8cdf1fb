package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.HoldNow;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.live.LiveState;
import org.nextpull.report.Shown;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.LiveMoments;

class LiveTalkTest {
    private static final Finding SILENT = Finding.warning(
            FindingCode.LIVE_CHANNEL_SILENT,
            Place.inFile("/dev/ttyUSB0"),
            Detail.of("channel", "exhaust-temperature"),
            Detail.of("seconds", 3.1));

    private static String said(int width) {
        StringWriter text = new StringWriter();
        try (AsyncPrinter out = new AsyncPrinter(new PrintWriter(text), ZoneOffset.UTC, width)) {
            new LiveTalk(out, new Shown(UnitSystem.METRIC)).said(new ArrivalTime(0, 0), SILENT);
        }
        return text.toString();
    }

    @Test
    void aTerminalGetsLinesThatBreakBetweenWords() {
        assertThat(said(60).lines())
                .hasSizeGreaterThan(2)
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(60));
        assertThat(said(60).replaceAll("\\s+", " "))
                .isEqualTo(said(Integer.MAX_VALUE).replaceAll("\\s+", " "));
        assertThat(said(60).lines().skip(1)).allMatch(line -> line.startsWith("           "));
    }

    private static String told(LiveState... states) {
        StringWriter text = new StringWriter();
        try (AsyncPrinter out = new AsyncPrinter(new PrintWriter(text), ZoneOffset.UTC, Integer.MAX_VALUE)) {
            LiveTalk talk = new LiveTalk(out, new Shown(UnitSystem.METRIC));
            for (LiveState state : states) {
                talk.changed(state);
            }
        }
        return text.toString();
    }

    private static LiveState hold(HoldNow.Step step, int number) {
        return LiveMoments.holding(
                new HoldNow(
                        step, number, 3, 3750, OptionalDouble.of(18.5), OptionalDouble.empty(), 0, Optional.empty()),
                false);
    }

    @Test
    void atHeldSpeedsTheMapThatIsAdvisedWaitsForTheLastOfThem() {
        String leading = told(hold(HoldNow.Step.GO, 1), hold(HoldNow.Step.GO, 2));
        assertThat(leading)
                .contains("Hold 3750 rpm (1 of 3)", "Hold 3750 rpm (2 of 3)")
                .doesNotContain("SET ");
        assertThat(told(hold(HoldNow.Step.PROVE, 3))).containsSubsequence("All held speeds are done", "SET ");
    }

    @Test
    void aSessionThatBeginsInACoolDownSaysItOnceAndSaysWhenItIsDone() {
        LiveState cooling = LiveMoments.cooling(2, 5);
        MeasuredPull last = cooling.result().pulls().get(1);
        StringWriter text = new StringWriter();
        try (AsyncPrinter out = new AsyncPrinter(new PrintWriter(text), ZoneOffset.UTC, Integer.MAX_VALUE)) {
            LiveTalk talk = new LiveTalk(out, new Shown(UnitSystem.METRIC));
            talk.changed(cooling);
            talk.pullEnded(cooling, new MeasuredPull.Curve(last, Optional.empty(), List.of()));
            talk.changed(LiveMoments.between(2, 130));
        }
        assertThat(text.toString()).containsOnlyOnce("WAIT 5 s").containsOnlyOnce("Cool-down done.");
    }

    @Test
    void aFileGetsEachSentenceInOneLine() {
        assertThat(said(Integer.MAX_VALUE).lines()).hasSize(1);
    }
}
