package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.fit.ResponseCurve;
import org.nextpull.unit.Span;

class FittedCurveTest {
    private final List<Double> asked = new ArrayList<>();

    @Test
    void isWorkedOutOnceAndOnlyWhereItIsDrawn() {
        FittedCurve curve = over(Span.of(20, 30));
        assertThat(asked).isEmpty();
        assertThat(curve.points()).isEqualTo(curve.points());
        assertThat(asked).hasSameSizeAs(curve.points());
    }

    @Test
    void goesFromTheLeastSettingToTheMost() {
        List<FittedCurve.Point> points = over(Span.of(20, 30)).points();
        assertThat(points.get(0)).isEqualTo(new FittedCurve.Point(20, 40, Span.of(39, 41)));
        assertThat(points.get(points.size() - 1)).isEqualTo(new FittedCurve.Point(30, 60, Span.of(59, 61)));
    }

    @Test
    void hasNoPointsThroughOneSetting() {
        assertThat(over(Span.of(20, 20)).points()).isEmpty();
    }

    private FittedCurve over(Span run) {
        return new FittedCurve(Optional.of(run), setting -> {
            asked.add(setting);
            return new ResponseCurve.At(2 * setting, Span.of(2 * setting - 1, 2 * setting + 1));
        });
    }
}
