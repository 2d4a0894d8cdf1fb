package org.nextpull.live;

import java.util.List;
import java.util.OptionalLong;

/**
 * The pull that is in progress, as far as it has come; as measured, before any correction.
 *
 * @param course speed and torque as they came, some ten a second; empty where no torque is logged
 * @param knockEvents knock events counted since the load came on; empty where no channel counts them
 */
public record PullSoFar(List<At> course, OptionalLong knockEvents) {
    public PullSoFar {
        course = List.copyOf(course);
    }

    static PullSoFar none() {
        return new PullSoFar(List.of(), OptionalLong.empty());
    }

    /**
     * One moment of it.
     *
     * @param rpm engine speed in rpm
     * @param torqueNm logged torque in N.m
     */
    public record At(double rpm, double torqueNm) {}
}
