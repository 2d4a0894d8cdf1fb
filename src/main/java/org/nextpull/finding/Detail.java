package org.nextpull.finding;

import java.util.List;

/** One named value of a finding: a text or a number in the project's unit. */
public sealed interface Detail {
    int MOST_NAMES = 20;

    /** Name of the value within its finding, such as {@code header} or {@code rpm}. */
    String name();

    /** A text value. */
    record Text(String name, String text) implements Detail {}

    /** A finite number in the project's (SI) unit of its quantity. */
    record Amount(String name, double number) implements Detail {}

    static Detail of(String name, String text) {
        return new Text(name, text);
    }

    /** The first names of a list, and how many more there are: a file may have any number. */
    static Detail few(String name, List<String> names) {
        String first = String.join(", ", names.subList(0, Math.min(MOST_NAMES, names.size())));
        return of(name, names.size() > MOST_NAMES ? first + " and " + (names.size() - MOST_NAMES) + " more" : first);
    }

    static Detail of(String name, double number) {
        return new Amount(name, number);
    }
}
