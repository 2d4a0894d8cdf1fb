package org.nextpull.window;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.look.Look;
import org.tinylog.Logger;

/** What the window was like when it was closed last: its look and its place on the screen, kept for the user. */
final class WindowMemory {
    private static final String DARK = "dark";
    private static final String LARGE = "large";
    private static final String US = "us-units";
    private static final String PLACE = "place";

    private final Preferences kept;

    WindowMemory(Preferences kept) {
        this.kept = kept;
    }

    static WindowMemory ofUser() {
        return new WindowMemory(Preferences.userRoot().node("org/nextpull/window"));
    }

    /** The look that was kept; what the command line asks for holds as well. */
    Look look(Look asked) {
        return new Look(
                asked.dark() || kept.getBoolean(DARK, false),
                asked.large() || kept.getBoolean(LARGE, false),
                asked.units() == UnitSystem.US || kept.getBoolean(US, false) ? UnitSystem.US : UnitSystem.METRIC);
    }

    /** Where the window was; the whole of the usual size where nothing was kept, or it lies on no screen now. */
    Rectangle place(Rectangle screen, Dimension usual) {
        String[] parts = kept.get(PLACE, "").split(",", -1);
        if (parts.length == 4 && String.join("", parts).matches("[-0-9]{4,40}")) {
            try {
                Rectangle place = new Rectangle(
                        Integer.parseInt(parts[0]),
                        Integer.parseInt(parts[1]),
                        Integer.parseInt(parts[2]),
                        Integer.parseInt(parts[3]));
                if (screen.contains(place)) {
                    return place;
                }
            } catch (NumberFormatException odd) {
                Logger.debug("a place that is none: {}", kept.get(PLACE, ""));
            }
        }
        return new Rectangle(new java.awt.Point(screen.x, screen.y), usual);
    }

    void keep(Look look, Rectangle place) {
        kept.putBoolean(DARK, look.dark());
        kept.putBoolean(LARGE, look.large());
        kept.putBoolean(US, look.units() == UnitSystem.US);
        kept.put(PLACE, place.x + "," + place.y + "," + place.width + "," + place.height);
        try {
            kept.flush();
        } catch (BackingStoreException lost) {
            Logger.warn("the look of the window could not be kept: {}", lost.getMessage());
        }
    }
}
