package org.nextpull.intake;

import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.channel.Role;
import org.nextpull.unit.Unit;

/**
 * A column while it is being understood.
 *
 * @param index its place in the row, from 0
 * @param header as written
 * @param role what it means
 * @param unit its unit, once known
 * @param number number of the sensor in its header
 * @param standing what the words around its name say
 * @param gauge whether it is a pressure above that of the air
 * @param hinted whether the user named it
 */
record ColumnDraft(
        int index,
        String header,
        Role role,
        Optional<Unit> unit,
        OptionalInt number,
        NameStanding standing,
        boolean gauge,
        boolean hinted) {

    ColumnDraft withUnit(Unit newUnit) {
        return new ColumnDraft(index, header, role, Optional.of(newUnit), number, standing, gauge, hinted);
    }

    ColumnDraft as(Role newRole, Unit newUnit) {
        return new ColumnDraft(index, header, newRole, Optional.of(newUnit), number, standing, gauge, hinted);
    }
}
