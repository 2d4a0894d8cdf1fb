package org.nextpull.advice;

import java.util.Optional;
import org.nextpull.channel.EngineSetting;

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

    /** The configuration of the next pull as a setting without values, which pulls of it are {@link EngineSetting#isSameConfiguration} with. */
    EngineSetting after(Optional<EngineSetting> last, Optional<String> plannedFuel) {
        return EngineSetting.none()
                .fitted(
                        label.or(() -> last.flatMap(EngineSetting::label)),
                        fuel.or(() -> last.isPresent() ? last.get().fuel() : plannedFuel));
    }
}
