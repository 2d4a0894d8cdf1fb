package org.nextpull.alarm;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.finding.WrittenId;

/**
 * Whether one channel lived in a pull. A sensor that is dead, stuck or wrongly scaled goes on to read something; a limit is watched only
 * by one that can be told from that. How long a reading may stand still, and what an engine can read, are common practice, no source.
 *
 * @param channel the channel
 * @param life how it stands
 * @param figure what shows it: for a blank channel the seconds without a reading, else the reading in the project's unit of its quantity;
 *     0 for a channel that is not logged
 */
public record ChannelLife(Channel channel, Life life, double figure) {
    /** Longest time without a reading, in s, of a channel that is not logged more slowly than that. */
    private static final double BLANK_S = 1;

    /** A channel that is logged slowly may miss so many of its readings. */
    private static final double BLANK_SPACINGS = 3;

    /** A reading is frozen that stays the same for so long, in s, for half of the pull, and over so many readings. */
    private static final double FROZEN_S = 2;

    private static final double FROZEN_SHARE = 0.5;
    private static final int FROZEN_READINGS = 10;

    /**
     * Looks at a channel.
     *
     * @param pull the rows of a pull under full load
     * @param channel one of its channels
     * @param isSweep whether the speed changes over it; only then must every reading that follows the load change too
     */
    static ChannelLife of(Samples pull, Channel channel, boolean isSweep) {
        double[] values = pull.presentValues(channel);
        double rowS = rowSeconds(pull);
        double blankS = longestBlank(pull, channel) * rowS;
        if (values.length == 0) {
            return new ChannelLife(channel, Life.BLANK, blankS);
        }
        Plausible plausible = Plausible.of(channel.role());
        double most = Arrays.stream(values).max().orElseThrow();
        if (most > plausible.sensorEnds()) {
            return new ChannelLife(channel, Life.OUT_OF_RANGE, most);
        }
        double told = plausible.byHighest() ? most : median(values);
        if (!plausible.holds(told)) {
            return new ChannelLife(channel, Life.IMPLAUSIBLE, told);
        }
        double spacingS = rowS * pull.rows() / values.length;
        if (blankS > Math.max(BLANK_S, BLANK_SPACINGS * spacingS)) {
            return new ChannelLife(channel, Life.BLANK, blankS);
        }
        Run same = Run.longest(values);
        double sameS = same.length() * spacingS;
        boolean mustChange = channel.role() == Role.LAMBDA || (isSweep && followsLoad(channel.role()));
        boolean frozen =
                same.length() >= FROZEN_READINGS && sameS >= FROZEN_S && same.length() >= FROZEN_SHARE * values.length;
        return mustChange && frozen
                ? new ChannelLife(channel, Life.FROZEN, same.value())
                : new ChannelLife(channel, Life.LIVE, told);
    }

    boolean isLive() {
        return life == Life.LIVE;
    }

    /** Whether it never said anything: a column that is kept for a sensor which is not fitted. */
    boolean isSilent(Samples pull) {
        return pull.presentValues(channel).length == 0;
    }

    /** What is to be said of it; nothing while it lives. */
    public Optional<Finding> finding(Place place) {
        Detail name = Detail.of("channel", channel.id());
        return switch (life) {
            case LIVE, NOT_LOGGED -> Optional.empty();
            case BLANK -> Optional.of(warning(FindingCode.CHANNEL_BLANK, place, name, Detail.of("seconds", figure)));
            case FROZEN -> Optional.of(warning(FindingCode.CHANNEL_FROZEN, place, name, reading()));
            case OUT_OF_RANGE -> Optional.of(warning(FindingCode.CHANNEL_OUT_OF_RANGE, place, name, reading()));
            case IMPLAUSIBLE -> Optional.of(warning(FindingCode.CHANNEL_IMPLAUSIBLE, place, name, reading()));
        };
    }

    private Finding warning(FindingCode code, Place place, Detail name, Detail figureOfIt) {
        Detail quantity = Detail.of("quantity", channel.role().quantity().name().toLowerCase(Locale.ROOT));
        return Finding.warning(code, place, name, figureOfIt, quantity);
    }

    private Detail reading() {
        return Detail.of("reading", figure);
    }

    /** Temperatures of water and oil, and the fuel pressure behind a regulator, may well stand still for a pull. */
    private static boolean followsLoad(Role role) {
        return switch (role) {
            case EXHAUST_TEMPERATURE, OIL_PRESSURE, MANIFOLD_PRESSURE, INJECTOR_DUTY, TORQUE, POWER -> true;
            default -> false;
        };
    }

    /** Longest run of rows without a reading, the ends of the pull included. */
    private static int longestBlank(Samples pull, Channel channel) {
        int longest = 0;
        int before = -1;
        for (int row : pull.presentRows(channel)) {
            longest = Math.max(longest, row - before - 1);
            before = row;
        }
        return Math.max(longest, pull.rows() - before - 1);
    }

    /** The usual time from row to row, in s; of a stepped pull the rows between the plateaus are not there. */
    private static double rowSeconds(Samples pull) {
        double[] times = pull.presentValues(Channel.of(Role.TIME));
        if (times.length < 2) {
            return 0;
        }
        double[] steps = new double[times.length - 1];
        for (int index = 0; index < steps.length; index++) {
            steps[index] = times[index + 1] - times[index];
        }
        return median(steps);
    }

    /** The upper middle one of an even number: what is told is a reading that was logged, not a mean of two. */
    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    /** Readings in a row that are the same. */
    private record Run(double value, int length) {
        static Run longest(double[] values) {
            Run longest = new Run(values[0], 0);
            int since = 0;
            for (int index = 0; index < values.length; index++) {
                if (values[index] != values[since]) {
                    since = index;
                }
                if (index - since + 1 > longest.length()) {
                    longest = new Run(values[index], index - since + 1);
                }
            }
            return longest;
        }
    }

    /**
     * What a channel can read under full load. All ranges are common practice without a source, but for the end of the exhaust sensor's.
     *
     * @param low least reading of a live channel, in the project's unit
     * @param high greatest
     * @param byHighest whether the highest reading of the pull is held against the range, not the middle one
     * @param sensorEnds greatest value that a sensor can show at all
     */
    private record Plausible(double low, double high, boolean byHighest, double sensorEnds) {
        private static final double ZERO_CELSIUS_K = 273.15;

        /** The reference table of type K thermocouples ends here, in degC: NIST Monograph 175 (from memory). */
        private static final double TYPE_K_ENDS_C = 1372;

        static Plausible of(Role role) {
            return switch (role) {
                // spark-ignition engines at full load run from 0.65 to 1.1; beyond 1.5 petrol does not burn
                case LAMBDA -> middle(0.55, 1.5);
                // even a cold manifold and a slow thermocouple pass 200 degC within a pull
                case EXHAUST_TEMPERATURE ->
                    new Plausible(
                            200 + ZERO_CELSIUS_K, TYPE_K_ENDS_C + ZERO_CELSIUS_K, true, TYPE_K_ENDS_C + ZERO_CELSIUS_K);
                // -40 degC is what an open thermistor reads
                case COOLANT_TEMPERATURE, OIL_TEMPERATURE -> middle(-30 + ZERO_CELSIUS_K, 200 + ZERO_CELSIUS_K);
                case INLET_AIR_TEMPERATURE -> middle(-35 + ZERO_CELSIUS_K, 150 + ZERO_CELSIUS_K);
                // an open throttle leaves the manifold near the air outside, on high ground too
                case MANIFOLD_PRESSURE -> middle(45e3, 600e3);
                case INJECTOR_DUTY -> middle(0.02, 1.5);
                case OIL_PRESSURE, FUEL_PRESSURE -> middle(0, Double.POSITIVE_INFINITY);
                default -> middle(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
            };
        }

        private static Plausible middle(double low, double high) {
            return new Plausible(low, high, false, Double.POSITIVE_INFINITY);
        }

        boolean holds(double reading) {
            return reading >= low && reading <= high;
        }
    }

    /** Whether a channel lives in a pull, and if not, how one sees that. */
    public enum Life implements WrittenId {
        LIVE,
        /** There is no such column. */
        NOT_LOGGED,
        /** It gave no reading for too long, or none at all. */
        BLANK,
        /** It gave the same reading over and over, to the last digit. */
        FROZEN,
        /** It went beyond what a sensor can show: it is at its stop, or broken. */
        OUT_OF_RANGE,
        /** No engine reads that under load: it is dead, swapped with another or wrongly scaled. */
        IMPLAUSIBLE;
    }
}
