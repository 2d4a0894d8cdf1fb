package org.nextpull.curve;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.DynoFacts;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.RowRange;

/**
 * Reads the raw curve off a pull. Torque is what is logged, with the inertia put back that the log leaves out (T + J dw/dt); or power
 * over speed where only power is logged; or, on an inertia roller, J dw/dt alone, and then it is stated at the roller.
 */
public final class CurveReader {
    private static final int LEAST_SWEEP_ROWS = 5;

    /** Where the rows are far apart, a point averages over this many to each side. */
    private static final double ROWS_REACHED = 1.5;

    private static final Channel TIME = Channel.of(Role.TIME);

    private final DynoFacts dyno;

    /** Reads the pulls of one dyno. */
    public CurveReader(DynoFacts dyno) {
        this.dyno = dyno;
    }

    /** The curve of a pull, on the grid that its rows allow. It works for refused candidates too, as far as they have rows. */
    public Outcome<RawCurve> read(Candidate pull) {
        return new ShaftReader(pull, dyno).read().then(rows -> {
            if (!pull.kind().isSweep()) {
                return plateaus(pull, rows);
            }
            return rows.size() < LEAST_SWEEP_ROWS ? tooThin(pull, rows.size()) : sweep(pull, rows);
        });
    }

    private static Outcome<RawCurve> sweep(Candidate pull, ShaftReader.Rows rows) {
        double apart = (rows.rpm().max() - rows.rpm().min()) / (rows.size() - 1);
        double step = SpeedGrid.STANDARD.stepRpm();
        double reach = Math.max(step, ROWS_REACHED * apart);
        List<Finding> findings = reach > step
                ? List.of(Finding.note(
                        FindingCode.CURVE_COARSE, pull.place(), Detail.of("rpm", apart), Detail.of("reach", reach)))
                : List.of();
        return new SweepCurve(rows, reach)
                .curve()
                .map(curve -> Outcome.of(curve, findings))
                .orElseGet(() -> tooThin(pull, rows.size()));
    }

    private static Outcome<RawCurve> plateaus(Candidate pull, ShaftReader.Rows rows) {
        List<PlateauCurve.Plateau> plateaus = new ArrayList<>();
        for (RowRange range : pull.plateaus()) {
            PlateauCurve.Plateau plateau = range.rows() == 0
                    ? PlateauCurve.between(rows, 1, 0)
                    : PlateauCurve.between(
                            rows,
                            pull.samples().value(TIME, range.first()),
                            pull.samples().value(TIME, range.end() - 1));
            if (!plateau.rpm().isEmpty()) {
                plateaus.add(plateau);
            }
        }
        if (plateaus.isEmpty()) {
            return tooThin(pull, rows.size());
        }
        return Outcome.of(new PlateauCurve(rows.axes(), SpeedGrid.STANDARD, PlateauCurve.rising(plateaus)).curve());
    }

    private static Outcome<RawCurve> tooThin(Candidate pull, int rows) {
        return Outcome.failed(Finding.error(FindingCode.CURVE_TOO_THIN, pull.place(), Detail.of("rows", rows)));
    }
}
