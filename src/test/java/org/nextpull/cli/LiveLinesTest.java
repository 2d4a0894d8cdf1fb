package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.HoldNow;
import org.nextpull.alarm.Alarm;
import org.nextpull.live.LiveState;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.LiveMoments;

class LiveLinesTest {
    private final StringWriter words = new StringWriter();

    private List<JsonNode> lines(Consumer<LiveLines> session) throws IOException {
        StringWriter text = new StringWriter();
        try (AsyncPrinter out = new AsyncPrinter(new PrintWriter(text), ZoneOffset.UTC, 80);
                AsyncPrinter people = new AsyncPrinter(new PrintWriter(words), ZoneOffset.UTC, 80)) {
            LiveTalk talk = new LiveTalk(people, new Shown(UnitSystem.METRIC));
            session.accept(new LiveLines(out, talk));
        }
        List<JsonNode> read = new ArrayList<>();
        for (String line : text.toString().lines().toList()) {
            read.add(new ObjectMapper().readTree(line));
        }
        assertThat(read).allSatisfy(line -> {
            assertThat(line.get("schema").asInt()).isEqualTo(1);
            assertThat(line.get("at").asText()).endsWith("Z");
        });
        return read;
    }

    private static LiveState hold(HoldNow.Step step, double deg, double leftS) {
        return LiveMoments.holding(
                new HoldNow(step, 1, 3, 3750, OptionalDouble.of(deg), OptionalDouble.of(leftS), 1, Optional.empty()),
                true);
    }

    private static List<JsonNode> of(String event, List<JsonNode> lines) {
        return lines.stream()
                .filter(line -> line.get("event").asText().equals(event))
                .toList();
    }

    @Test
    void aHeldSpeedIsALineAtEachChangeAndEachSecondOfItsCountDown() throws IOException {
        List<JsonNode> all = lines(session -> {
            session.changed(hold(HoldNow.Step.SET, 22.5, 41.9));
            session.changed(hold(HoldNow.Step.SET, 22.5, 41.2));
            session.changed(hold(HoldNow.Step.SET, 22.5, 40.8));
            session.changed(hold(HoldNow.Step.CLOSE_KNOCK, 22.5, 40.7));
        });
        List<JsonNode> holds = of("hold", all);
        assertThat(holds).extracting(line -> line.get("phase").asText()).containsExactly("set", "set", "close-knock");
        assertThat(holds).extracting(line -> line.get("load_left_s").asInt()).containsExactly(41, 40, 40);
        JsonNode first = holds.get(0);
        assertThat(first.get("rpm").asInt()).isEqualTo(3750);
        assertThat(first.get("advance_deg").asDouble()).isEqualTo(22.5);
        assertThat(first.get("number").asInt()).isEqualTo(1);
        assertThat(first.get("count").asInt()).isEqualTo(3);
        assertThat(first.get("steady_points").asInt()).isEqualTo(1);
        assertThat(first.get("cool_down_left_s").isNull()).isTrue();
        assertThat(first.get("logged_deg").isNull()).isTrue();
        assertThat(of("next", all)).hasSize(1);
        assertThat(words.toString())
                .contains("Set 22.5 deg at 3750 rpm", "CLOSE THROTTLE. 3750 rpm (1 of 3) knocked")
                .as("the map is for after the held speeds")
                .doesNotContain("SET ");
    }

    @Test
    void anotherAdvanceThanAskedIsInTheLine() throws IOException {
        HoldNow set = new HoldNow(
                HoldNow.Step.SET,
                1,
                3,
                3750,
                OptionalDouble.of(26),
                OptionalDouble.of(37),
                2,
                Optional.of(new HoldNow.OtherAdvance(24, 22)));
        JsonNode line = of("hold", lines(session -> session.changed(LiveMoments.holding(set, true))))
                .get(0);
        assertThat(line.get("asked_deg").asDouble()).isEqualTo(24);
        assertThat(line.get("logged_deg").asDouble()).isEqualTo(22);
        assertThat(line.get("advance_deg").asDouble()).isEqualTo(26);
    }

    @Test
    void anAlarmAndAnAdviceAreALineEachAndTheSameAdviceIsNone() throws IOException {
        LiveState hot = LiveMoments.pulling(2, 3, 920);
        Alarm alarm = hot.sounding().get(0);
        List<JsonNode> all = lines(session -> {
            session.changed(LiveMoments.between(2, 120));
            session.changed(LiveMoments.between(2, 121));
            session.alarm(new Alarm.Event(Alarm.Event.Kind.SOUNDED, alarm, alarm.since()), hot);
        });
        assertThat(all).extracting(line -> line.get("event").asText()).containsExactly("next", "alarm");
        assertThat(all.get(0).get("next").get("action").asText()).isEqualTo("pull");
        assertThat(all.get(1).get("limit").asText()).isEqualTo("exhaust");
        assertThat(all.get(1).get("kind").asText()).isEqualTo("sounded");
        assertThat(all.get(1).get("text").asText()).startsWith("CLOSE THROTTLE");
    }
}
