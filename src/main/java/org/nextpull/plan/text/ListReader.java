package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.nextpull.finding.Detail;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.text.PlanKey.Range;
import org.tomlj.TomlArray;

/** Reads the list that a key of a table holds; what is wrong is said at its element. */
record ListReader(TableReader table, String key) {
    /** No ignition has more cells, and the time of a decision grows with them. */
    private static final int MOST_SPEEDS = 100;
    /** Speeds that are nearer than this are one, rpm. */
    private static final double LEAST_APART_RPM = 1;

    /** A list of two numbers, the lower first; empty when absent or wrong. */
    Optional<List<Double>> window(Range range) {
        Optional<Object> value = table.value(key);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (!(value.get() instanceof TomlArray array) || array.size() != 2) {
            table.wrongType(table.spot(key), "a list of two numbers, [low, high]");
            return Optional.empty();
        }
        List<Double> pair = numbers(array, range);
        if (pair.size() == 2 && pair.get(0) > pair.get(1)) {
            table.problems()
                    .error(
                            FindingCode.PLAN_WINDOW_REVERSED,
                            table.spot(key),
                            Detail.of("low", PlanValueText.number(pair.get(0))),
                            Detail.of("high", PlanValueText.number(pair.get(1))));
            return Optional.empty();
        }
        return pair.size() == 2 ? Optional.of(pair) : Optional.empty();
    }

    /** A list of speeds in rpm, rising; empty when absent or wrong. */
    Optional<List<Double>> speeds() {
        Optional<TomlArray> array = list("a list of speeds, [3000, 3500]");
        Optional<List<Double>> speeds = array.map(list -> numbers(list, Range.RPM))
                .filter(found -> found.size() == array.get().size());
        return speeds.filter(found -> isRising(array.get(), found));
    }

    /** A list of pairs of a speed in rpm and a number, rising in speed; empty when absent or wrong. */
    Optional<List<List<Double>>> cells(Range range) {
        String wanted = "a list of cells, [[3000, 18.0], [6500, 28.0]]";
        Optional<TomlArray> array = list(wanted);
        if (array.isEmpty()) {
            return Optional.empty();
        }
        List<List<Double>> cells = new ArrayList<>();
        for (int index = 0; index < array.get().size(); index++) {
            PlanProblems.Spot spot = table.element(key, array.get(), index);
            if (!(array.get().get(index) instanceof TomlArray cell) || cell.size() != 2) {
                table.wrongType(spot, "a cell, [rpm, advance]");
                continue;
            }
            OptionalDouble rpm = new PlanProblems.NumberCheck(table.problems(), Range.RPM).number(spot, cell.get(0));
            OptionalDouble value = new PlanProblems.NumberCheck(table.problems(), range).number(spot, cell.get(1));
            if (rpm.isPresent() && value.isPresent()) {
                cells.add(List.of(rpm.getAsDouble(), value.getAsDouble()));
            }
        }
        boolean isWhole = cells.size() == array.get().size();
        return isWhole
                        && isRising(
                                array.get(),
                                cells.stream().map(cell -> cell.get(0)).toList())
                ? Optional.of(cells)
                : Optional.empty();
    }

    private Optional<TomlArray> list(String wanted) {
        Optional<Object> value = table.value(key);
        if (value.isPresent() && !(value.get() instanceof TomlArray list && !list.isEmpty())) {
            table.wrongType(table.spot(key), wanted);
            return Optional.empty();
        }
        if (value.isPresent() && ((TomlArray) value.get()).size() > MOST_SPEEDS) {
            table.wrongType(table.spot(key), wanted + ", of " + MOST_SPEEDS + " at most");
            return Optional.empty();
        }
        return value.map(TomlArray.class::cast);
    }

    private boolean isRising(TomlArray array, List<Double> rpm) {
        for (int index = 1; index < rpm.size(); index++) {
            if (rpm.get(index) < rpm.get(index - 1) + LEAST_APART_RPM) {
                table.problems()
                        .error(
                                FindingCode.PLAN_NOT_RISING,
                                table.element(key, array, index),
                                Detail.of("rpm", PlanValueText.number(rpm.get(index))),
                                Detail.of("before", PlanValueText.number(rpm.get(index - 1))));
                return false;
            }
        }
        return true;
    }

    /** Those elements of a list that are good numbers. */
    private List<Double> numbers(TomlArray array, Range range) {
        PlanProblems.NumberCheck check = new PlanProblems.NumberCheck(table.problems(), range);
        return IntStream.range(0, array.size())
                .mapToObj(index -> check.number(table.element(key, array, index), array.get(index)))
                .flatMap(number -> number.stream().boxed())
                .toList();
    }

    List<String> texts() {
        Optional<Object> value = table.value(key);
        if (value.isEmpty()) {
            return List.of();
        }
        if (!(value.get() instanceof TomlArray array)) {
            table.wrongType(table.spot(key), "a list of texts");
            return List.of();
        }
        List<String> texts = new ArrayList<>();
        for (int index = 0; index < array.size(); index++) {
            table.text(table.element(key, array, index), array.get(index)).ifPresent(texts::add);
        }
        return texts;
    }
}
