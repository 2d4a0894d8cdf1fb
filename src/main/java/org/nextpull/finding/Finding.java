package org.nextpull.finding;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something wrong or worth saying, without the words for it.
 *
 * @param code what it is
 * @param severity how much it matters
 * @param details the values that its sentence needs
 * @param place where it belongs; the first place where it stands for several
 * @param count how many it stands for, at least 1
 */
public record Finding(FindingCode code, Severity severity, List<Detail> details, Place place, long count) {
    public Finding {
        details = List.copyOf(details);
        if (count < 1) {
            throw new IllegalArgumentException("a finding stands for at least one: " + count);
        }
    }

    /** A single one. */
    public Finding(FindingCode code, Severity severity, List<Detail> details, Place place) {
        this(code, severity, details, place, 1);
    }

    public static Finding note(FindingCode code, Place place, Detail... details) {
        return new Finding(code, Severity.NOTE, List.of(details), place);
    }

    public static Finding warning(FindingCode code, Place place, Detail... details) {
        return new Finding(code, Severity.WARNING, List.of(details), place);
    }

    public static Finding error(FindingCode code, Place place, Detail... details) {
        return new Finding(code, Severity.ERROR, List.of(details), place);
    }

    public Finding at(Place newPlace) {
        return new Finding(code, severity, details, newPlace, count);
    }

    /** The same, but no reason to stop. */
    public Finding asWarning() {
        return new Finding(code, Severity.WARNING, details, place, count);
    }

    /** The same for so many. */
    Finding withCount(long newCount) {
        return new Finding(code, severity, details, place, newCount);
    }

    /** Whether it says the same of the same place, for however many. */
    boolean isSameAs(Finding other) {
        return withCount(1).equals(other.withCount(1));
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** The text value of that name. */
    public Optional<String> text(String name) {
        return details.stream()
                .filter(detail -> detail instanceof Detail.Text && detail.name().equals(name))
                .map(detail -> ((Detail.Text) detail).text())
                .findFirst();
    }

    /** The number of that name. */
    public OptionalDouble number(String name) {
        return details.stream()
                .filter(detail ->
                        detail instanceof Detail.Amount && detail.name().equals(name))
                .mapToDouble(detail -> ((Detail.Amount) detail).number())
                .findFirst();
    }

    /** How much a finding matters, least first. */
    public enum Severity implements WrittenId {
        /** Worth knowing; nothing to do. */
        NOTE,
        /** The answer stands, but the operator should look. */
        WARNING,
        /** Something could not be used. */
        ERROR
    }
}
