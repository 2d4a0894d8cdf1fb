package org.nextpull.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SamplesTest {
    private static final Channel TIME = Channel.of(Role.TIME);
    private static final Channel TORQUE = Channel.of(Role.TORQUE);
    private static final Channel LAMBDA = Channel.of(Role.LAMBDA);

    /** Torque in every row, lambda in every second one. */
    private static Samples mixed(int rows) {
        SamplesBuilder builder = Samples.builder(List.of(TORQUE, LAMBDA));
        for (int row = 0; row < rows; row++) {
            builder.row(row + 2, Optional.of("label " + row), Optional.empty()).set(TORQUE, 100 + row);
            if (row % 2 == 1) {
                builder.set(LAMBDA, 0.8 + row / 1000.0);
            }
        }
        return builder.build();
    }

    /** Ten thousand short pulls are kept in what their rows fill. */
    @Test
    void fewRowsAreNotKeptInTheRoomForMany() {
        SamplesBuilder builder = Samples.builder(List.of(TORQUE, LAMBDA));
        builder.row(2).set(TORQUE, 100);
        Samples few = builder.take();
        assertThat(few.lines).hasSize(1);
        assertThat(few.values[0]).hasSize(1);
        builder.row(3).set(LAMBDA, 0.9);
        Samples next = builder.take();
        assertThat(next.presentRows(TORQUE)).isEmpty();
        assertThat(next.presentValues(LAMBDA)).containsExactly(0.9);
        assertThat(few.presentValues(TORQUE)).containsExactly(100);
    }

    @Test
    void anAbsentCellIsNoNumber() {
        Samples samples = mixed(4);

        assertThat(samples.isPresent(LAMBDA, 0)).isFalse();
        assertThat(samples.find(LAMBDA, 0)).isEmpty();
        assertThat(samples.find(LAMBDA, 1)).hasValue(0.801);
        assertThat(samples.presentRows(LAMBDA)).containsExactly(1, 3);
        assertThat(samples.presentValues(LAMBDA)).containsExactly(0.801, 0.803);
        assertThatIllegalStateException()
                .isThrownBy(() -> samples.value(LAMBDA, 2))
                .withMessage("no value of lambda in row 2");
    }

    @Test
    void aChannelThatIsNotLoggedIsAbsentEverywhere() {
        Samples samples = mixed(2);

        assertThat(samples.has(TIME)).isFalse();
        assertThat(samples.find(TIME, 0)).isEmpty();
        assertThat(samples.presentValues(TIME)).isEmpty();
    }

    @Test
    void noCellIsSetToWhatIsNoNumber() {
        SamplesBuilder builder = Samples.builder(List.of(TORQUE)).row(2);

        for (double value : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatIllegalArgumentException().isThrownBy(() -> builder.set(TORQUE, value));
        }
        assertThat(builder.build().isPresent(TORQUE, 0)).isFalse();
    }

    @Test
    void whatWasBuiltStaysWhenTheBuilderGoesOn() {
        SamplesBuilder builder = Samples.builder(List.of(TORQUE)).row(2).set(TORQUE, 1);
        Samples first = builder.build();

        builder.set(TORQUE, 7).row(3).set(TORQUE, 2);

        assertThat(first.rows()).isEqualTo(1);
        assertThat(first.value(TORQUE, 0)).isEqualTo(1);
        assertThat(builder.build().presentValues(TORQUE)).containsExactly(7, 2);
    }

    @Test
    void moreRowsThanTheFirstRoomHoldsAreKeptInOrder() {
        Samples samples = mixed(1000);

        assertThat(samples.rows()).isEqualTo(1000);
        assertThat(samples.line(999)).isEqualTo(1001);
        assertThat(samples.value(TORQUE, 999)).isEqualTo(1099);
        assertThat(samples.presentRows(LAMBDA)).hasSize(500);
    }

    @Test
    void aSliceKeepsLinesWordsAndHoles() {
        Samples slice = mixed(10).slice(4, 7);

        assertThat(slice.rows()).isEqualTo(3);
        assertThat(slice.line(0)).isEqualTo(6);
        assertThat(slice.label(2)).contains("label 6");
        assertThat(slice.presentRows(LAMBDA)).containsExactly(1);
        assertThat(slice.value(LAMBDA, 1)).isEqualTo(0.805);
    }

    @Test
    void aRowOfOtherSamplesBringsTheChannelsThatBothHave() {
        Samples joined =
                Samples.builder(List.of(TIME, LAMBDA)).appendRow(mixed(4), 3).build();

        assertThat(joined.find(TIME, 0)).isEmpty();
        assertThat(joined.find(LAMBDA, 0)).hasValue(0.803);
        assertThat(joined.label(0)).contains("label 3");
    }

    @Test
    void aBlockHoldsAtMostItsRows() {
        assertThat(new Block(mixed(Block.MOST_ROWS)).samples().rows()).isEqualTo(4096);
        assertThatIllegalArgumentException().isThrownBy(() -> new Block(mixed(Block.MOST_ROWS + 1)));
    }

    @Test
    void theSecondSensorOfARoleHasItsNumberInItsName() {
        assertThat(LAMBDA.id()).isEqualTo("lambda");
        assertThat(new Channel(Role.LAMBDA, 2).id()).isEqualTo("lambda_2");
        assertThatIllegalArgumentException().isThrownBy(() -> new Channel(Role.LAMBDA, 0));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 100, 200, 256, 700})
    void whatWasTakenStaysAsItIsWhileTheBuilderStartsAnew(int rows) {
        SamplesBuilder builder = Samples.builder(List.of(TIME));
        for (int row = 0; row < rows; row++) {
            builder.row(row + 1).set(TIME, row);
        }
        Samples taken = builder.take();
        builder.row(9).set(TIME, 900);
        builder.row(10);

        assertThat(taken.rows()).isEqualTo(rows);
        assertThat(taken.presentRows(TIME)).hasSize(rows);
        assertThat(taken.presentValues(TIME)).hasSize(rows).startsWith(0);
        assertThat(taken.cells(TIME).isPresent(rows - 1)).isTrue();
        assertThat(taken.slice(0, rows).line(rows - 1)).isEqualTo(rows);
        Samples next = builder.build();
        assertThat(next.rows()).isEqualTo(2);
        assertThat(next.presentValues(TIME)).containsExactly(900);
    }
}
