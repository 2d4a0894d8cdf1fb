package org.nextpull.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;

/** Findings, a sentence each; one that many pulls share is said once, with the pulls that it also holds for. */
public final class FindingLines {
    private static final int MOST_IN_FULL = 5;

    private final FindingText sentences;

    public FindingLines(FindingText sentences) {
        this.sentences = sentences;
    }

    /** The lines, in the order in which their codes first occur. */
    public List<String> lines(List<Finding> findings) {
        Map<FindingCode, List<Finding>> byCode = new EnumMap<>(FindingCode.class);
        List<FindingCode> order = new ArrayList<>();
        for (Finding finding : findings) {
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
                : same.stream().distinct().map(List::of).toList();
    }

    /** The lines as one text, each ended. */
    public String text(List<Finding> findings) {
        return lines(findings).stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private String line(List<Finding> same) {
        Finding first = same.get(0);
        String also = same.size() == 1 ? "" : also(same.subList(1, same.size()));
        return first.severity().name().toLowerCase(Locale.ROOT) + ": " + sentences.withPlace(first) + also;
    }

    private static String also(List<Finding> others) {
        List<String> pulls = others.stream()
                .flatMap(finding -> finding.place().pull().stream().mapToObj(String::valueOf))
                .distinct()
                .toList();
        return pulls.isEmpty()
                ? " (and " + others.size() + " more like it)"
                : " (likewise pull " + String.join(", ", pulls) + ")";
    }
}
