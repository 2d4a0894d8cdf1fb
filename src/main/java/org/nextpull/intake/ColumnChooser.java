package org.nextpull.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.NearestNames;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;

/** Chooses the column of each channel: the one that the user named, else by its header, its unit and what it holds. */
final class ColumnChooser {
    /** Channels of which an engine may carry several sensors. */
    private static final Set<Role> SEVERAL =
            Set.of(Role.LAMBDA, Role.AIR_FUEL_RATIO, Role.EXHAUST_TEMPERATURE, Role.KNOCK_EVENTS, Role.KNOCK_LEVEL);

    /** Channels whose other sensors still count for a limit when the user names the column of one: each is on another cylinder or bank. */
    private static final Set<Role> KEPT_BESIDE = Set.of(Role.EXHAUST_TEMPERATURE, Role.LAMBDA);

    /** Words for a signal that has a strength; knock without any of them may be a count. */
    private static final Pattern GRADED =
            Pattern.compile("(?i)level|intens|volt|signal|sensor|energy|pegel|niveau|nivel|livello|capteur|spannung");

    /** Greatest value from which a "speed" without a unit is taken for that of a shaft. */
    private static final double SHAFT_SPEED_FROM = 400;

    private final ColumnTable table;
    private final LogHints hints;
    private final HeaderReader reader;
    private final List<Finding> findings = new ArrayList<>();

    ColumnChooser(ColumnTable table, LogHints hints, HeaderReader reader) {
        this.table = table;
        this.hints = hints;
        this.reader = reader;
    }

    List<Finding> findings() {
        return findings;
    }

    /** The columns that are read, in the order of the source. */
    List<ColumnDraft> choose() {
        Map<Integer, ColumnDraft> candidates = new LinkedHashMap<>();
        hinted().forEach(draft -> candidates.put(draft.index(), draft));
        for (int index = 0; index < table.headers().size(); index++) {
            if (!candidates.containsKey(index)) {
                recognised(index).ifPresent(draft -> candidates.put(draft.index(), draft));
            }
        }
        Map<Role, List<ColumnDraft>> byRole = candidates.values().stream()
                .filter(this::holdsWhatItShould)
                .collect(Collectors.groupingBy(ColumnDraft::role, LinkedHashMap::new, Collectors.toList()));
        return byRole.values().stream()
                .flatMap(drafts -> best(drafts).stream())
                .sorted(Comparator.comparingInt(ColumnDraft::index))
                .toList();
    }

    private List<ColumnDraft> hinted() {
        List<ColumnDraft> drafts = new ArrayList<>();
        hints.headers().forEach((role, wanted) -> {
            int index = find(wanted);
            if (index < 0) {
                findings.add(Finding.warning(
                        FindingCode.COLUMN_NOT_FOUND,
                        table.place(wanted),
                        Detail.of("header", wanted),
                        Detail.of("channel", role.id()),
                        Detail.of("nearest", nearest(wanted))));
            } else {
                drafts.add(new ColumnDraft(
                        index,
                        table.headers().get(index),
                        role,
                        reader.unitIn(table.headers().get(index), table.rowUnit(index), role.quantity()),
                        OptionalInt.empty(),
                        NameStanding.PLAIN,
                        false,
                        true));
            }
        });
        return drafts;
    }

    private String nearest(String wanted) {
        List<String> named =
                table.headers().stream().filter(header -> !header.isBlank()).toList();
        return NearestNames.of(wanted, named).stream().findFirst().orElse("-");
    }

    private int find(String wanted) {
        String compact = CompactName.of(wanted).text();
        for (int index = 0; index < table.headers().size(); index++) {
            if (table.headers().get(index).strip().equals(wanted.strip())) {
                return index;
            }
        }
        for (int index = 0; index < table.headers().size(); index++) {
            if (!compact.isEmpty()
                    && CompactName.of(table.headers().get(index)).text().equals(compact)) {
                return index;
            }
        }
        return -1;
    }

    private Optional<ColumnDraft> recognised(int index) {
        String header = table.headers().get(index);
        HeaderReader.HeaderName name = reader.read(header, table.rowUnit(index));
        List<HeaderReader.HeaderName.Meaning> meanings = name.meanings().stream()
                .filter(meaning -> !isHinted(meaning.role()) || KEPT_BESIDE.contains(meaning.role()))
                .toList();
        if (meanings.isEmpty() || (name.standing() == NameStanding.NOT_MEASURED && !isOffset(meanings))) {
            return Optional.empty();
        }
        HeaderReader.HeaderName.Meaning meaning = meanings.size() == 1 ? meanings.get(0) : byMagnitude(meanings, index);
        Optional<Unit> hintUnit = Optional.ofNullable(hints.units().get(meaning.role()));
        if (meaning.strangeUnit().isPresent() && hintUnit.isEmpty()) {
            findings.add(Finding.warning(
                    FindingCode.COLUMN_UNIT_STRANGE,
                    table.place(header),
                    Detail.of("header", header),
                    Detail.of("channel", meaning.role().id()),
                    Detail.of("unit", meaning.strangeUnit().orElseThrow())));
            return Optional.empty();
        }
        ProbeColumn probe = table.probes().get(index);
        boolean heard = meaning.role() == Role.KNOCK_LEVEL
                && (probe.isYesNo()
                        || (probe.isRareCount() && !GRADED.matcher(header).find()));
        return Optional.of(new ColumnDraft(
                index,
                header,
                heard ? Role.KNOCK_EVENTS : meaning.role(),
                meaning.unit(),
                meaning.number(),
                name.standing(),
                meaning.gauge(),
                false));
    }

    private static boolean isOffset(List<HeaderReader.HeaderName.Meaning> meanings) {
        return meanings.get(0).role() == Role.ADVANCE_OFFSET;
    }

    /** A role is taken by the column that the user named, unless there is no such column. */
    private boolean isHinted(Role role) {
        return hints.header(role).map(header -> find(header) >= 0).orElse(false);
    }

    private HeaderReader.HeaderName.Meaning byMagnitude(List<HeaderReader.HeaderName.Meaning> meanings, int index) {
        ProbeColumn probe = table.probes().get(index);
        boolean shaft = probe.count() > 0 && probe.greatest() > SHAFT_SPEED_FROM;
        HeaderReader.HeaderName.Meaning meaning = meanings.stream()
                .filter(candidate -> (candidate.role().quantity() == Quantity.SPEED) == shaft)
                .findFirst()
                .orElse(meanings.get(0));
        findings.add(Finding.warning(
                FindingCode.COLUMN_TAKEN_BY_VALUES,
                table.place(table.headers().get(index)),
                Detail.of("header", table.headers().get(index)),
                Detail.of("channel", meaning.role().id())));
        return meaning;
    }

    private boolean holdsWhatItShould(ColumnDraft draft) {
        ProbeColumn probe = table.probes().get(draft.index());
        Role role = draft.role();
        if (role == Role.TIME && (probe.isBlank() || (probe.repeatedShare() == 1 && !draft.hinted()))) {
            findings.add(Finding.warning(
                    FindingCode.TIME_STANDS_STILL, table.place(draft.header()), Detail.of("header", draft.header())));
            return false;
        }
        boolean fits = probe.isBlank()
                || role == Role.LABEL
                || (role == Role.FUEL && (!probe.isNumeric() || draft.hinted()))
                || (role != Role.FUEL && probe.isNumeric())
                || (role == Role.TIME && probe.isClock())
                || (role.quantity() == Quantity.COUNT && !role.isText() && probe.isYesNo());
        if (!fits && role != Role.FUEL) {
            findings.add(Finding.warning(
                    FindingCode.COLUMN_NOT_NUMERIC,
                    table.place(draft.header()),
                    Detail.of("header", draft.header()),
                    Detail.of("channel", role.id())));
        }
        return fits;
    }

    private List<ColumnDraft> best(List<ColumnDraft> drafts) {
        Comparator<ColumnDraft> better = Comparator.comparing((ColumnDraft draft) -> !draft.hinted())
                .thenComparing(draft -> table.probes().get(draft.index()).isBlank())
                .thenComparing(draft -> draft.role() == Role.TIME
                        ? table.probes().get(draft.index()).repeatedShare()
                        : 0.0)
                .thenComparing(ColumnDraft::standing)
                .thenComparing(draft -> draft.unit().isEmpty())
                .thenComparing(ColumnDraft::index);
        ColumnDraft first = drafts.stream().min(better).orElseThrow();
        if (!SEVERAL.contains(first.role()) || (first.hinted() && !KEPT_BESIDE.contains(first.role()))) {
            sayChosen(first, drafts);
            sayStanding(first);
            return List.of(first);
        }
        return drafts.stream()
                .filter(draft -> draft.standing() == first.standing())
                .toList();
    }

    private void sayChosen(ColumnDraft chosen, List<ColumnDraft> drafts) {
        if (drafts.size() > 1 && !chosen.hinted()) {
            List<String> others = drafts.stream()
                    .filter(draft -> draft.index() != chosen.index())
                    .map(ColumnDraft::header)
                    .toList();
            findings.add(Finding.note(
                    FindingCode.COLUMN_CHOSEN,
                    table.place(chosen.header()),
                    Detail.of("header", chosen.header()),
                    Detail.of("channel", chosen.role().id()),
                    Detail.few("others", others)));
        }
    }

    private void sayStanding(ColumnDraft chosen) {
        if (chosen.standing() == NameStanding.CORRECTED
                && (chosen.role() == Role.TORQUE || chosen.role() == Role.POWER)) {
            findings.add(Finding.warning(
                    FindingCode.COLUMN_ALREADY_CORRECTED,
                    table.place(chosen.header()),
                    Detail.of("header", chosen.header()),
                    Detail.of("channel", chosen.role().id())));
        } else if (chosen.standing() == NameStanding.PEAK) {
            findings.add(Finding.warning(
                    FindingCode.COLUMN_OF_PEAKS,
                    table.place(chosen.header()),
                    Detail.of("header", chosen.header()),
                    Detail.of("channel", chosen.role().id())));
        }
    }
}
