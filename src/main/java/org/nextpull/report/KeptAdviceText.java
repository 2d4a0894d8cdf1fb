package org.nextpull.report;

import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.notebook.KeptSession;

/** What was advised at the time, as a notebook kept it. */
public final class KeptAdviceText {
    private KeptAdviceText() {}

    /** What was asked for, and why: {@code pull 28.0 deg (climb timing)}; at a stop what was left in the engine. */
    public static String sentence(KeptSession.Advice advice) {
        boolean isStop = advice.action().equals("stop");
        EngineSetting setting = isStop ? advice.leave() : advice.setting();
        String values = isStop
                ? Optional.of(AdviceText.values(setting))
                        .filter(left -> !left.isEmpty())
                        .map(left -> ", final setting " + left)
                        .orElse("")
                : " " + AdviceText.setting(setting);
        String cells = setting.map().map(map -> ": " + MapText.cells(map)).orElse("");
        return advice.action() + values + " (" + advice.code().replace('-', ' ') + ")" + cells;
    }
}
