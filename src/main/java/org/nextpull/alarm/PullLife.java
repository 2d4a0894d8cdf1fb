package org.nextpull.alarm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Place;
import org.nextpull.plan.Limit;

/**
 * Whether the channels that the limits rely on lived in a pull. A limit is watched when every sensor of its kind lives: the one that does
 * not may be on the cylinder that suffers. Knock has a mark of its own, and the speed is what a pull is found by.
 */
public final class PullLife {
    private final List<Limit> wanted;
    private final Map<Limit, List<ChannelLife>> sensors = new EnumMap<>(Limit.class);

    private PullLife(List<Limit> wanted) {
        this.wanted = wanted;
    }

    /**
     * Looks at the channels of a pull.
     *
     * @param pull its rows, all under full load
     * @param isSweep whether the speed changes over it
     * @param wanted the limits to be watched; lambda is looked at whether it is among them or not, since settings are told by it
     */
    public static PullLife of(Samples pull, boolean isSweep, List<Limit> wanted) {
        PullLife life = new PullLife(wanted);
        Set<Limit> looked = new LinkedHashSet<>(wanted);
        looked.add(Limit.LEAN);
        looked.removeAll(Set.of(Limit.KNOCK, Limit.SPEED));
        looked.forEach(limit -> life.sensors.put(limit, sensors(pull, isSweep, limit.role())));
        return life;
    }

    private static List<ChannelLife> sensors(Samples pull, boolean isSweep, Role role) {
        List<ChannelLife> all = pull.channels().stream()
                .filter(channel -> channel.role() == role)
                .map(channel -> ChannelLife.of(pull, channel, isSweep))
                .toList();
        List<ChannelLife> fitted =
                all.stream().filter(sensor -> !sensor.isSilent(pull)).toList();
        return fitted.isEmpty() ? all : fitted;
    }

    /** Each limit that was not watched, with what was wrong with the channel. */
    public Map<Limit, ChannelLife> unwatched() {
        Map<Limit, ChannelLife> unwatched = new EnumMap<>(Limit.class);
        sensors.forEach((limit, channels) -> {
            if (!wanted.contains(limit)) {
                return;
            }
            if (channels.isEmpty()) {
                unwatched.put(limit, new ChannelLife(Channel.of(limit.role()), ChannelLife.Life.NOT_LOGGED, 0));
            }
            channels.stream()
                    .filter(channel -> !channel.isLive())
                    .findFirst()
                    .ifPresent(channel -> unwatched.put(limit, channel));
        });
        return unwatched;
    }

    /** The channels that are not to be believed. */
    public List<Channel> dead() {
        return notLive().stream().map(ChannelLife::channel).toList();
    }

    /** What is to be said of them. */
    public List<Finding> findings(Place place) {
        return notLive().stream()
                .flatMap(channel -> channel.finding(place).stream())
                .toList();
    }

    private List<ChannelLife> notLive() {
        List<ChannelLife> found = new ArrayList<>();
        sensors.values()
                .forEach(channels ->
                        channels.stream().filter(channel -> !channel.isLive()).forEach(found::add));
        return found;
    }
}
