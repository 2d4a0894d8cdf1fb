package org.nextpull.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.nextpull.math.NoncentralT;
import org.nextpull.scatter.Scatter;

class PullPlanTest {
    private static final List<String> LABELS = List.of("A", "B");

    /** scipy 1.17, nct.sf. */
    @Test
    void powerIsThatOfTheNoncentralT() {
        assertThat(NoncentralT.of(5, 4.714).above(2.571)).isCloseTo(0.9599054273210185, within(1e-8));
        assertThat(NoncentralT.of(21, 2).above(2.079613844727662)).isCloseTo(0.4793958917879492, within(1e-8));
        assertThat(NoncentralT.of(1, 3).above(12.706204736432095)).isCloseTo(0.1861080742462853, within(1e-6));
        assertThatIllegalArgumentException().isThrownBy(() -> NoncentralT.of(0, 1));
    }

    /** Textbook sample size for 90 % power without drift and with known scatter: (1.96 + 1.28)^2 4 s^2 / d^2 = 60.5 for 0.25 at 0.3. */
    @Test
    void aQuarterPercentNeedsSomeThirtyPullsASide() {
        PullPlan plan = PullPlan.thereAndBack(LabelScatters.of(0.3), new PullPlan.Wish(0.25, 0.9), LABELS)
                .orElseThrow();
        assertThat(plan.pulls()).isEqualTo(68);
        assertThat(plan.power()).isBetween(0.9, 0.93);
        assertThat(plan.halfWidthPercent()).isLessThan(0.25);
    }

    /** Simulated tables of the method: a true 1 % at scatter 0.3 % takes 8 pulls there and back and 24 in blocks for 80 %, outliers included. */
    @Test
    void aWholePercentNeedsEightPullsThereAndBack() {
        PullPlan.Wish wish = new PullPlan.Wish(1, 0.9);
        PullPlan plan =
                PullPlan.thereAndBack(LabelScatters.of(0.3), wish, LABELS).orElseThrow();
        assertThat(plan.order()).containsExactly("A", "B", "B", "A", "A", "B", "B", "A");
        BlockPlans blocks = new BlockPlans(LabelScatters.of(0.3), wish, LABELS);
        PullPlan three = blocks.with(3).orElseThrow();
        PullPlan two = blocks.with(2).orElseThrow();
        assertThat(three.pulls()).isBetween(8, 12);
        assertThat(two.pulls()).isBetween(12, 32);
        assertThat(two.order()).startsWith("A").endsWith("A");
        assertThat(three.flushing()).isEqualTo(3);
    }

    /** After one change-over nobody can tell whether the label or the day has changed, however many pulls there are. */
    @Test
    void oneChangeOverFindsNothing() {
        List<String> blocks = List.of("A", "A", "A", "A", "B", "B", "B", "B");
        assertThat(PullPlan.of(LabelScatters.of(0.1), new PullPlan.Wish(3, 0.9), blocks)
                        .power())
                .isZero();
        List<String> back = List.of("A", "A", "B", "B", "B", "B", "A", "A");
        assertThat(PullPlan.of(LabelScatters.of(0.1), new PullPlan.Wish(3, 0.9), back)
                        .power())
                .isGreaterThan(0.9);
    }

    @Test
    void whatADayCannotTellIsOutOfReach() {
        PullPlan.Wish wish = new PullPlan.Wish(0.1, 0.9);
        assertThat(PullPlan.thereAndBack(LabelScatters.of(0.3), wish, LABELS)).isEmpty();
        PullAdvice advice = PullAdvice.of(new Scatter(0.3, 6), OptionalDouble.empty(), wish, LABELS, Optional.empty());
        assertThat(advice.interleaved()).isEmpty();
        assertThat(advice.cautious()).isEmpty();
        assertThat(advice.resolvedByMost()).isBetween(0.17, 0.19);
    }

    @Test
    void aScatterFromFewPullsAsksForMore() {
        PullPlan.Wish wish = new PullPlan.Wish(0.5, 0.9);
        PullAdvice few = PullAdvice.of(new Scatter(0.3, 3), OptionalDouble.empty(), wish, LABELS, Optional.empty());
        PullAdvice many = PullAdvice.of(new Scatter(0.3, 60), OptionalDouble.empty(), wish, LABELS, Optional.empty());
        assertThat(few.interleaved()).isEqualTo(many.interleaved());
        assertThat(few.cautious().orElseThrow()).isGreaterThan(many.cautious().orElseThrow());
        assertThat(many.cautious().orElseThrow())
                .isGreaterThanOrEqualTo(many.interleaved().orElseThrow().pulls());
    }

    @Test
    void ordersGoThereAndBack() {
        assertThat(PullOrder.thereAndBack(List.of("A", "B", "C"), 7))
                .containsExactly("A", "B", "C", "C", "B", "A", "A");
        assertThat(PullOrder.blocks(LABELS, 3, 3)).containsExactly(List.of("A", "B", "A", "B"));
        assertThat(PullOrder.pulls(List.of("A", "B", "A"), List.of(1, 3, 2)))
                .containsExactly("A", "B", "B", "B", "A", "A");
    }

    /** With A B C nobody can tell a label from the day; with A B C A each has left the reference and come back. */
    @Test
    void blocksOfThreeLabelsComeBackToTheReference() {
        List<String> three = List.of("A", "B", "C");
        assertThat(PullOrder.blocks(three, 2, 2)).isEmpty();
        assertThat(PullOrder.blocks(three, 3, 2)).containsExactly(List.of("A", "B", "C", "A"));
        assertThat(PullOrder.blocks(three, 4, 2))
                .containsExactly(
                        List.of("A", "B", "C", "A", "B"),
                        List.of("A", "B", "C", "B", "A"),
                        List.of("A", "B", "A", "C", "A"));
        assertThat(PullOrder.blocks(three, 4, 3)).isEmpty();
        assertThat(PullOrder.blocks(three, 5, 3)).containsExactly(List.of("A", "B", "C", "A", "B", "C"));
    }

    /** The dearer a change-over, the fewer there are, and what is found costs no more than any other number of them. */
    @Test
    void aDearChangeOverMakesLongerBlocks() {
        PullPlan.Wish wish = new PullPlan.Wish(1, 0.8);
        BlockPlans blocks = new BlockPlans(LabelScatters.of(0.3), wish, List.of("A", "B", "C"));
        PullPlan dear = blocks.cheapest(6).orElseThrow();
        PullPlan cheap = blocks.cheapest(0).orElseThrow();
        assertThat(dear.changeOvers()).isLessThanOrEqualTo(cheap.changeOvers());
        for (int changes = 2; changes <= 4; changes++) {
            assertThat(blocks.with(changes).orElseThrow().cost(6)).isGreaterThanOrEqualTo(dear.cost(6));
        }
        assertThat(dear.power()).isGreaterThanOrEqualTo(0.8);
        assertThat(dear.cost(6)).isEqualTo(dear.pulls() + 7.0 * dear.changeOvers());
    }

    /** Of several labels each has its share of the error, so that all together make no more false claims than one. */
    @Test
    void severalLabelsNeedMorePullsEach() {
        PullPlan.Wish wish = new PullPlan.Wish(1, 0.8);
        int two = PullPlan.thereAndBack(LabelScatters.of(0.3), wish, LABELS)
                .orElseThrow()
                .pulls();
        int three = PullPlan.thereAndBack(LabelScatters.of(0.3), wish, List.of("A", "B", "C"))
                .orElseThrow()
                .pulls();
        assertThat(three).isGreaterThan(two);
    }

    @Test
    void impossibleWishesAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new PullPlan.Wish(0, 0.9));
        assertThatIllegalArgumentException().isThrownBy(() -> new PullPlan.Wish(1, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PullPlan.thereAndBack(LabelScatters.of(0), new PullPlan.Wish(1, 0.9), LABELS));
    }
}
