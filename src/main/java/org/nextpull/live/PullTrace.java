package org.nextpull.live;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;

/** Keeps speed, torque and knock of the last minutes as they came, so that a pull in progress can be shown from its beginning. */
final class PullTrace {
    private static final double KEPT_S = 180;
    private static final double APART_S = 0.08;
    private static final Channel SPEED = Channel.of(Role.ENGINE_SPEED);
    private static final Channel TORQUE = Channel.of(Role.TORQUE);
    private static final Channel KNOCK = Channel.of(Role.KNOCK_EVENTS);

    private record Moment(double atS, LiveState.PullSoFar.At at) {}

    private record Knock(double atS, long events) {}

    private final Deque<Moment> moments = new ArrayDeque<>();
    private final Deque<Knock> knocks = new ArrayDeque<>();
    private OptionalDouble rpm = OptionalDouble.empty();
    private boolean countsKnock;

    /** Takes rows that arrived at that moment of the session, in s. */
    void take(Samples samples, double atS) {
        countsKnock |= samples.has(KNOCK);
        for (int row = 0; row < samples.rows(); row++) {
            OptionalDouble speed = samples.find(SPEED, row);
            rpm = speed.isPresent() ? speed : rpm;
            OptionalDouble torque = samples.find(TORQUE, row);
            if (torque.isPresent()
                    && rpm.isPresent()
                    && (moments.isEmpty() || atS - moments.getLast().atS() > APART_S)) {
                moments.addLast(new Moment(atS, new LiveState.PullSoFar.At(rpm.getAsDouble(), torque.getAsDouble())));
            }
            double events = samples.find(KNOCK, row).orElse(0);
            if (events > 0) {
                knocks.addLast(new Knock(atS, Math.round(events)));
            }
        }
        while (!moments.isEmpty() && moments.getFirst().atS() < atS - KEPT_S) {
            moments.removeFirst();
        }
        while (!knocks.isEmpty() && knocks.getFirst().atS() < atS - KEPT_S) {
            knocks.removeFirst();
        }
    }

    /** What came since that moment of the session, in s. */
    LiveState.PullSoFar since(double fromS) {
        List<LiveState.PullSoFar.At> course = new ArrayList<>();
        moments.stream().filter(moment -> moment.atS() >= fromS).forEach(moment -> course.add(moment.at()));
        long events = knocks.stream()
                .filter(knock -> knock.atS() >= fromS)
                .mapToLong(Knock::events)
                .sum();
        return new LiveState.PullSoFar(course, countsKnock ? OptionalLong.of(events) : OptionalLong.empty());
    }
}
