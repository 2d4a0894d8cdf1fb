package org.nextpull.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.nextpull.channel.AskedSetting;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.pull.Candidate;

/**
 * Which asked setting belongs to which candidate. Rows that name no file mean the only one there is; among several, they count the
 * candidates over the whole day. A row that names a pull belongs to that candidate; rows that name none belong to
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
                match(rows, source.name(), List.of(source), matched, findings);
            }
        }
        List<AskedSetting> nameless =
                settings.stream().filter(row -> row.file().isEmpty()).toList();
        if (!nameless.isEmpty() && !sources.isEmpty()) {
            String place = sources.size() == 1 ? sources.get(0).name() : "all logs";
            match(nameless, place, sources, matched, findings);
        }
        for (AskedSetting row : settings) {
            boolean known = row.file().isEmpty() || sources.stream().anyMatch(source -> belongsTo(row, source.name()));
            if (!known) {
                findings.add(Finding.warning(
                        FindingCode.SETTINGS_FOR_NO_FILE,
                        Place.nowhere(),
                        Detail.of("named", row.file().orElse(""))));
            }
        }
        return new AskedSettings(matched, findings);
    }

    private static List<Key> keys(List<SourcePulls> sources, Predicate<Candidate> wanted) {
        return sources.stream()
                .flatMap(source -> source.candidates().stream()
                        .filter(wanted)
                        .map(candidate -> new Key(source.name(), candidate.number())))
                .toList();
    }

    /** Candidates are numbered from 1 in the order given; a row without a number is never one of a stretch that is no pull. */
    private static void match(
            List<AskedSetting> rows,
            String place,
            List<SourcePulls> sources,
            Map<Key, AskedSetting> matched,
            List<Finding> findings) {
        List<Key> candidates = keys(sources, candidate -> true);
        List<Key> pulls = keys(sources, candidate -> !candidate.isKnockAlone());
        boolean unnumbered = rows.stream().anyMatch(row -> row.pull().isEmpty());
        if (unnumbered && rows.size() != pulls.size()) {
            findings.add(Finding.error(
                    FindingCode.SETTINGS_COUNT,
                    Place.inFile(place),
                    Detail.of("rows", rows.size()),
                    Detail.of("pulls", pulls.size())));
            return;
        }
        for (int index = 0; index < rows.size(); index++) {
            int row = index;
            int number = rows.get(index).pull().orElseGet(() -> candidates.indexOf(pulls.get(row)) + 1);
            if (number >= 1 && number <= candidates.size()) {
                matched.put(candidates.get(number - 1), rows.get(index));
            } else {
                findings.add(Finding.error(
                        FindingCode.SETTINGS_FOR_NO_PULL,
                        Place.inFile(place),
                        Detail.of("number", number),
                        Detail.of("pulls", candidates.size())));
            }
        }
    }

    private static boolean belongsTo(AskedSetting row, String source) {
        return row.file()
                .filter(name -> name.equals(source) || name.equals(lastPart(source)))
                .isPresent();
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
