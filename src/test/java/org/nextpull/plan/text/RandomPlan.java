package org.nextpull.plan.text;

import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Plans that read without an error, drawn from all keys, with names of hostile characters. */
final class RandomPlan {
    private static final List<String> NAMES =
            List.of("two \"litre\"", "a\\b", "x # y", "\u00e9\u4e16\ud83d\ude80", "[engine]", "line\nbreak", "'");

    private final Random random;
    private final StringBuilder text = new StringBuilder();

    private RandomPlan(Random random) {
        this.random = random;
    }

    static String text(Random random) {
        RandomPlan plan = new RandomPlan(random);
        plan.write();
        return plan.text.toString();
    }

    /** All that a person can type, typed again into an empty draft. */
    static PlanDraft typedAgain(PlanDraft draft) {
        PlanDraft again = PlanDraft.empty();
        for (String table : draft.tables()) {
            again = again.withTable(table);
            for (String key : draft.keys(table)) {
                again = again.with(
                        table,
                        key,
                        kind(table + "." + key),
                        draft.typed(table, key).orElseThrow());
            }
        }
        return again;
    }

    private static KeyKind kind(String key) {
        return switch (key) {
            case "engine.name" -> KeyKind.TEXT;
            case "engine.induction", "fuel.blend", "pull.kind", "timing.sets", "goal.response" -> KeyKind.WORD;
            case "goal.learn_from_notebook" -> KeyKind.FLAG;
            case "start.coolant_c", "start.oil_c" -> KeyKind.WINDOW;
            default -> key.endsWith("columns") ? KeyKind.TEXTS : key.endsWith("device") ? KeyKind.TEXT : KeyKind.NUMBER;
        };
    }

    private void write() {
        header("engine");
        maybe("name", PlanValueText.text(one(NAMES)));
        maybe("displacement_l", decimal(1, 8));
        maybe("cylinders", whole(1, 16));
        maybe("compression_ratio", decimal(6, 16));
        maybe("induction", one(List.of("'natural'", "\"boosted\"")));
        header("fuel");
        maybe("blend", one(List.of("\"e10\"", "\"ethanol\"")));
        header("air");
        maybe("baro_kpa", decimal(80, 105));
        maybe("air_c", decimal(-20, 45));
        maybe("humidity_percent", decimal(0, 100));
        header("band");
        line("from_rpm", whole(1500, 3000));
        line("to_rpm", whole(4000, 7000));
        header("pull");
        maybe("kind", one(List.of("\"auto\"", "\"steps\"", "\"hold\"")));
        maybe("settle_s", decimal(0, 5));
        header("timing");
        maybe("sets", one(List.of("\"flat\"", "\"offset\"")));
        line("start_deg", decimal(12, 20));
        line("least_deg", decimal(0, 12));
        line("most_deg", decimal(20, 40));
        header("limits");
        maybe("exhaust_c", decimal(700, 1000));
        maybe("oil_pressure_kpa", decimal(100, 400));
        maybe("boost_kpa", decimal(20, 200));
        maybe("injector_duty_percent", decimal(50, 100));
        header("start");
        maybe("coolant_c", "[" + decimal(60, 80) + ", " + decimal(80, 99) + "]");
        maybe("oil_c", "[ " + decimal(60, 80) + " , " + decimal(80, 120) + " ]");
        header("goal");
        maybe("response", one(List.of("\"torque\"", "'power'")));
        maybe("learn_from_notebook", one(List.of("true", "false")));
        text.append("[[wire]]\n");
        line("device", PlanValueText.text("first" + one(NAMES)));
        text.append("[[wire]]\n");
        line("device", PlanValueText.text("second" + one(NAMES)));
        maybe("columns", "[\"rpm\", \"torque [N.m]\", \"a,b\"]");
    }

    private void header(String table) {
        text.append('[').append(table).append("]\n");
    }

    private void line(String key, String value) {
        text.append(key).append(" = ").append(value).append(random.nextInt(4) == 0 ? " # said\n" : "\n");
    }

    private void maybe(String key, String value) {
        if (random.nextBoolean()) {
            line(key, value);
        }
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private String decimal(double low, double high) {
        return String.format(Locale.ROOT, "%." + random.nextInt(6) + "f", low + (high - low) * random.nextDouble());
    }

    private String whole(int low, int high) {
        return String.valueOf(low + random.nextInt(high - low));
    }
}
