package org.nextpull.report.text;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanDraft;
import org.nextpull.plan.text.PlanKey;
import org.nextpull.plan.text.PlanKeys;
import org.nextpull.plan.text.PlanTable;
import org.nextpull.pull.Candidate;
import org.nextpull.session.SourcePulls;

/**
 * A first plan for logs: what they tell is filled in, what only the operator can know stands beside it as a comment. It allows
 * nothing that the logs do not show: no more advance than was run, and no mixture sweep.
 */
public final class FirstPlanText {
    private static final Channel ADVANCE = Channel.of(Role.ADVANCE);
    private static final Channel LAMBDA = Channel.of(Role.LAMBDA);
    /** Speeds of a band are multiples of this; pulls seldom begin and end on one. */
    private static final double BAND_STEP_RPM = 250;
    /** So near to one counts as on it. */
    private static final double NEAR_RPM = 25;

    private static final double RESOLUTION_DEG = 0.5;
    /** From this spread within a pull on the ignition runs a map, deg. */
    private static final double FLAT_DEG = 1;
    /** Room to retard below the least advance that was run: common practice, no source. */
    private static final double ROOM_DEG = 4;

    private static final String DYNO = "dyno";
    private static final Map<String, List<String>> KEYS = Map.of(
            "engine",
            List.of("name", "displacement_l", "cylinders", "compression_ratio", "induction"),
            "fuel",
            List.of("blend"),
            DYNO,
            List.of("kind", "torque_at"),
            "air",
            List.of("standard"),
            "band",
            List.of("from_rpm", "to_rpm"),
            "pull",
            List.of("kind"),
            "timing",
            List.of("sets", "start_deg", "least_deg", "most_deg"),
            "mixture",
            List.of("start_lambda", "richest_lambda", "leanest_lambda"));
    private static final Set<String> WHOLE_TABLES = Set.of("limits", "start");

    private final List<SourcePulls> sources;
    private final FirstPlanLog log;
    private final List<Candidate> pulls;

    /** Takes logs that were read with what is told of them and no other plan; at least one of them has a pull that can be used. */
    public FirstPlanText(List<SourcePulls> sources, SweepPlan.LogFacts told) {
        this.sources = List.copyOf(sources);
        this.log = new FirstPlanLog(this.sources, told);
        this.pulls = sources.stream()
                .flatMap(source -> source.candidates().stream())
                .filter(Candidate::isUsable)
                .toList();
    }

    public String text() {
        String names = sources.stream()
                .map(SourcePulls::name)
                .map(FirstPlanText::file)
                .distinct()
                .limit(3)
                .collect(Collectors.joining(", "));
        StringBuilder text = new StringBuilder("# A first plan, read off " + pulls.size() + " pulls in " + names
                + (sources.size() > 3 ? " and other logs" : "") + ".\n"
                + "# A line that begins with \"# key =\" is for you to fill in; without it nothing is assumed. Limits are the\n"
                + "# engine maker's, never this program's. \"plan --check\" says what is watched.\n");
        for (PlanTable<?> table : PlanKeys.tables()) {
            List<PlanKey<?>> keys = table.keys().stream()
                    .filter(key -> WHOLE_TABLES.contains(table.name())
                            || (table.name().equals(DYNO) && !log.isLogged(Role.ENGINE_SPEED))
                            || KEYS.getOrDefault(table.name(), List.of()).contains(key.name()))
                    .toList();
            if (!keys.isEmpty()) {
                text.append(table(table, keys));
            }
        }
        return text + log.text();
    }

    private String table(PlanTable<?> table, List<PlanKey<?>> keys) {
        boolean open = table.presence() == PlanTable.Presence.SWITCHED
                && keys.stream().allMatch(key -> value(table.name(), key).isEmpty());
        boolean off = table.name().equals("mixture") || open;
        StringBuilder text = new StringBuilder("\n" + (off ? "# " : "") + "[" + table.name() + "]"
                + pad(table.name().length() + 2 + (off ? 2 : 0)) + "# " + plain(table.purpose()) + "\n");
        for (PlanKey<?> key : keys) {
            Optional<String> value = value(table.name(), key);
            String line = (off || value.isEmpty() ? "# " : "") + key.name() + " = " + value.orElse("");
            List<String> words = PlanDraft.empty().words(table.name(), key);
            String sign = words.isEmpty() || table.name().equals("fuel")
                    ? key.unitSign()
                    : words.stream().map(word -> "\"" + word + "\"").collect(Collectors.joining(", "));
            text.append(line.stripTrailing() + pad(line.stripTrailing().length()) + "# "
                    + (sign.isBlank() ? "" : sign + "; ") + plain(key.help()) + seen(table.name(), key) + "\n");
        }
        return text.toString();
    }

    /** What the logs say of a key, as a plan writes it. */
    private Optional<String> value(String table, PlanKey<?> key) {
        return switch (table + "." + key.name()) {
            case "band.from_rpm" -> Optional.of(number(fromRpm()));
            case "band.to_rpm" -> Optional.of(number(toRpm()));
            case "pull.kind" -> Optional.of("\"auto\"");
            case "air.standard" -> Optional.of("\"none\"");
            case "timing.sets" ->
                advances().isEmpty() ? Optional.empty() : Optional.of(isMap() ? "\"map\"" : "\"flat\"");
            case "timing.start_deg" ->
                isMap()
                        ? Optional.of("0")
                        : advances().stream().findFirst().map(first -> number(down(first[first.length / 2])));
            case "timing.least_deg" ->
                ends(each -> each[0]).min().stream()
                        .mapToObj(least -> number(down(least - ROOM_DEG)))
                        .findFirst();
            case "timing.most_deg" ->
                ends(each -> each[each.length - 1]).max().stream()
                        .mapToObj(most -> number(up(most)))
                        .findFirst();
            case "mixture.start_lambda" -> lambda(0);
            case "mixture.richest_lambda" -> lambda(-0.06);
            case "mixture.leanest_lambda" -> lambda(0);
            case "limits.knock_events" -> log.isLogged(Role.KNOCK_EVENTS) ? Optional.of("1") : Optional.empty();
            case "limits.knock_margin_deg" -> Optional.of("2");
            default -> Optional.empty();
        };
    }

    /** What the logs show of a key that the operator has to fill in. */
    private String seen(String table, PlanKey<?> key) {
        if (table.equals("timing")
                && key.name().equals("most_deg")
                && !advances().isEmpty()) {
            return " The most advanced that was run: raise it to what the engine may have.";
        }
        if (table.equals("band") && !log.isLogged(Role.ENGINE_SPEED)) {
            return " These are speeds of the roller: give engine_rev_per_roller_rev and turn them into the engine's.";
        }
        if (key.name().equals("knock_level") && log.isLogged(Role.KNOCK_LEVEL)) {
            return " In these pulls at most "
                    + shown(values(Channel.of(Role.KNOCK_LEVEL)).max().orElse(0)) + ".";
        }
        Optional<Limit> limit = table.equals("limits") ? PlanKeys.limitOf(key) : Optional.empty();
        if (limit.isEmpty()) {
            return "";
        }
        Channel channel = Channel.of(limit.get().role());
        if (!log.isLogged(channel.role())) {
            return limit.get() == Limit.KNOCK && log.isLogged(Role.KNOCK_LEVEL)
                    ? " Only a level is logged: without knock_level it cannot be watched."
                    : limit.get() == Limit.LEAN && log.isLogged(Role.AIR_FUEL_RATIO)
                            ? " Logged as an air-fuel ratio: without afr_scale under [log] it cannot be watched."
                            : " Not logged here, so it cannot be watched.";
        }
        DoubleStream values = values(channel);
        OptionalDouble extreme = limit.get().isLeast() ? values.min() : values.max();
        return limit.get() == Limit.BOOST || extreme.isEmpty()
                ? ""
                : " In these pulls at " + (limit.get().isLeast() ? "least " : "most ")
                        + shown(key.unit()
                                .map(unit -> unit.fromSi(extreme.getAsDouble()))
                                .orElse(extreme.getAsDouble()))
                        + ".";
    }

    private DoubleStream values(Channel channel) {
        return pulls.stream().flatMapToDouble(pull -> Arrays.stream(presentValues(pull, channel)));
    }

    private static double[] presentValues(Candidate pull, Channel channel) {
        return pull.samples().has(channel) ? pull.samples().presentValues(channel) : new double[0];
    }

    /** Sorted advances of each pull that has any, deg. */
    private List<double[]> advances() {
        return pulls.stream()
                .map(pull -> presentValues(pull, ADVANCE))
                .filter(values -> values.length > 0)
                .map(values -> Arrays.stream(values).sorted().toArray())
                .toList();
    }

    private DoubleStream ends(ToDoubleFunction<double[]> end) {
        return advances().stream().mapToDouble(end);
    }

    private boolean isMap() {
        return advances().stream()
                .anyMatch(each -> each[each.length - 1 - each.length / 20] - each[each.length / 20] > FLAT_DEG);
    }

    private Optional<String> lambda(double away) {
        double[] values = pulls.stream()
                .flatMapToDouble(pull -> Arrays.stream(presentValues(pull, LAMBDA)))
                .sorted()
                .toArray();
        return values.length == 0
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT, "%.3f", Math.floor((values[values.length / 2] + away) * 200) / 200));
    }

    private double fromRpm() {
        return Math.ceil((pulls.stream()
                                        .mapToDouble(pull -> Math.min(pull.fromRpm(), pull.toRpm()))
                                        .max()
                                        .orElse(0)
                                - NEAR_RPM)
                        / BAND_STEP_RPM)
                * BAND_STEP_RPM;
    }

    private double toRpm() {
        double most = Math.floor((pulls.stream()
                                        .mapToDouble(pull -> Math.max(pull.fromRpm(), pull.toRpm()))
                                        .min()
                                        .orElse(0)
                                + NEAR_RPM)
                        / BAND_STEP_RPM)
                * BAND_STEP_RPM;
        return Math.max(most, fromRpm() + BAND_STEP_RPM);
    }

    private static String plain(String help) {
        return help.replace("`", "");
    }

    static String pad(int length) {
        return " ".repeat(Math.max(2, 28 - length));
    }

    private static String file(String name) {
        return name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1)
                .replaceAll("\\p{Cntrl}", "?");
    }

    private static double down(double deg) {
        return Math.floor(deg / RESOLUTION_DEG) * RESOLUTION_DEG;
    }

    private static double up(double deg) {
        return Math.ceil(deg / RESOLUTION_DEG - 0.2) * RESOLUTION_DEG;
    }

    private static String number(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.1f", value);
    }

    private static String shown(double value) {
        boolean small = Math.abs(value) < 10 && value != Math.rint(value);
        return String.format(Locale.ROOT, small ? "%.2f" : "%.0f", value);
    }
}
