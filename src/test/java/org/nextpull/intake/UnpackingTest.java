package org.nextpull.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;

class UnpackingTest {
    @Test
    void breaksOffBehindWhatALogOfThatSizeCanHold() throws IOException {
        InputStream bomb = Unpacking.bounded(new ByteArrayInputStream(new byte[1000]), 3, 50);
        assertThat(bomb.readNBytes(300)).hasSize(300);
        assertThatThrownBy(bomb::read).isInstanceOf(ByteSource.OverpackedException.class);
    }

    @Test
    void readsASmallSourceWholeHoweverItIsPacked() throws IOException {
        assertThat(Unpacking.bounded(new ByteArrayInputStream(new byte[400]), 3, 500)
                        .readAllBytes())
                .hasSize(400);
    }
}
