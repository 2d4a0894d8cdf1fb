package org.nextpull.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.UUID;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.nextpull.window.look.Look;

class WindowMemoryTest {
    private static final Rectangle SCREEN = new Rectangle(0, 0, 1920, 1080);
    private static final Dimension USUAL = new Dimension(1280, 720);

    private final Preferences node = Preferences.userRoot().node("org/nextpull/test/" + UUID.randomUUID());
    private final WindowProgram.Memory memory = new WindowProgram.Memory(node);

    @AfterEach
    void forget() throws BackingStoreException {
        node.removeNode();
    }

    @Test
    void lookAndPlaceComeBack() {
        assertThat(memory.look(Look.plain())).isEqualTo(Look.plain());
        assertThat(memory.place(SCREEN, USUAL)).isEqualTo(new Rectangle(0, 0, 1280, 720));
        Look dark = Look.plain().otherGround().otherUnits();
        memory.keep(dark, new Rectangle(100, 50, 1400, 800));
        assertThat(memory.look(Look.plain())).isEqualTo(dark);
        assertThat(memory.place(SCREEN, USUAL)).isEqualTo(new Rectangle(100, 50, 1400, 800));
    }

    @Test
    void aPlaceOffTheScreenOrThatIsNoneIsNotTaken() {
        memory.keep(Look.plain(), new Rectangle(1800, 50, 1400, 800));
        assertThat(memory.place(SCREEN, USUAL).getSize()).isEqualTo(USUAL);
        node.put("place", "9999999999,1,1,1");
        assertThat(memory.place(SCREEN, USUAL).getSize()).isEqualTo(USUAL);
    }
}
