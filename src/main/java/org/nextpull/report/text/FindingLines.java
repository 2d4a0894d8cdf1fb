package org.nextpull.report.text;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.report.FindingText;

/** Findings, a line each; one that many pulls share is said once, with the pulls that it also holds for. */
final class FindingLines {
    private final FindingText sentences;

    FindingLines(FindingText sentences) {
        this.sentences = sentences;
    }

    String text(List<Finding> findings) {
        Map<FindingCode, List<Finding>> byCode = new EnumMap<>(FindingCode.class);
        List<FindingCode> order = new ArrayList<>();
        for (Finding finding : findings) {
            byCode.computeIfAbsent(finding.code(), code -> {
                        order.add(code);
                        return new ArrayList<>();
                    })
                    .add(finding);
        }
        StringBuilder text = new StringBuilder();
        for (FindingCode code : order) {
            List<Finding> same = byCode.getOrDefault(code, List.of());
            text.append(line(same));
        }
        return text.toString();
    }

    private String line(List<Finding> same) {
        Finding first = same.get(0);
        String also = same.size() == 1 ? "" : also(same.subList(1, same.size()));
        return first.severity().name().toLowerCase(Locale.ROOT) + ": " + sentences.withPlace(first) + also + "\n";
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
