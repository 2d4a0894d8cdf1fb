package org.nextpull.report;

import java.util.List;
import java.util.Optional;
import org.nextpull.plan.Band;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.SparkTakenOut;
import org.nextpull.session.SessionResult;

/** What is said of the knock of a pull: where it was, and who tells of it. */
public final class KnockText {
    private static final int MOST_SAID = 3;

    private KnockText() {}

    /** For a table: {@code heard 3201-3276}, the speeds in rpm. */
    public static String brief(KnockHeard knock) {
        String mark = knock.mark().id().replace('-', ' ');
        return mark + knock.speeds().map(speeds -> " " + span(speeds)).orElse("");
    }

    static String span(KnockHeard.Speeds speeds) {
        String low = Shown.fixed(speeds.lowRpm(), 0);
        String high = Shown.fixed(speeds.highRpm(), 0);
        return low.equals(high) ? low : low + "-" + high;
    }

    /** {@code Knock in pull 8 at 3201-3276 rpm, below the band (2 counts).}; empty where none was heard. */
    public static Optional<String> sentence(MeasuredPull pull, Optional<Band> band) {
        KnockHeard knock = pull.knock();
        if (!knock.isHeard()) {
            return Optional.empty();
        }
        String where = (pull.isPull() ? "pull " : "stretch ")
                + pull.number()
                + knock.speeds()
                        .map(speeds -> " at " + span(speeds) + " rpm" + beside(speeds, band))
                        .orElse("");
        if (!knock.at().isEmpty()) {
            long events = Math.round(knock.events().orElse(0));
            return Optional.of("Knock in " + where + " (" + Shown.count(events, "count") + ").");
        }
        double most =
                knock.takenOut().stream().mapToDouble(SparkTakenOut::deg).max().orElse(0);
        return Optional.of(
                most > 0
                        ? "Knock in " + where + ": the ignition took out " + Shown.fixed(most, 1) + " deg."
                        : "Knock was heard in " + where + ".");
    }

    private static String beside(KnockHeard.Speeds speeds, Optional<Band> band) {
        return band.map(range -> speeds.highRpm() < range.fromRpm()
                        ? ", below the band"
                        : speeds.lowRpm() > range.toRpm()
                                ? ", above the band"
                                : range.contains(speeds.lowRpm()) && range.contains(speeds.highRpm())
                                        ? ""
                                        : ", in the band and beside it")
                .orElse("");
    }

    /** The knock that leads the text of a stop: that of the last pulls in which it was heard and which the operator did not lift. */
    public static List<String> leading(SessionResult result) {
        return last(result).stream()
                .flatMap(pull -> sentence(pull, result.plan().band()).stream())
                .toList();
    }

    /** The same for large print: {@code Knock in pulls 6, 7.}; empty where none leads. */
    static Optional<String> pulls(SessionResult result) {
        List<String> numbers =
                last(result).stream().map(pull -> String.valueOf(pull.number())).toList();
        return numbers.isEmpty()
                ? Optional.empty()
                : Optional.of("Knock in pull" + (numbers.size() > 1 ? "s " : " ") + String.join(", ", numbers) + ".");
    }

    private static List<MeasuredPull> last(SessionResult result) {
        List<MeasuredPull> all = result.pulls().stream()
                .filter(pull ->
                        pull.knock().isHeard() && !result.amendments().lifted().contains(pull.number()))
                .toList();
        return all.subList(Math.max(0, all.size() - MOST_SAID), all.size());
    }
}
