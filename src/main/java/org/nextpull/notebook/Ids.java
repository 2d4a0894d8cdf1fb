package org.nextpull.notebook;

import java.util.Arrays;
import org.nextpull.channel.Role;
import org.nextpull.finding.WrittenId;

/**
 * Names of enum constants as the file holds them: small letters and hyphens, so that renaming a constant is a migration that a test
 * notices.
 */
final class Ids {
    private Ids() {}

    static String of(Enum<?> constant) {
        return WrittenId.of(constant.name());
    }

    /** The constant of that name; throws {@link IllegalArgumentException} for one that this version does not know. */
    static <E extends Enum<E>> E constant(Class<E> type, String id) {
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> of(constant).equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + id + "\" is no " + type.getSimpleName()));
    }

    static Role role(String id) {
        return constant(Role.class, id);
    }
}
