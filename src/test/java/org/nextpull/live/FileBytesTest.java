package org.nextpull.live;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FileBytesTest {
    @Test
    void aSmallMemoryHoldsLessAndALargeOneNoMoreThanUsual() {
        assertThat(FileBytes.usualMostBytes(128L << 20)).isEqualTo(8 << 20);
        assertThat(FileBytes.usualMostBytes(1L << 30)).isEqualTo(64 << 20);
        assertThat(FileBytes.usualMostBytes(16L << 30)).isEqualTo(64 << 20);
        assertThat(FileBytes.usualMostBytes(Long.MAX_VALUE)).isEqualTo(64 << 20);
    }
}
