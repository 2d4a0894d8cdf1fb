package org.nextpull.pull;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.Block;
import org.nextpull.unit.SpeedBand;

/** A pull in whose middle the data stopped. */
class CutPullTest {
    @Test
    void theRestOfACutPullIsNoPullHoweverOftenTheDataStops() {
        List<Block> blocks = new BenchLog(50, 15)
                .noise(6, 2)
                .pull(2500, 7000, 300)
                .pull(2500, 7000, 300)
                .blocks(50);
        PullFinder finder = new PullFinder("wire", Rules.over(new SpeedBand(3000, 6500)));
        List<Candidate> found = new ArrayList<>();
        for (int second = 0; second < blocks.size(); second++) {
            found.addAll(finder.accept(blocks.get(second)));
            if (second == 8 || second == 9) {
                found.addAll(finder.cut());
            }
        }
        found.addAll(finder.finish());
        assertThat(found).hasSize(2);
        assertThat(found.get(0).refusal().orElseThrow().reason()).isEqualTo(Refusal.Reason.DATA_STOPPED);
        assertThat(found.get(1).isUsable()).isTrue();
    }
}
