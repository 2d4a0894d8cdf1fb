package org.nextpull.response;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.nextpull.air.Correction;
import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.ChannelLife;
import org.nextpull.alarm.PullLife;
import org.nextpull.channel.Channel;
import org.nextpull.channel.EngineSetting;
import org.nextpull.curve.CorrectedCurve;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Place;
import org.nextpull.finding.WrittenId;
import org.nextpull.plan.Limit;
import org.nextpull.unit.Lambda;

/**
 * One pull: what was set, what came out, and what was met on the way. A pull without {@link #figures} gives no response but keeps its
 * knock and its limits met.
 *
 * @param number number over the whole day, from 1
 * @param origin where it came from
 * @param order place in the day that drift is counted in, in pulls, from 0
 * @param setting what it was run with: the measured value where the log has one, averaged over the band, else what was asked
 * @param asked spark and mixture that were asked for: an ignition may leave the one, and settings are grouped by the other
 * @param standing whether it counts
 * @param correction the correction that its figures carry
 * @param figures corrected figures; present whenever the pull spanned the band, even when it was struck
 * @param knock what is known of knock
 * @param leanestLambda leanest band average of any lambda sensor
 * @param conditions conditions of the pull
 * @param limitsMet limits met, worst of each
 * @param unwatched limits of the plan that no live channel watched; knock has its mark instead
 * @param findings what is wrong or worth saying
 */
public record MeasuredPull(
        int number,
        Origin origin,
        double order,
        EngineSetting setting,
        EngineSetting asked,
        Status standing,
        Optional<Correction> correction,
        Optional<Figures> figures,
        KnockHeard knock,
        Optional<Lambda> leanestLambda,
        Conditions conditions,
        List<LimitMet> limitsMet,
        List<Unwatched> unwatched,
        List<Finding> findings) {
    public MeasuredPull {
        limitsMet = List.copyOf(limitsMet);
        unwatched = List.copyOf(unwatched);
        findings = List.copyOf(findings);
    }

    /** Whether the pull gives a response. */
    public boolean isUsed() {
        return standing.isUsed() && figures.isPresent();
    }

    /** How far apart the least and the most advance of its speeds lie, degrees; 0 where none is known. */
    public double advanceSpreadDeg() {
        return figures.map(Figures::advanceSpreadDeg).orElse(0.0);
    }

    /** Whether it is a plateau at a held speed. */
    public boolean isHeld() {
        return figures.filter(Figures::isHeld).isPresent();
    }

    /** Whether it is a pull, though perhaps one that does not count, and not only a stretch that is kept for its knock. */
    public boolean isPull() {
        return standing != Status.NO_PULL;
    }

    /** Clean: no knock heard and no limit met. A pull in which knock was not measured may be clean. */
    public boolean isClean() {
        return !knock.isHeard() && limitsMet.isEmpty();
    }

    /** Whether a live channel watched a limit of the plan; for knock, whether a channel or the operator listened. */
    public boolean isWatched(Limit limit) {
        return limit == Limit.KNOCK
                ? knock.isMeasured()
                : unwatched.stream().noneMatch(missing -> missing.limit() == limit);
    }

    public MeasuredPull withStanding(Status newStanding) {
        return with(setting, newStanding, figures, knock, findings);
    }

    public MeasuredPull withKnock(KnockHeard newKnock) {
        return with(setting, standing, figures, newKnock, findings);
    }

    /** The same pull with what the ignition took out of its spark, in place of what was known of that before. */
    public MeasuredPull withTakenOut(List<SparkTakenOut> takenOut) {
        return knock.takenOut().equals(takenOut) ? this : withKnock(knock.withTakenOut(takenOut));
    }

    /** The same pull with other rows of its figures. */
    public MeasuredPull withRows(List<Figures.AtSpeed> rows) {
        return with(setting, standing, figures.map(known -> known.withRows(rows)), knock, findings);
    }

    /** The same pull at another place in the order, counted in pulls from 0 over all days, and on a day of its own number. */
    public MeasuredPull at(double newOrder, int day) {
        return new MeasuredPull(
                number,
                origin.onDay(day),
                newOrder,
                setting,
                asked,
                standing,
                correction,
                figures,
                knock,
                leanestLambda,
                conditions,
                limitsMet,
                unwatched,
                findings);
    }

    /** The same pull under another label. */
    public MeasuredPull withLabel(String label) {
        return with(setting.fitted(Optional.of(label), setting.fuel()), standing, figures, knock, findings);
    }

    /** The same pull on a fuel of that name. */
    public MeasuredPull withFuel(String fuel) {
        return with(setting.fitted(setting.label(), Optional.of(fuel)), standing, figures, knock, findings);
    }

    /** The same pull with one more finding. */
    public MeasuredPull withFinding(Finding finding) {
        List<Finding> more = new ArrayList<>(findings);
        more.add(finding);
        return with(setting, standing, figures, knock, more);
    }

    private MeasuredPull with(
            EngineSetting newSetting,
            Status newStanding,
            Optional<Figures> newFigures,
            KnockHeard newKnock,
            List<Finding> newFindings) {
        return new MeasuredPull(
                number,
                origin,
                order,
                newSetting,
                asked,
                newStanding,
                correction,
                newFigures,
                newKnock,
                leanestLambda,
                conditions,
                limitsMet,
                unwatched,
                newFindings);
    }

    /**
     * Where a pull came from.
     *
     * @param source name of the file, table or capture
     * @param firstLine its first line there, from 1
     * @param candidate its number among the candidates of that source, from 1, refused ones included
     * @param day which of the days at hand it was run on, from 0 in the order of the pulls; pulls of one day share a level and a drift
     */
    public record Origin(String source, long firstLine, int candidate, int day) {
        /** Of the only day, or the first. */
        public Origin(String source, long firstLine, int candidate) {
            this(source, firstLine, candidate, 0);
        }

        /** The pull as whoever ran it knows it: by its log or session and its number there, not by that of a day which was joined to compare. */
        public Place place() {
            return Place.inFile(source).withPull(candidate);
        }

        Origin onDay(int newDay) {
            return new Origin(source, firstLine, candidate, newDay);
        }
    }

    /**
     * A limit of the plan that no live channel watched in a pull.
     *
     * @param limit which
     * @param channel the channel that should have
     * @param life what was wrong with it
     */
    public record Unwatched(Limit limit, Channel channel, ChannelLife.Life life) {
        static List<Unwatched> in(PullLife pull) {
            List<Unwatched> unwatched = new ArrayList<>();
            pull.unwatched()
                    .forEach(
                            (limit, channel) -> unwatched.add(new Unwatched(limit, channel.channel(), channel.life())));
            return unwatched;
        }
    }

    /**
     * A limit that a pull met.
     *
     * @param limit which
     * @param worst worst value, beyond the limit, in the project's unit of the limit's quantity ({@code Quantity.si})
     * @param allowed the plan's limit, in the same unit
     */
    public record LimitMet(Limit limit, double worst, double allowed) {
        /** The worst of the alarms of each limit other than knock, which has a mark of its own. */
        static List<LimitMet> worst(List<Alarm> alarms) {
            Map<Limit, Alarm> worst = new EnumMap<>(Limit.class);
            for (Alarm alarm : alarms) {
                if (alarm.limit() != Limit.KNOCK) {
                    worst.merge(alarm.limit(), alarm, (one, other) -> one.isWorse(other.worst()) ? other : one);
                }
            }
            List<LimitMet> met = new ArrayList<>();
            worst.forEach((limit, alarm) -> met.add(new LimitMet(limit, alarm.worst(), alarm.allowed())));
            return met;
        }
    }

    /** Whether a pull counts, and if not, why. */
    public enum Status implements WrittenId {
        USED,
        /** It ended before it spanned the band. */
        CUT_SHORT,
        /** The finder refused it for another reason, which its findings name. */
        REFUSED,
        /** The operator struck it, or the table says that it does not count. */
        STRUCK,
        /** It is no pull at all: a stretch under load that is kept for the knock in it. */
        NO_PULL,
        /** The plan throws away the first pulls, which warm the engine. */
        THROWN_AWAY;

        public boolean isUsed() {
            return this == USED;
        }
    }

    /**
     * A pull with its corrected curve and the alarms that sounded in it.
     *
     * @param pull the pull
     * @param kept gives its curve; empty for a row of a table and for a pull that gave none
     * @param alarms alarms of the pull, by their first row
     */
    public record Curve(MeasuredPull pull, Optional<Supplier<CorrectedCurve>> kept, List<Alarm> alarms) {
        public Curve {
            alarms = List.copyOf(alarms);
        }

        /** A curve in memory. */
        record AtHand(CorrectedCurve get) implements Supplier<CorrectedCurve> {}

        public boolean hasCurve() {
            return kept.isPresent();
        }

        /** Its curve; of a pull whose rows were put away it is made anew from them. */
        public Optional<CorrectedCurve> curve() {
            return kept.map(Supplier::get);
        }

        public Curve withPull(MeasuredPull newPull) {
            return new Curve(newPull, kept, alarms);
        }
    }
}
