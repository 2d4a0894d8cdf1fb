package org.nextpull.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.channel.Role;
import org.nextpull.unit.Unit;

/**
 * A header, read.
 *
 * @param header as written
 * @param meanings what it may mean; several where its unit would be needed to tell; none where it is not known
 * @param standing what the words around the name say
 */
record HeaderName(String header, List<Meaning> meanings, NameStanding standing) {
    boolean isKnown() {
        return !meanings.isEmpty() && standing != NameStanding.NOT_MEASURED;
    }

    /**
     * One thing that a header may mean.
     *
     * @param role the channel
     * @param unit unit that the header or the units row gives
     * @param strangeUnit a unit that is given but does not fit the channel
     * @param number number of the sensor, where the header has one
     * @param gauge whether it is a pressure above that of the air
     */
    public record Meaning(
            Role role, Optional<Unit> unit, Optional<String> strangeUnit, OptionalInt number, boolean gauge) {}
}
