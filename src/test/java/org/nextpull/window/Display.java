package org.nextpull.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.GraphicsEnvironment;

/** Whether there is a display. Tests that need one are skipped aloud where there is none, but never where everything is built and checked. */
final class Display {
    private Display() {}

    static void need() {
        boolean missing = GraphicsEnvironment.isHeadless();
        if (System.getenv("CI") != null) {
            assertThat(missing).as("the build service has a display").isFalse();
        }
        assumeTrue(!missing, "no display (DISPLAY is not set): the window was not driven");
    }
}
