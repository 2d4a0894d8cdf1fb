package org.nextpull.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.GatheredFindings;

/**
 * Findings, a sentence each: what can hurt first, then errors, warnings and notes. Equal ones are said once, with the first place, and
 * with the pulls that it also holds for or how many there are.
 */
public final class FindingLines {
    private static final int MOST_IN_FULL = 5;
    private static final int MOST_RUNS = 12;

    private final FindingText sentences;

    public FindingLines(FindingText sentences) {
        this.sentences = sentences;
    }

    /**
     * What is said of findings that are alike.
     *
     * @param severity how much they matter
     * @param sentence the sentence of the first with its place, and the others
     */
    public record Line(Finding.Severity severity, String sentence) {
        /** With its severity in front, where it is more than worth knowing. */
        public String marked() {
            return severity == Finding.Severity.NOTE ? sentence : withSeverity();
        }

        String withSeverity() {
            return severity.id() + ": " + sentence;
        }
    }

    /** The findings gathered, what can hurt first; equally grave ones stay in their order. */
    public static List<Finding> sorted(List<Finding> findings) {
        return GatheredFindings.of(findings).stream()
                .sorted(Comparator.comparing(
                                (Finding finding) -> !finding.code().isHazard())
                        .thenComparing(Finding::severity, Comparator.reverseOrder()))
                .toList();
    }

    /** The lines, each with its severity in front. */
    public List<String> lines(List<Finding> findings) {
        return said(findings).stream().map(Line::withSeverity).toList();
    }

    /** What is said, each sentence with its severity. */
    public List<Line> said(List<Finding> findings) {
        Map<FindingCode, List<Finding>> byCode = new EnumMap<>(FindingCode.class);
        List<FindingCode> order = new ArrayList<>();
        for (Finding finding : sorted(findings)) {
            byCode.computeIfAbsent(finding.code(), code -> {
                        order.add(code);
                        return new ArrayList<>();
                    })
                    .add(finding);
        }
        return order.stream()
                .flatMap(code -> alike(byCode.getOrDefault(code, List.of())).stream())
                .map(this::line)
                .toList();
    }

    /** Pulls that share a finding are listed behind it; what is no pull's is said in full, unless there is too much of it. */
    private static List<List<Finding>> alike(List<Finding> same) {
        boolean ofPulls =
                same.stream().anyMatch(finding -> finding.place().pull().isPresent());
        return ofPulls || same.size() > MOST_IN_FULL
                ? List.of(same)
                : same.stream().map(List::of).toList();
    }

    /** The lines as one text, each ended. */
    public String text(List<Finding> findings) {
        return lines(findings).stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private Line line(List<Finding> same) {
        Finding first = same.get(0);
        return new Line(first.severity(), sentences.withPlace(first) + also(same));
    }

    private static String also(List<Finding> same) {
        int[] pulls = same.stream()
                .skip(1)
                .flatMapToInt(finding -> finding.place().pull().stream())
                .distinct()
                .sorted()
                .toArray();
        if (pulls.length > 0) {
            return " (likewise pull" + (pulls.length == 1 ? " " : "s ") + runs(pulls) + ")";
        }
        long others = same.stream().mapToLong(Finding::count).sum() - 1;
        return others == 0 ? "" : " (and " + others + " more like it)";
    }

    /** Rising numbers, those that follow each other as a range. */
    private static String runs(int[] numbers) {
        List<String> runs = new ArrayList<>();
        for (int from = 0, to; from < numbers.length; from = to + 1) {
            to = from;
            while (to + 1 < numbers.length && numbers[to + 1] == numbers[to] + 1) {
                to++;
            }
            runs.add(to == from ? String.valueOf(numbers[from]) : numbers[from] + "-" + numbers[to]);
        }
        return runs.size() > MOST_RUNS
                ? String.join(", ", runs.subList(0, MOST_RUNS)) + " and more"
                : String.join(", ", runs);
    }
}
