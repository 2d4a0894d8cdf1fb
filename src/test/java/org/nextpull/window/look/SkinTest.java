package org.nextpull.window.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SkinTest {
    /** Web Content Accessibility Guidelines 2.1, success criterion 1.4.3: text against its ground. */
    private static final double TEXT = 4.5;

    private record Pair(String what, Color words, Color ground) {}

    private static List<Pair> pairs(Skin skin) {
        List<Pair> pairs = new ArrayList<>();
        for (Color ground : List.of(skin.ground(), skin.raised())) {
            pairs.add(new Pair("ink", skin.ink(), ground));
            pairs.add(new Pair("quiet", skin.quiet(), ground));
            for (Tone tone : Tone.values()) {
                pairs.add(new Pair("sign " + tone, skin.tone(tone), ground));
                pairs.add(new Pair("number " + tone, skin.text(tone), ground));
            }
        }
        pairs.add(new Pair("keys", skin.chosen(), skin.ground()));
        pairs.add(new Pair("selected", skin.ink(), skin.selection()));
        pairs.add(new Pair("a stop", skin.ground(), skin.ink()));
        pairs.add(new Pair("alarm", skin.onFill(), skin.fill(Tone.BAD)));
        pairs.add(new Pair("warning", skin.onFill(), skin.fill(Tone.WARN)));
        return pairs;
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void allWordsAreReadOnTheirGround(boolean dark) {
        Skin skin = Skin.of(dark ? Look.plain().otherGround() : Look.plain());
        assertThat(pairs(skin))
                .allSatisfy(pair -> assertThat(Skin.contrast(pair.words(), pair.ground()))
                        .as(pair.what())
                        .isGreaterThanOrEqualTo(TEXT));
    }

    /** Published examples of the formula: black on white is 21 to 1; #777777 on white just misses 4.5 (WebAIM contrast checker: 4.48). */
    @Test
    void contrastIsThatOfTheGuideline() {
        assertThat(Skin.contrast(Color.BLACK, Color.WHITE)).isCloseTo(21, within(1e-9));
        assertThat(Skin.contrast(new Color(0x777777), Color.WHITE)).isCloseTo(4.48, within(0.01));
        assertThat(Skin.contrast(Color.WHITE, Color.WHITE)).isCloseTo(1, within(1e-9));
    }
}
