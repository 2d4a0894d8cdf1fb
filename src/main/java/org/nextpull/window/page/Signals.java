package org.nextpull.window.page;

import java.util.List;

/** What must be seen or heard on whatever page is shown. Safe for several threads; nothing here waits. */
public interface Signals {
    /** Sentences above all pages, worst first; they stay until others come. */
    void urgent(List<String> sentences);

    /** An alarm over the whole window, with its sound while the throttle is open. */
    void alarm(AlarmSign sign);

    /** A short sound: what is to be set has changed. */
    void changed();
}
