package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.KnockLevels;
import org.nextpull.fit.RowCaps;
import org.nextpull.fit.SurfaceAim;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.unit.Lambda;

/**
 * All that a decision rests on.
 *
 * @param posterior what the torque says
 * @param pulls what was run, in order, with or without torque
 * @param levels graded knock levels, where there is a channel that gives them
 * @param present map of the ignition: its breakpoints are the cells
 * @param earlier how many of the pulls were run on days before the present one, whose budget they do not use
 */
public record DayEvidence(
        SurfacePosterior posterior,
        List<TriedPull> pulls,
        Optional<KnockLevels> levels,
        SparkMap present,
        int earlier) {
    public DayEvidence {
        pulls = List.copyOf(pulls);
    }

    /** Of one day. */
    public DayEvidence(
            SurfacePosterior posterior, List<TriedPull> pulls, Optional<KnockLevels> levels, SparkMap present) {
        this(posterior, pulls, levels, present, 0);
    }

    /** What is aimed at, at a mixture and under caps. */
    SurfaceAim aim(Optional<Lambda> lambda, RowCaps caps) {
        return present.isFlat() ? SurfaceAim.flat(posterior, lambda, caps) : SurfaceAim.map(posterior, lambda, caps);
    }
}
