package org.nextpull.session;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/**
 * Which of several days each pull was run on. Dates tell days apart by a pause of several hours; without them dates in the names of the
 * files do, and without those a file of several pulls whose clock begins anew, unless an order column counts on over all files: whoever
 * wrote that took them for one day. Files of one pull each are no days of their own.
 *
 * @param days day by number of the pull, from 0, in the order of the pulls
 * @param by what told them apart; empty for a single day
 */
record DaysApart(Map<Integer, Integer> days, Optional<By> by) {
    /** Nobody pulls an engine for this long without a pull; a day that runs past midnight stays one. */
    private static final double PAUSE_S = 6 * 3600;

    private static final Pattern DATE = Pattern.compile("(?<!\\d)((?:19|20)\\d\\d)[-_.]?(\\d\\d)[-_.]?(\\d\\d)(?!\\d)");
    private static final int LEAST_PULLS_OF_A_DAY = 2;

    DaysApart {
        days = Map.copyOf(days);
    }

    /** What tells days apart. */
    enum By {
        DATES_IN_THE_LOG,
        DATES_IN_THE_FILE_NAMES,
        FILES_WHOSE_CLOCK_BEGINS_ANEW
    }

    /**
     * @param pulls all pulls in order
     * @param isDated whether their clocks are dates
     * @param countsOn whether an order column counts over all files
     */
    static DaysApart of(List<DayOrder.Known> pulls, boolean isDated, boolean countsOn) {
        Map<Integer, Integer> days = new HashMap<>();
        if (isDated) {
            byPause(pulls, days);
            return of(days, By.DATES_IN_THE_LOG);
        }
        if (!pulls.isEmpty()
                && pulls.stream().allMatch(pull -> dateIn(pull.source()).isPresent())) {
            Map<String, Integer> dates = new HashMap<>();
            for (DayOrder.Known pull : pulls) {
                String date = dateIn(pull.source()).orElseThrow();
                dates.putIfAbsent(date, dates.size());
                days.put(pull.number(), dates.get(date));
            }
            return of(days, By.DATES_IN_THE_FILE_NAMES);
        }
        if (!countsOn) {
            byFile(pulls, days);
        }
        return of(days, By.FILES_WHOSE_CLOCK_BEGINS_ANEW);
    }

    private static DaysApart of(Map<Integer, Integer> days, By by) {
        boolean isOne = new HashSet<>(days.values()).size() < 2;
        return new DaysApart(isOne ? Map.of() : days, isOne ? Optional.empty() : Optional.of(by));
    }

    int dayOf(int pull) {
        return days.getOrDefault(pull, 0);
    }

    Optional<Finding> finding() {
        return by.map(what -> Finding.note(
                FindingCode.SEVERAL_DAYS,
                Place.nowhere(),
                Detail.of("days", new HashSet<>(days.values()).size()),
                Detail.of("by", what.name().toLowerCase(Locale.ROOT))));
    }

    private static void byPause(List<DayOrder.Known> pulls, Map<Integer, Integer> days) {
        int day = 0;
        double before = Double.POSITIVE_INFINITY;
        for (DayOrder.Known pull : pulls) {
            double at = pull.clock().orElseThrow();
            day += Math.abs(at - before) > PAUSE_S && !days.isEmpty() ? 1 : 0;
            days.put(pull.number(), day);
            before = at;
        }
    }

    private static void byFile(List<DayOrder.Known> pulls, Map<Integer, Integer> days) {
        Map<String, Long> counts = pulls.stream()
                .filter(DayOrder.Known::counts)
                .collect(Collectors.groupingBy(DayOrder.Known::source, Collectors.counting()));
        Set<String> seen = new HashSet<>();
        int day = 0;
        double last = Double.NEGATIVE_INFINITY;
        for (DayOrder.Known pull : pulls) {
            double at = pull.clock().orElse(0);
            boolean isDay = counts.getOrDefault(pull.source(), 0L) >= LEAST_PULLS_OF_A_DAY;
            boolean isNew = seen.add(pull.source());
            day += isNew && isDay && !days.isEmpty() && at <= last ? 1 : 0;
            days.put(pull.number(), day);
            last = at;
        }
    }

    /** The date in the name of a file or its folder. */
    static Optional<LocalDate> dayIn(String source) {
        try {
            return dateIn(source).map(date -> LocalDate.parse(date, DateTimeFormatter.BASIC_ISO_DATE));
        } catch (DateTimeParseException noSuchDay) {
            return Optional.empty();
        }
    }

    private static Optional<String> dateIn(String source) {
        Matcher date = DATE.matcher(source);
        while (date.find()) {
            int month = Integer.parseInt(date.group(2));
            int day = Integer.parseInt(date.group(3));
            if (month >= 1 && month <= 12 && day >= 1 && day <= 31) {
                return Optional.of(date.group(1) + date.group(2) + date.group(3));
            }
        }
        return Optional.empty();
    }
}
