package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.finding.FindingCode;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

class LikePullsTest {
    private final List<MeasuredPull> day = new ArrayList<>();

    private LikePullsTest pull(String label, double deg, double lambda) {
        MeasuredPull base = Session.evaluate(
                        SessionInput.of(Days.timing(), List.of(), List.of(Days.table(List.of(new Days.Run(20, 180))))))
                .pulls()
                .get(0);
        EngineSetting setting = EngineSetting.of(SparkMap.flat(Advance.ofDeg(deg)), Optional.of(Lambda.of(lambda)))
                .fitted(Optional.of(label), Optional.empty());
        day.add(new MeasuredPull(
                day.size() + 1,
                base.origin(),
                day.size(),
                setting,
                EngineSetting.none(),
                base.standing(),
                base.correction(),
                base.figures(),
                base.knock(),
                base.leanestLambda(),
                base.conditions(),
                base.limitsMet(),
                base.unwatched(),
                base.findings()));
        return this;
    }

    private List<Integer> kept() {
        return ComparedDay.LikePulls.of(day).pulls().stream()
                .map(MeasuredPull::number)
                .toList();
    }

    @Test
    void pullsOfOneSettingAreAllCompared() {
        pull("a", 26, 0.87).pull("b", 26.5, 0.875).pull("b", 26, 0.86).pull("a", 25.6, 0.88);
        assertThat(kept()).containsExactly(1, 2, 3, 4);
        assertThat(ComparedDay.LikePulls.of(day).findings()).isEmpty();
    }

    @Test
    void ofASweepOnlyTheSettingThatItEndedWithIsCompared() {
        pull("a", 20, 0.87).pull("a", 20, 0.87).pull("a", 24, 0.87).pull("a", 28, 0.87);
        pull("a", 26, 0.87).pull("a", 26, 0.87).pull("b", 26, 0.87).pull("b", 26, 0.87);
        assertThat(kept()).containsExactly(5, 6, 7, 8);
        assertThat(ComparedDay.LikePulls.of(day).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.code()).isEqualTo(FindingCode.COMPARE_SWEPT));
    }

    @Test
    void aSweepThatRepeatedNothingLeavesOnePullWhichIsTooFew() {
        pull("a", 20, 0.87).pull("a", 24, 0.87).pull("a", 28, 0.87);
        assertThat(kept()).containsExactly(3);
    }

    @Test
    void aMixtureBracketIsASweepToo() {
        pull("a", 24, 0.87).pull("a", 24, 0.83).pull("a", 24, 0.91).pull("a", 24, 0.87);
        assertThat(kept()).containsExactly(1, 4);
    }
}
