package org.nextpull.alarm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.unit.Temperature;

/**
 * Whether an exhaust thermocouple was still rising when the pull ended. A sheathed thermocouple takes seconds to follow, so what it shows
 * at the end of a short pull lies below the gas: the exhaust was hotter than the log says.
 */
public final class ExhaustStillRising {
    /** The end of a pull that is looked at. */
    private static final double LAST_S = 1;

    /** Slower than this a reading has settled, in K/s. */
    private static final double SETTLED_K_PER_S = 3;

    /**
     * A sheathed thermocouple lags by about so much, in s (common practice, no source). Behind a lag of the first order the gas is hotter
     * than the reading by the lag times the slope (any text on measurement).
     */
    private static final double LAG_S = 3;

    /** How many standard errors a slope must exceed zero by, so that noise is not taken for a rise. */
    private static final double STANDARD_ERRORS = 3;

    private static final int FEWEST = 4;

    private ExhaustStillRising() {}

    /**
     * What is to be said of each exhaust sensor that was still rising: a warning where the gas may have been beyond the limit, else a note.
     *
     * @param pull the rows of the pull, first to last at full load
     * @param limit the highest exhaust temperature of the plan
     * @param place of the pull
     */
    public static List<Finding> check(Samples pull, Optional<Temperature> limit, Place place) {
        List<Finding> findings = new ArrayList<>();
        for (Channel channel : pull.channels()) {
            if (channel.role() == Role.EXHAUST_TEMPERATURE) {
                Slope slope = lastSlope(pull, channel);
                if (slope.perSecond() > SETTLED_K_PER_S
                        && slope.perSecond() > STANDARD_ERRORS * slope.standardError()) {
                    double gas = slope.last() + LAG_S * slope.perSecond();
                    boolean passed = limit.filter(most -> gas > most.kelvins()).isPresent();
                    Detail[] details = {
                        Detail.of("sensor", channel.id()),
                        Detail.of("kelvins_per_second", slope.perSecond()),
                        Detail.of("last", slope.last())
                    };
                    findings.add(
                            passed
                                    ? Finding.warning(FindingCode.EXHAUST_STILL_RISING, place, details)
                                    : Finding.note(FindingCode.EXHAUST_STILL_RISING, place, details));
                }
            }
        }
        return findings;
    }

    private static Slope lastSlope(Samples pull, Channel channel) {
        Channel time = Channel.of(Role.TIME);
        List<Integer> rows = new ArrayList<>();
        for (int row : pull.presentRows(channel)) {
            if (pull.isPresent(time, row)) {
                rows.add(row);
            }
        }
        if (rows.isEmpty()) {
            return Slope.NONE;
        }
        double end = pull.value(time, rows.get(rows.size() - 1));
        rows.removeIf(row -> end - pull.value(time, row) > LAST_S);
        return rows.size() < FEWEST ? Slope.NONE : Slope.of(pull, channel, rows);
    }

    /** Least-squares slope in K/s with its standard error, and the last reading in K. */
    private record Slope(double perSecond, double standardError, double last) {
        static final Slope NONE = new Slope(0, 0, 0);

        static Slope of(Samples pull, Channel channel, List<Integer> rows) {
            Channel time = Channel.of(Role.TIME);
            double meanT =
                    rows.stream().mapToDouble(row -> pull.value(time, row)).sum() / rows.size();
            double meanY =
                    rows.stream().mapToDouble(row -> pull.value(channel, row)).sum() / rows.size();
            double tt = 0;
            double ty = 0;
            double yy = 0;
            for (int row : rows) {
                double t = pull.value(time, row) - meanT;
                double y = pull.value(channel, row) - meanY;
                tt += t * t;
                ty += t * y;
                yy += y * y;
            }
            if (tt <= 0) {
                return NONE;
            }
            double slope = ty / tt;
            double residual = Math.max(0, yy - slope * ty) / (rows.size() - 2);
            return new Slope(slope, Math.sqrt(residual / tt), pull.value(channel, rows.get(rows.size() - 1)));
        }
    }
}
