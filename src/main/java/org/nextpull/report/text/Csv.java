package org.nextpull.report.text;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.Chosen;
import org.nextpull.channel.Channel;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SparkMap;
import org.nextpull.curve.CorrectedCurve;
import org.nextpull.curve.CurvePoint;
import org.nextpull.pull.Candidate;
import org.nextpull.report.PullColumn;
import org.nextpull.report.Shown;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import org.nextpull.session.SourcePulls;

/**
 * Tables as CSV by RFC 4180, section 2: cells with a comma, a quote or a line break stand in quotes, quotes are doubled, and each line
 * ends with CR LF. Text that a spreadsheet would run as a formula gets an apostrophe before it; numbers stay as they are.
 */
public final class Csv {
    private static final List<PullColumn> OF_PULLS = List.of(
            PullColumn.NUMBER,
            PullColumn.ADVANCE,
            PullColumn.OFFSET,
            PullColumn.LAMBDA,
            PullColumn.MEAN_TORQUE,
            PullColumn.MEAN_POWER,
            PullColumn.LABEL,
            PullColumn.FUEL,
            PullColumn.KNOCK,
            PullColumn.KNOCK_FROM,
            PullColumn.KNOCK_TO,
            PullColumn.USED,
            PullColumn.STANDING,
            PullColumn.CORRECTION,
            PullColumn.SOURCE,
            PullColumn.LINE,
            PullColumn.NOTE);
    private static final List<String> OF_CURVES =
            List.of("pull", "advance_deg", "lambda", "label", "rpm", "torque_nm", "power_kw");
    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]*\\.?[0-9]+([eE][-+]?[0-9]+)?");
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private Csv() {}

    /**
     * The pulls of a day as a table of results, one row a pull, corrected band averages in N.m and kW: what {@code advise} and {@code compare}
     * read back. Pulls without a figure are left out, since a row of such a table has a response, but for those whose knock must not be lost.
     */
    public static String pulls(SessionResult result) {
        StringBuilder text = new StringBuilder(
                line(OF_PULLS.stream().map(PullColumn::fileHeading).toList()));
        result.pulls().stream()
                .filter(pull -> pull.figures().isPresent()
                        || (pull.knock().isHeard() && pull.setting().advance().isPresent()))
                .forEach(pull -> text.append(line(
                        OF_PULLS.stream().map(column -> column.fileCell(pull)).toList())));
        return text.toString();
    }

    /** The corrected curves of a day over speed, one row a point: all of them, or that of one pull. */
    public static String curves(SessionResult result, Optional<Integer> pull) {
        StringBuilder text = new StringBuilder(line(OF_CURVES));
        for (MeasuredPull.Curve one : result.measured()) {
            if (pull.isEmpty() || pull.get() == one.pull().number()) {
                List<CurvePoint> points =
                        one.curve().map(CorrectedCurve::points).orElse(List.of());
                points.forEach(point -> text.append(line(cells(one, point))));
            }
        }
        return text.toString();
    }

    private static List<String> cells(MeasuredPull.Curve one, CurvePoint point) {
        return List.of(
                String.valueOf(one.pull().number()),
                number(one.pull().setting().advance().map(advance -> advance.deg()), 2),
                number(one.pull().setting().lambda().map(lambda -> lambda.value()), 4),
                one.pull().setting().label().orElse(""),
                number(Optional.of(point.rpm()), 1),
                number(Optional.of(point.torque().newtonMetres()), 3),
                number(Optional.of(point.power().kilowatts()), 3));
    }

    private static String number(Optional<Double> value, int places) {
        return value.map(found -> String.format(Locale.ROOT, "%." + places + "f", found))
                .orElse("");
    }

    /**
     * The map to set, or after a stop the one to leave, as {@code rpm,advance_deg}: a line a cell; empty where the setting of an advice is
     * no map.
     */
    public static Optional<String> map(Advice advice) {
        Optional<EngineSetting> setting =
                advice.action() == Action.STOP ? advice.leave().map(Chosen::setting) : advice.setting();
        return setting.flatMap(EngineSetting::map).map(Csv::text);
    }

    private static String text(SparkMap map) {
        StringBuilder text = new StringBuilder(line(List.of("rpm", "advance_deg")));
        for (SparkMap.Cell cell : map.cells()) {
            text.append(line(
                    List.of(Shown.plain(cell.rpm()), Shown.plain(cell.advance().deg()))));
        }
        return text.toString();
    }

    /**
     * The kept samples of a day as a log: a column a channel with its unit, a row a sample, every digit. All pulls one after the other, or
     * one of them, by its number over the day.
     */
    public static String samples(List<SourcePulls> sources, Optional<Integer> pull) {
        List<Candidate> all =
                sources.stream().flatMap(source -> source.candidates().stream()).toList();
        Set<Channel> channels = new LinkedHashSet<>();
        all.forEach(candidate -> channels.addAll(candidate.samples().channels()));
        List<String> header = new ArrayList<>(List.of("pull", "source", "line"));
        channels.forEach(channel ->
                header.add(channel.id() + " [" + channel.role().quantity().si() + "]"));
        header.addAll(List.of("label", "fuel"));
        StringBuilder text = new StringBuilder(line(header));
        for (int index = 0; index < all.size(); index++) {
            if (pull.isEmpty() || pull.get() == index + 1) {
                rows(all.get(index), index + 1, channels, text);
            }
        }
        return text.toString();
    }

    private static void rows(Candidate candidate, int number, Set<Channel> channels, StringBuilder text) {
        Samples samples = candidate.samples();
        for (int row = 0; row < samples.rows(); row++) {
            List<String> cells =
                    new ArrayList<>(List.of(String.valueOf(number), candidate.source(), "" + samples.line(row)));
            for (Channel channel : channels) {
                OptionalDouble value = samples.find(channel, row);
                cells.add(value.isPresent() ? Double.toString(value.getAsDouble()) : "");
            }
            cells.add(samples.label(row).orElse(""));
            cells.add(samples.fuel(row).orElse(""));
            text.append(line(cells));
        }
    }

    /** The line of these cells. */
    static String line(List<String> cells) {
        return cells.stream().map(Csv::cell).collect(Collectors.joining(",", "", "\r\n"));
    }

    private static String cell(String text) {
        boolean isFormula = !text.isEmpty()
                && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0
                && !NUMBER.matcher(text).matches();
        String plain = isFormula ? "'" + text : text;
        boolean needsQuotes = plain.chars().anyMatch(letter -> letter == ',' || letter == '"' || letter < ' ');
        return needsQuotes ? '"' + plain.replace("\"", "\"\"") + '"' : plain;
    }
}
