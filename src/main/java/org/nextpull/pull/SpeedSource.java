package org.nextpull.pull;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.plan.DynoFacts;

/**
 * The channel that the speed of a pull is read from.
 *
 * @param channel where it is logged
 * @param axis what the speed is then that of
 * @param rpmPerUnit rpm of that axis for one unit of the channel (rpm, or m/s of a road speed), positive
 */
public record SpeedSource(Channel channel, Axis axis, double rpmPerUnit) {
    /** The shaft whose speed a pull runs through. */
    public enum Axis {
        /** The crankshaft, logged. */
        ENGINE,
        /** The crankshaft, from the roller and the given ratio. */
        ENGINE_FROM_ROLLER,
        /** The roller itself: nothing says how fast the engine turns. */
        ROLLER;

        public boolean isEngine() {
            return this != ROLLER;
        }
    }

    /** The best speed that those samples have: the engine's, or else the roller's, or else the road speed over the roller's radius. */
    public static Optional<SpeedSource> of(Samples samples, DynoFacts.Gearing gearing) {
        Channel engine = Channel.of(Role.ENGINE_SPEED);
        if (samples.has(engine)) {
            return Optional.of(new SpeedSource(engine, Axis.ENGINE, 1));
        }
        return roller(samples, gearing)
                .map(roller -> gearing.engineRevPerRollerRev().isPresent()
                        ? new SpeedSource(
                                roller.channel(),
                                Axis.ENGINE_FROM_ROLLER,
                                roller.rpmPerUnit()
                                        * gearing.engineRevPerRollerRev().getAsDouble())
                        : roller);
    }

    /** The speed of the roller, logged or from the road speed and the roller's radius. */
    public static Optional<SpeedSource> roller(Samples samples, DynoFacts.Gearing gearing) {
        Channel roller = Channel.of(Role.ROLLER_SPEED);
        if (samples.has(roller)) {
            return Optional.of(new SpeedSource(roller, Axis.ROLLER, 1));
        }
        Channel road = Channel.of(Role.ROAD_SPEED);
        if (samples.has(road) && gearing.rollerRadiusM().isPresent()) {
            double rpmPerMetreASecond = 30 / (Math.PI * gearing.rollerRadiusM().getAsDouble());
            return Optional.of(new SpeedSource(road, Axis.ROLLER, rpmPerMetreASecond));
        }
        return Optional.empty();
    }

    /** Speed of a row along the axis, rpm; empty where the channel has no value in it. */
    public OptionalDouble rpm(Samples samples, int row) {
        return samples.isPresent(channel, row)
                ? OptionalDouble.of(samples.value(channel, row) * rpmPerUnit)
                : OptionalDouble.empty();
    }
}
