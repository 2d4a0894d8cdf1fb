package org.nextpull.report.csv;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.nextpull.channel.KnockMark;
import org.nextpull.response.Figures;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/**
 * The pulls of a day as a table of results, one row a pull, corrected band averages in N.m and kW: what {@code advise} and {@code compare}
 * read back. Pulls without a figure are left out, since a row of such a table has a response, but for those whose knock must not be lost.
 */
public final class PullsCsv {
    private static final List<String> HEADER = List.of(
            "order",
            "advance_deg",
            "offset_deg",
            "lambda",
            "torque_nm",
            "power_kw",
            "label",
            "fuel",
            "knock",
            "knock_from_rpm",
            "knock_to_rpm",
            "used",
            "standing",
            "correction",
            "source",
            "first_line",
            "note");

    private PullsCsv() {}

    /** The table. */
    public static String of(SessionResult result) {
        StringBuilder text = new StringBuilder(CsvLine.of(HEADER));
        result.pulls().stream()
                .filter(pull -> pull.figures().isPresent()
                        || (pull.knock().isHeard() && pull.setting().advance().isPresent()))
                .forEach(pull -> text.append(CsvLine.of(cells(pull))));
        return text.toString();
    }

    private static List<String> cells(MeasuredPull pull) {
        Optional<Figures> figures = pull.figures();
        Optional<KnockHeard.Speeds> heard = pull.knock().speeds();
        return List.of(
                String.valueOf(pull.number()),
                number(pull.setting().advance().map(Advance::deg), 2),
                number(pull.setting().offset().map(Advance::deg), 2),
                number(pull.setting().lambda().map(lambda -> lambda.value()), 4),
                number(figures.flatMap(Figures::meanTorque).map(Torque::newtonMetres), 3),
                number(figures.flatMap(Figures::meanPower).map(Power::kilowatts), 3),
                pull.setting().label().orElse(""),
                pull.setting().fuel().orElse(""),
                knock(pull.knock().mark()),
                number(heard.map(KnockHeard.Speeds::lowRpm), 0),
                number(heard.map(KnockHeard.Speeds::highRpm), 0),
                pull.isUsed() ? "yes" : "no",
                pull.standing().id(),
                number(pull.correction().map(correction -> correction.factor()), 5),
                pull.origin().source(),
                String.valueOf(pull.origin().firstLine()),
                pull.setting().note().orElse(""));
    }

    private static String knock(KnockMark mark) {
        return switch (mark) {
            case HEARD -> "yes";
            case NONE -> "no";
            case NOT_MEASURED -> "";
        };
    }

    private static String number(Optional<Double> value, int places) {
        return value.map(found -> String.format(Locale.ROOT, "%." + places + "f", found))
                .orElse("");
    }
}
