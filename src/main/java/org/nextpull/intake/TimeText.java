package org.nextpull.intake;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Times written as clock or date: {@code hh:mm:ss.sss}, {@code mm:ss.s}, ISO 8601 date-times, and {@code dd.mm.yyyy hh:mm:ss}. A
 * date with slashes may be either way round, so only its time of day is used.
 */
public final class TimeText {
    private static final Pattern CLOCK =
            Pattern.compile("(?:(\\d{1,3}):)?(\\d{1,2}):(\\d{1,2}(?:[.,:]\\d{1,9})?)\\s*([aApP][mM])?");
    private static final Pattern ISO =
            Pattern.compile("(\\d{4})[-/](\\d{1,2})[-/](\\d{1,2})(?:[T _]+|$)(.*?)\\s*(Z|[+-]\\d{2}:?\\d{2})?");
    private static final Pattern POINTED = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})[T ,]+(.*)");
    private static final Pattern SLASHED = Pattern.compile("\\d{1,2}/\\d{1,2}/\\d{2,4}[T ,]+(.*)");
    private static final double HALF_DAY_S = 43_200;

    private TimeText() {}

    /** Seconds of a time text: since midnight for a clock, since 1970 for a date; empty for anything else. */
    public static OptionalDouble seconds(String cell) {
        String text = cell.strip();
        OptionalDouble plain = plainClock(text, 0);
        if (plain.isEmpty() && hasPlainDate(text)) {
            plain = dated(
                    date(text.substring(0, 4), text.substring(5, 7), text.substring(8, 10)), plainClock(text, 11));
        }
        return plain.isPresent() ? plain : byPattern(text);
    }

    /** {@code hh:mm:ss} from a place to the end, with or without a fraction, as most loggers write it in each row; empty for any other form. */
    private static OptionalDouble plainClock(String text, int from) {
        int first = text.indexOf(':', from);
        int second = first + 3;
        int point = Math.min(text.length(), second + 3);
        boolean isClock = first - from <= 3
                && isNumber(text, from, first)
                && isNumber(text, first + 1, second)
                && second < text.length()
                && text.charAt(second) == ':'
                && isNumber(text, second + 1, point)
                && (point == text.length() || (text.charAt(point) == '.' && isNumber(text, point + 1, text.length())));
        return isClock
                ? day(
                        Integer.parseInt(text, from, first, 10),
                        Integer.parseInt(text, first + 1, second, 10),
                        Double.parseDouble(text.substring(second + 1)))
                : OptionalDouble.empty();
    }

    private static OptionalDouble day(int hours, int minutes, double seconds) {
        return seconds >= 61 || minutes >= 60
                ? OptionalDouble.empty()
                : OptionalDouble.of(hours * 3600.0 + minutes * 60 + seconds);
    }

    private static boolean hasPlainDate(String text) {
        return text.length() > 11
                && isNumber(text, 0, 4)
                && text.charAt(4) == '-'
                && isNumber(text, 5, 7)
                && text.charAt(7) == '-'
                && isNumber(text, 8, 10)
                && (text.charAt(10) == 'T' || text.charAt(10) == ' ');
    }

    /** One to nine digits, and nothing else. */
    private static boolean isNumber(String text, int from, int end) {
        boolean isNumber = end > from && end - from <= 9 && end <= text.length();
        for (int at = from; isNumber && at < end; at++) {
            isNumber = text.charAt(at) >= '0' && text.charAt(at) <= '9';
        }
        return isNumber;
    }

    private static OptionalDouble byPattern(String text) {
        Matcher iso = ISO.matcher(text);
        if (iso.matches()) {
            return dated(date(iso.group(1), iso.group(2), iso.group(3)), iso.group(4), zoneSeconds(iso.group(5)));
        }
        Matcher pointed = POINTED.matcher(text);
        if (pointed.matches()) {
            return dated(date(pointed.group(3), pointed.group(2), pointed.group(1)), pointed.group(4), 0);
        }
        Matcher slashed = SLASHED.matcher(text);
        return clock(slashed.matches() ? slashed.group(1) : text);
    }

    private static OptionalDouble dated(OptionalDouble day, OptionalDouble clock) {
        return day.isPresent() && clock.isPresent()
                ? OptionalDouble.of(day.getAsDouble() + clock.getAsDouble())
                : OptionalDouble.empty();
    }

    private static OptionalDouble dated(OptionalDouble day, String clock, double zone) {
        OptionalDouble time = clock.isBlank() ? OptionalDouble.of(0) : clock(clock.strip());
        return day.isPresent() && time.isPresent()
                ? OptionalDouble.of(day.getAsDouble() + time.getAsDouble() - zone)
                : OptionalDouble.empty();
    }

    private static OptionalDouble date(String year, String month, String day) {
        try {
            return OptionalDouble.of(
                    (double) LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day))
                            .atStartOfDay(ZoneOffset.UTC)
                            .toEpochSecond());
        } catch (DateTimeException e) {
            return OptionalDouble.empty();
        }
    }

    private static double zoneSeconds(@Nullable String zone) {
        if (zone == null || zone.equals("Z")) {
            return 0;
        }
        String digits = zone.substring(1).replace(":", "");
        int minutes = Integer.parseInt(digits.substring(0, 2)) * 60 + Integer.parseInt(digits.substring(2));
        return (zone.charAt(0) == '-' ? -60.0 : 60.0) * minutes;
    }

    private static OptionalDouble clock(String text) {
        Matcher clock = CLOCK.matcher(text);
        if (!clock.matches()) {
            return OptionalDouble.empty();
        }
        double hours = clock.group(1) == null ? 0 : Integer.parseInt(clock.group(1));
        int minutes = Integer.parseInt(clock.group(2));
        double seconds = Double.parseDouble(clock.group(3).replace(',', '.').replace(':', '.'));
        if (seconds >= 61 || (clock.group(1) != null && minutes >= 60)) {
            return OptionalDouble.empty();
        }
        double day = hours * 3600 + minutes * 60 + seconds;
        String half = clock.group(4);
        if (half == null) {
            return OptionalDouble.of(day);
        }
        boolean afternoon = half.toLowerCase(Locale.ROOT).equals("pm");
        double twelve = hours == 12 ? day - HALF_DAY_S : day;
        return hours > 12 || twelve < 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(afternoon ? twelve + HALF_DAY_S : twelve);
    }
}
