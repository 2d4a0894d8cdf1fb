package org.nextpull.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class OdeSolverTest {
    /** y'' = -y, whose solution is a circle. */
    private static final OdeSolver.Equations CIRCLE = new OdeSolver.Equations() {
        @Override
        public int dimension() {
            return 2;
        }

        @Override
        public void derivatives(double t, double[] y, double[] rates) {
            rates[0] = y[1];
            rates[1] = -y[0];
        }
    };

    private static double errorWith(int steps) {
        double[] start = {1, 0};
        double[] end = OdeSolver.integrate(CIRCLE, new OdeSolver.Span(0, 2 * Math.PI, steps), start, (t, y) -> {});
        return Math.hypot(end[0] - 1, end[1]);
    }

    @Test
    void aCircleCloses() {
        assertThat(errorWith(200)).isLessThan(1e-7);
    }

    @Test
    void theErrorFallsWithTheFourthPowerOfTheStep() {
        assertThat(errorWith(50) / errorWith(100)).isCloseTo(16, within(1.0));
    }

    @Test
    void theStartIsLeftAlone() {
        double[] start = {1, 0};
        OdeSolver.integrate(CIRCLE, new OdeSolver.Span(0, 1, 3), start, (t, y) -> {});
        assertThat(start).containsExactly(1, 0);
    }

    @Test
    void theWatcherSeesEveryStepAndTheVeryEnd() {
        List<Double> seen = new ArrayList<>();
        OdeSolver.integrate(CIRCLE, OdeSolver.Span.withSteps(0, 1, 0.3), new double[] {1, 0}, (t, y) -> seen.add(t));
        assertThat(seen).hasSize(4);
        assertThat(seen.get(3)).isEqualTo(1.0);
    }
}
