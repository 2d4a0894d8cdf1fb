package org.nextpull.advice;

import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * A setting to run, or to leave in the engine. Rounded to the plan's resolution toward retard and rich. Of advance, offset and map one
 * at most is there; none of them leaves the spark as it stands in the engine.
 *
 * @param advance flat spark advance
 * @param offset degrees to add everywhere to the present map
 * @param map advance over speed, at the breakpoints of the ignition
 * @param lambda mixture; empty when the plan has none
 */
public record Proposal(
        Optional<Advance> advance, Optional<Advance> offset, Optional<SparkMap> map, Optional<Lambda> lambda) {
    /** A setting of one number of spark. */
    public Proposal(Optional<Advance> advance, Optional<Advance> offset, Optional<Lambda> lambda) {
        this(advance, offset, Optional.empty(), lambda);
    }

    /** Its spark over speed; empty where it says none. */
    Optional<SparkMap> spark() {
        return map.or(() -> advance.or(() -> offset).map(SparkMap::flat));
    }

    /** The setting as an engine runs it; a spark that stands counts from there. */
    EngineSetting run() {
        return EngineSetting.of(spark().orElse(SparkMap.flat(Advance.ofDeg(0))), lambda);
    }

    static Proposal ofMap(SparkMap map, Optional<Lambda> lambda) {
        return new Proposal(Optional.empty(), Optional.empty(), Optional.of(map), lambda);
    }
}
