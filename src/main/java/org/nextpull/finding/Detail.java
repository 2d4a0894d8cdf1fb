package org.nextpull.finding;

/** One named value of a finding: a text or a number in the project's unit. */
public sealed interface Detail {
    /** Name of the value within its finding, such as {@code header} or {@code rpm}. */
    String name();

    /** A text value. */
    record Text(String name, String text) implements Detail {}

    /** A finite number in the project's (SI) unit of its quantity. */
    record Amount(String name, double number) implements Detail {}

    static Detail of(String name, String text) {
        return new Text(name, text);
    }

    static Detail of(String name, double number) {
        return new Amount(name, number);
    }
}
