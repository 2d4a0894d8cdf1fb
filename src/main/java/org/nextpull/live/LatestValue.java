package org.nextpull.live;

import org.nextpull.channel.Channel;

/**
 * The latest value of a channel.
 *
 * @param channel the channel
 * @param value in the project's unit of its role
 * @param ageS seconds since it arrived
 */
public record LatestValue(Channel channel, double value, double ageS) {}
