package org.nextpull.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.nextpull.channel.Channel;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Role;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/**
 * Understands the columns of a source: which channel each is, and in which unit. The user's hints come first, then headers, then a
 * row of units, then what values of that magnitude can be; whatever is assumed is a finding.
 *
 * <p>One reader serves any number of sources and threads.
 */
public final class ColumnReader {
    /** Cells of a row that tell what the row is, however wide it is. */
    public static final int MOST_LOOKED_AT = 256;

    private static final int CHARS_A_LETTER = 6;
    private static final int MOST_REMEMBERED = 4096;

    private final HeaderReader headers = new HeaderReader(Spellings.load());
    /** Whether a text is the name of a channel: each is asked for with every separator, and again in each file of a logger. */
    private final Map<String, Boolean> names = new ConcurrentHashMap<>();

    /** How many of these texts, of the first few hundred, are names of channels: a line with several is a header. */
    public int knownNames(List<String> texts) {
        int known = 0;
        for (String text : texts.subList(0, Math.min(texts.size(), MOST_LOOKED_AT))) {
            known += mayBeName(text) && isName(text) ? 1 : 0;
        }
        return known;
    }

    /** Whether to look any further: a whole row, as it comes with the wrong separator, is no name. */
    private static boolean mayBeName(String text) {
        int letters = 0;
        for (int at = 0; at < text.length(); at++) {
            letters += Character.isLetter(text.charAt(at)) ? 1 : 0;
        }
        return letters > 0 && text.length() <= Math.min(HeaderReader.LONGEST_NAME, CHARS_A_LETTER * letters);
    }

    private boolean isName(String text) {
        if (names.size() >= MOST_REMEMBERED) {
            names.clear();
        }
        return names.computeIfAbsent(
                text, name -> headers.read(name, Optional.empty()).isKnown());
    }

    /** Whether a text is the symbol of a unit. */
    public boolean isUnit(String text) {
        return UnitText.isUnit(text);
    }

    /** Understands the columns of a source. */
    public Columns read(ColumnTable table, LogHints hints) {
        ColumnChooser chooser = new ColumnChooser(table, hints, headers);
        UnitGuess units = new UnitGuess(table, hints);
        MixtureColumns mixture = new MixtureColumns(table, hints);
        List<ColumnDraft> drafts = mixture.settle(units.complete(chooser.choose()));

        List<Finding> findings = new ArrayList<>(chooser.findings());
        findings.addAll(units.findings());
        findings.addAll(mixture.findings());
        findings.addAll(UnitGuess.doubts(table, drafts));
        new PowerCheck(table).check(drafts).ifPresent(findings::add);

        List<MappedColumn> mapped = new ArrayList<>();
        Map<Role, Integer> sensors = new EnumMap<>(Role.class);
        for (ColumnDraft draft : inOrderOfSensors(drafts)) {
            Channel channel = new Channel(draft.role(), sensors.merge(draft.role(), 1, Integer::sum));
            MappedColumn.Reading reading = reading(table, draft, findings);
            double divisor = mixture.divisor(draft).orElse(1.0);
            mapped.add(new MappedColumn(draft.index(), draft.header(), channel, draft.unit(), divisor, reading));
        }
        mapped.sort(Comparator.comparingInt(MappedColumn::index));
        findings.addAll(new ColumnProposals(table, headers, mapped).findings());
        return new Columns(mapped, described(table, mapped), findings);
    }

    private static List<ColumnDraft> inOrderOfSensors(List<ColumnDraft> drafts) {
        return drafts.stream()
                .sorted(Comparator.comparing((ColumnDraft draft) -> !draft.hinted())
                        .thenComparingInt((ColumnDraft draft) -> draft.number().orElse(Integer.MAX_VALUE))
                        .thenComparing(ColumnDraft::index))
                .toList();
    }

    private static MappedColumn.Reading reading(ColumnTable table, ColumnDraft draft, List<Finding> findings) {
        Place place = table.place(draft.header());
        Detail header = Detail.of("header", draft.header());
        if (draft.gauge()) {
            findings.add(Finding.note(FindingCode.COLUMN_ABOVE_AIR_PRESSURE, place, header));
            return MappedColumn.Reading.ABOVE_AIR;
        }
        if (draft.role() == Role.KNOCK_EVENTS
                && table.probes().get(draft.index()).isRunningTotal()) {
            findings.add(Finding.note(FindingCode.COLUMN_RUNNING_TOTAL, place, header));
            return MappedColumn.Reading.RUNNING_TOTAL;
        }
        return MappedColumn.Reading.AS_IT_STANDS;
    }

    private static List<SourceDescription.Column> described(ColumnTable table, List<MappedColumn> mapped) {
        List<SourceDescription.Column> columns = new ArrayList<>();
        for (int index = 0; index < table.headers().size(); index++) {
            int place = index;
            Optional<MappedColumn> column =
                    mapped.stream().filter(each -> each.index() == place).findFirst();
            columns.add(new SourceDescription.Column(
                    table.headers().get(index).strip(),
                    column.map(MappedColumn::channel),
                    column.flatMap(MappedColumn::unit)));
        }
        return columns;
    }
}
