package org.nextpull.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.channel.AskedSetting;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.pull.Candidate;

/**
 * Which asked setting belongs to which candidate. A row that names a pull belongs to that candidate; rows that name none belong to
 * the candidates of their file one after the other, and then their count must be that of the candidates.
 */
final class AskedSettings {
    private final Map<Key, AskedSetting> byCandidate;
    private final List<Finding> findings;

    private AskedSettings(Map<Key, AskedSetting> byCandidate, List<Finding> findings) {
        this.byCandidate = Map.copyOf(byCandidate);
        this.findings = List.copyOf(findings);
    }

    private record Key(String source, int candidate) {}

    static AskedSettings match(List<AskedSetting> settings, List<SourcePulls> sources) {
        Map<Key, AskedSetting> matched = new HashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (SourcePulls source : sources) {
            List<AskedSetting> rows = settings.stream()
                    .filter(row -> belongsTo(row, source.name()))
                    .toList();
            if (!rows.isEmpty()) {
                match(rows, source, matched, findings);
            }
        }
        for (AskedSetting row : settings) {
            boolean known = sources.stream().anyMatch(source -> belongsTo(row, source.name()));
            if (!known) {
                findings.add(Finding.warning(
                        FindingCode.SETTINGS_FOR_NO_FILE,
                        Place.nowhere(),
                        Detail.of("named", row.file().orElse(""))));
            }
        }
        return new AskedSettings(matched, findings);
    }

    private static void match(
            List<AskedSetting> rows, SourcePulls source, Map<Key, AskedSetting> matched, List<Finding> findings) {
        List<AskedSetting> unnumbered =
                rows.stream().filter(row -> row.pull().isEmpty()).toList();
        List<Candidate> candidates = source.candidates();
        if (!unnumbered.isEmpty() && rows.size() != candidates.size()) {
            findings.add(Finding.error(
                    FindingCode.SETTINGS_COUNT,
                    Place.inFile(source.name()),
                    Detail.of("rows", rows.size()),
                    Detail.of("pulls", candidates.size())));
            return;
        }
        for (int index = 0; index < rows.size(); index++) {
            AskedSetting row = rows.get(index);
            int number = row.pull().orElse(index + 1);
            boolean found = candidates.stream().anyMatch(candidate -> candidate.number() == number);
            if (found) {
                matched.put(new Key(source.name(), number), row);
            } else {
                findings.add(Finding.error(
                        FindingCode.SETTINGS_FOR_NO_PULL,
                        Place.inFile(source.name()),
                        Detail.of("number", number),
                        Detail.of("pulls", candidates.size())));
            }
        }
    }

    private static boolean belongsTo(AskedSetting row, String source) {
        return row.file().isEmpty()
                || row.file().get().equals(source)
                || row.file().get().equals(lastPart(source));
    }

    private static String lastPart(String path) {
        return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
    }

    Optional<AskedSetting> of(String source, int candidate) {
        return Optional.ofNullable(byCandidate.get(new Key(source, candidate)));
    }

    List<Finding> findings() {
        return findings;
    }
}
