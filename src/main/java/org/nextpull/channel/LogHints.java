package org.nextpull.channel;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.unit.Unit;

/**
 * What the user says about how to read a log, where its own headers do not say it.
 *
 * @param headers header of the column for a role
 * @param units unit of the column for a role
 * @param afrScale stoichiometric air-fuel ratio that the gauge is scaled to, kg/kg, positive; without it an air-fuel ratio gives no
 *     lambda
 * @param sampleHz rows a second, positive, where the log has no time
 */
public record LogHints(
        Map<Role, String> headers, Map<Role, Unit> units, OptionalDouble afrScale, OptionalDouble sampleHz) {
    public LogHints {
        headers = Map.copyOf(headers);
        units = Map.copyOf(units);
    }

    public static LogHints none() {
        return new LogHints(Map.of(), Map.of(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    public Optional<String> header(Role role) {
        return Optional.ofNullable(headers.get(role));
    }
}
