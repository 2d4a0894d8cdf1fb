package org.nextpull.session;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.pull.Candidate;
import org.nextpull.response.MeasuredPull;

/**
 * The place of each pull in the day, from 0, which drift is counted in, and which day that was where there are several. An order column counts before a clock, since somebody wrote it
 * on purpose; but order numbers that repeat, as when each file counts from 1, do not tell which pull was first.
 *
 * @param from what the places come from
 * @param places place by number of the pull
 * @param days which day each pull belongs to
 * @param findings order numbers that could not be used, and that there are several days
 */
record DayOrder(SessionResult.OrderFrom from, Map<Integer, Double> places, DaysApart days, List<Finding> findings) {
    /** A time in a log beyond this is a date in seconds since 1970 (here from March 1973); no log runs three years. */
    private static final double DATED_S = 1e8;

    private static final double DAY_S = 86_400;

    DayOrder {
        places = Map.copyOf(places);
        findings = List.copyOf(findings);
    }

    /** One pull, by what could tell its place. */
    record Known(String source, int number, boolean counts, OptionalDouble written, OptionalDouble clock) {
        double place() {
            return written.orElse(number) - 1;
        }
    }

    static DayOrder of(SessionInput input, List<SourcePulls> sources, AskedSettings settings) {
        List<Known> pulls = pulls(input, sources, settings);
        boolean isNumbered = pulls.stream().anyMatch(pull -> pull.written().isPresent());
        List<Finding> findings = new ArrayList<>(isNumbered ? repeated(pulls) : List.of());
        boolean isDated =
                !pulls.isEmpty() && pulls.stream().allMatch(pull -> pull.clock().orElse(0) > DATED_S);
        boolean countsOn = isNumbered && findings.isEmpty();
        SessionResult.OrderFrom from = countsOn
                ? SessionResult.OrderFrom.ORDER_COLUMN
                : isDated ? SessionResult.OrderFrom.CLOCK : SessionResult.OrderFrom.COMMAND_LINE;
        List<Known> sorted = sorted(pulls, from);
        Map<Integer, Double> places = new HashMap<>();
        for (Known pull : sorted) {
            places.put(
                    pull.number(),
                    switch (from) {
                        case ORDER_COLUMN -> pull.place();
                        case CLOCK -> (double) places.size();
                        case COMMAND_LINE -> pull.number() - 1.0;
                    });
        }
        DaysApart days = DaysApart.of(sorted, isDated, countsOn);
        days.finding().filter(said -> Session.sweeps(input.plan())).ifPresent(findings::add);
        return new DayOrder(from, places, days, findings);
    }

    private static List<Known> sorted(List<Known> pulls, SessionResult.OrderFrom from) {
        ToDoubleFunction<Known> key = switch (from) {
            case ORDER_COLUMN -> Known::place;
            case CLOCK -> pull -> pull.clock().orElseThrow();
            case COMMAND_LINE -> Known::number;
        };
        return pulls.stream().sorted(Comparator.comparingDouble(key)).toList();
    }

    /** A pull at its place and on its day. */
    MeasuredPull place(MeasuredPull pull) {
        return pull.at(places.getOrDefault(pull.number(), pull.number() - 1.0), days.dayOf(pull.number()));
    }

    private static List<Finding> repeated(List<Known> pulls) {
        Set<Double> seen = new HashSet<>();
        return pulls.stream()
                .filter(Known::counts)
                .filter(pull -> !seen.add(pull.place()))
                .limit(1)
                .map(pull -> Finding.warning(
                        FindingCode.ORDER_REPEATED, Place.nowhere(), Detail.of("order", pull.place() + 1)))
                .toList();
    }

    private static List<Known> pulls(SessionInput input, List<SourcePulls> sources, AskedSettings settings) {
        List<Known> pulls = new ArrayList<>();
        for (SourcePulls source : sources) {
            for (Candidate candidate : source.candidates()) {
                int number = pulls.size() + 1;
                Samples samples = candidate.samples();
                OptionalDouble asked = input.amendments()
                        .correctionOf(number)
                        .or(() -> settings.of(source.name(), candidate.number()))
                        .map(AskedSetting::order)
                        .filter(order -> order.isPresent())
                        .map(order -> OptionalDouble.of(order.getAsInt()))
                        .orElse(logged(samples));
                pulls.add(new Known(source.name(), number, candidate.isUsable(), asked, start(samples)));
            }
        }
        for (ResultTable table : input.tables()) {
            for (ResultTable.Row row : table.rows()) {
                OptionalDouble order =
                        row.order().isPresent() ? OptionalDouble.of(row.order().getAsInt()) : OptionalDouble.empty();
                pulls.add(new Known(
                        table.description().name(), pulls.size() + 1, row.used(), order, OptionalDouble.empty()));
            }
        }
        return pulls;
    }

    /** A log's own order column, when it holds one number throughout the pull. */
    private static OptionalDouble logged(Samples samples) {
        double[] orders = samples.presentValues(Channel.of(Role.ORDER));
        for (double order : orders) {
            if (order != orders[0]) {
                return OptionalDouble.empty();
            }
        }
        return orders.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(orders[0]);
    }

    /** The day on which a pull was run, by the clock of its log or else by the date in the name of the log. */
    static Optional<LocalDate> day(String source, Candidate pull) {
        OptionalDouble at = start(pull.samples());
        return at.orElse(0) > DATED_S
                ? Optional.of(LocalDate.ofEpochDay((long) Math.floor(at.getAsDouble() / DAY_S)))
                : DaysApart.dayIn(source);
    }

    private static OptionalDouble start(Samples samples) {
        double[] times = samples.presentValues(Channel.of(Role.TIME));
        return times.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(times[0]);
    }
}
