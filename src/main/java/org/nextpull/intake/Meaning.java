package org.nextpull.intake;

import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.channel.Role;
import org.nextpull.unit.Unit;

/**
 * One thing that a header may mean.
 *
 * @param role the channel
 * @param unit unit that the header or the units row gives
 * @param strangeUnit a unit that is given but does not fit the channel
 * @param number number of the sensor, where the header has one
 * @param gauge whether it is a pressure above that of the air
 */
record Meaning(Role role, Optional<Unit> unit, Optional<String> strangeUnit, OptionalInt number, boolean gauge) {}
