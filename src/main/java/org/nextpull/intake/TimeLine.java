package org.nextpull.intake;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/**
 * Makes the time of a source rise strictly, which all that follows relies on. A row whose time equals that of the row before, or lies
 * less than {@link #RESTART_FROM_S} behind it, is refused. A greater step back is a new pull: its times go on {@link #GAP_S} after
 * the last one. A clock that passes midnight goes on. Not for use by several threads.
 */
final class TimeLine {
    /** Step back from which the time is taken to start again, in seconds. */
    static final double RESTART_FROM_S = 1;
    /** Gap that is put between the rows before and after a new start, in seconds. */
    static final double GAP_S = 10;

    private static final double DAY_S = 86_400;

    private final boolean clock;
    private final LineNumbers restarts = new LineNumbers();
    private final LineNumbers repeats = new LineNumbers();
    private final LineNumbers backwards = new LineNumbers();
    private boolean started;
    private double lastWritten;
    private double last;
    private double shift;

    /**
     * Starts a time line.
     *
     * @param clock whether times are those of a clock, which start again at midnight
     */
    TimeLine(boolean clock) {
        this.clock = clock;
    }

    /** Whether a row of that time, in seconds as written, can be taken; {@link #seconds} is then its time. */
    boolean accept(double written, long line) {
        double step = written - lastWritten;
        if (started && step == 0) {
            repeats.add(line);
            return false;
        }
        if (started && step < 0) {
            if (step > -RESTART_FROM_S) {
                backwards.add(line);
                return false;
            }
            if (clock && step < -DAY_S / 2) {
                shift += DAY_S;
            } else {
                restarts.add(line);
                shift = last + GAP_S - written;
            }
        }
        double next = written + shift;
        if (started && next <= last) {
            repeats.add(line);
            return false;
        }
        started = true;
        lastWritten = written;
        last = next;
        return true;
    }

    /**
     * Takes the times of rows one after the other, as long as each lies behind the one before.
     *
     * @param written as written, s, from {@code first} to before {@code end}
     * @param into where they go, from {@code at} on
     * @return how many it took
     */
    int follow(double[] written, int first, int end, double[] into, int at) {
        int row = first;
        while (row < end && started && written[row] > lastWritten && written[row] + shift > last) {
            lastWritten = written[row];
            last = written[row] + shift;
            into[at + row++ - first] = last;
        }
        return row - first;
    }

    /** Time of the row accepted last, in seconds, later than that of every row before. */
    double seconds() {
        return last;
    }

    /** What was found on times so far. */
    List<Finding> findings(String name) {
        List<Finding> findings = new ArrayList<>();
        if (!restarts.isEmpty()) {
            findings.add(Finding.note(FindingCode.TIME_STARTS_AGAIN, at(name, restarts), restarts.details()));
        }
        if (!repeats.isEmpty()) {
            findings.add(Finding.warning(FindingCode.TIME_REPEATED, at(name, repeats), repeats.details()));
        }
        if (!backwards.isEmpty()) {
            findings.add(Finding.warning(FindingCode.TIME_GOES_BACK, at(name, backwards), backwards.details()));
        }
        return findings;
    }

    private static Place at(String name, LineNumbers lines) {
        return Place.atLine(name, lines.firstLine());
    }
}
