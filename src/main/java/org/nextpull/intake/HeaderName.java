package org.nextpull.intake;

import java.util.List;

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
}
