package org.nextpull.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.unit.Unit;

/**
 * Lambda and air-fuel ratio. An air-fuel ratio becomes lambda only on the scale that the user names: the same gauge shows 12.6 on the
 * petrol scale and 8.4 on that of E85 for one and the same mixture.
 */
final class MixtureColumns {
    /** No running engine has such a lambda, and no liquid fuel such an air-fuel ratio. */
    private static final double BETWEEN_LAMBDA_AND_AFR = 3;

    private final ColumnTable table;
    private final LogHints hints;
    private final List<Finding> findings = new ArrayList<>();

    MixtureColumns(ColumnTable table, LogHints hints) {
        this.table = table;
        this.hints = hints;
    }

    List<Finding> findings() {
        return findings;
    }

    /** The columns with each mixture column under its true role: air-fuel ratios are lambda where their scale is known. */
    List<ColumnDraft> settle(List<ColumnDraft> drafts) {
        List<ColumnDraft> byValue = drafts.stream().map(this::byValue).toList();
        boolean hasLambda = byValue.stream().anyMatch(draft -> draft.role() == Role.LAMBDA);
        List<ColumnDraft> ratios = byValue.stream()
                .filter(draft -> draft.role() == Role.AIR_FUEL_RATIO)
                .toList();
        if (hasLambda || ratios.isEmpty()) {
            return byValue;
        }
        if (hints.afrScale().isPresent()) {
            return byValue.stream()
                    .map(draft -> draft.role() == Role.AIR_FUEL_RATIO ? draft.as(Role.LAMBDA, Unit.AFR) : draft)
                    .toList();
        }
        sayScaleMissing(ratios.get(0));
        return byValue;
    }

    private ColumnDraft byValue(ColumnDraft draft) {
        ProbeColumn probe = table.probes().get(draft.index());
        if (draft.hinted() || probe.count() == 0) {
            return draft;
        }
        boolean great = probe.median() > BETWEEN_LAMBDA_AND_AFR;
        if (draft.role() == Role.LAMBDA && great) {
            sayTaken(draft, Role.AIR_FUEL_RATIO);
            return draft.as(Role.AIR_FUEL_RATIO, Unit.AFR);
        }
        if (draft.role() == Role.AIR_FUEL_RATIO && !great) {
            sayTaken(draft, Role.LAMBDA);
            return draft.as(Role.LAMBDA, Unit.LAMBDA);
        }
        return draft;
    }

    private void sayTaken(ColumnDraft draft, Role role) {
        findings.add(Finding.warning(
                FindingCode.COLUMN_TAKEN_BY_VALUES,
                table.place(draft.header()),
                Detail.of("header", draft.header()),
                Detail.of("channel", role.id())));
    }

    private void sayScaleMissing(ColumnDraft draft) {
        ProbeColumn probe = table.probes().get(draft.index());
        double middle = probe.count() == 0 ? 0 : probe.median();
        findings.add(Finding.warning(
                FindingCode.AFR_WITHOUT_SCALE,
                table.place(draft.header()),
                Detail.of("header", draft.header()),
                Detail.of("likely", likely(middle)),
                Detail.of("middle", middle)));
    }

    /** Scales under which a full-load mixture would show that value; common practice, no source. */
    private static String likely(double middle) {
        return middle == 0 || middle > 9.5
                ? "afr_scale = 14.7 (a petrol gauge), afr_scale = 14.6 or afr_scale = 14.13 (a gauge set to E10)"
                : middle > 6.3
                        ? "afr_scale = 9.8 (a gauge set to E85) or afr_scale = 9.0 (to ethanol)"
                        : "afr_scale = 6.47 (a gauge set to methanol)";
    }

    /** The scale of a column, if it needs one. */
    Optional<Double> divisor(ColumnDraft draft) {
        boolean scaled = draft.role() == Role.LAMBDA && draft.unit().equals(Optional.of(Unit.AFR));
        return scaled && hints.afrScale().isPresent()
                ? Optional.of(hints.afrScale().getAsDouble())
                : Optional.empty();
    }
}
