package org.nextpull.window;

import java.util.Optional;
import org.nextpull.app.NotebookAccess;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.look.Look;

/**
 * What a window is opened with.
 *
 * @param day a day to show at once; without one the page that starts a session comes first
 * @param plan the plan file that the form opens with
 * @param notebook the notebook, which need not be there yet
 * @param version version of the program, for sessions that are kept
 * @param look how it looks at first
 */
public record WindowSetup(
        Optional<DaySource> day, Optional<String> plan, NotebookAccess notebook, String version, Look look) {}
