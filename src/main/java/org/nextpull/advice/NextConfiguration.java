package org.nextpull.advice;

import java.util.Optional;
import org.nextpull.response.Setting;

/**
 * What is fitted for the next pull, before it is run.
 *
 * @param label configuration; empty where it stays that of the last pull
 * @param fuel name of the fuel; empty where it stays that of the last pull
 */
public record NextConfiguration(Optional<String> label, Optional<String> fuel) {
    /** Nothing was announced. */
    public static NextConfiguration same() {
        return new NextConfiguration(Optional.empty(), Optional.empty());
    }

    /** The configuration of the next pull as a setting without values, which pulls of it are {@link Setting#isSameConfiguration} with. */
    Setting after(Optional<Setting> last, Optional<String> plannedFuel) {
        return new Setting(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                fuel.or(() -> last.isPresent() ? last.get().fuel() : plannedFuel),
                label.or(() -> last.flatMap(Setting::label)),
                Optional.empty());
    }
}
