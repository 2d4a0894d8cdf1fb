package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.nextpull.advice.Chosen;
import org.nextpull.channel.EngineSetting;
import org.nextpull.plan.Goal;
import org.nextpull.report.CandidateWords;
import org.nextpull.report.CompareWords;
import org.nextpull.report.Shown;
import org.nextpull.session.CandidateDay;
import org.nextpull.session.SessionResult;

/** The candidates of a day: which, by how much, at what setting, and what of it is the fuel. */
final class CandidatePart {
    private final CandidateDay day;
    private final Goal.Response response;
    private final CandidateWords words;

    private CandidatePart(CandidateDay day, Goal.Response response, Shown shown) {
        this.day = day;
        this.response = response;
        words = new CandidateWords(day, response, shown);
    }

    /** Empty for a day that does not decide between any. */
    static Optional<CandidatePart> of(SessionResult result, Shown shown) {
        return result.candidates()
                .map(day -> new CandidatePart(day, result.plan().goal().response(), shown));
    }

    /** The candidate whose sweep is told in full, where the day has several: {@code  of "alcohol"}. */
    static String swept(SessionResult result) {
        return result.candidates().flatMap(day -> result.verdict()).stream()
                .flatMap(verdict -> Stream.concat(verdict.timing().stream(), verdict.mixture().stream()))
                .flatMap(sweep -> sweep.pulls().stream())
                .findFirst()
                .flatMap(result::pull)
                .flatMap(one -> one.pull().setting().label())
                .map(label -> " of \"" + label + "\"")
                .orElse("");
    }

    /** The result; empty while the day has not decided. */
    Optional<String> answer() {
        return words.answer();
    }

    /** Which of them cannot be told apart, once the day has decided, and what knock leaves to each. */
    List<String> remarks() {
        Optional<String> groups = day.isDecided() ? words.groups() : Optional.empty();
        return Stream.concat(groups.stream(), words.knockLimits().stream()).toList();
    }

    /** The tables of the first page. */
    List<Section.Grid> grids() {
        List<Section.Grid> grids = new ArrayList<>();
        Section.Grid beside = Section.Grid.of(
                "Each at its own best; \"" + day.reference().label() + "\" is the reference, gains with 95 % limits",
                CandidateWords.heads().toArray(String[]::new));
        for (CandidateDay.State state : day.candidates()) {
            beside = beside.row(words.row(state).toArray(String[]::new));
        }
        grids.add(beside);
        grids.add(shares());
        day.candidates()
                .forEach(state -> state.chosen()
                        .map(Chosen::setting)
                        .flatMap(EngineSetting::map)
                        .ifPresent(map -> grids.add(FrontPart.map(state.plan().label(), map))));
        return grids.stream().filter(grid -> !grid.isEmpty()).toList();
    }

    private Section.Grid shares() {
        Section.Grid grid = Section.Grid.of(
                "At the setting of \"" + day.reference().label()
                        + "\", and what its own setting adds, % with 95 % limits; what the same power takes, times that of \""
                        + day.reference().label() + "\"",
                "candidate",
                "there",
                "from",
                "to",
                "own adds",
                "from",
                "to",
                "mass",
                "volume",
                "energy",
                "cost");
        for (CandidateDay.State state : day.candidates()) {
            Optional<CandidateDay.Consumption> used = day.consumption(state, response);
            if (state.shares().isPresent() || used.isPresent()) {
                List<String> cells = new ArrayList<>(List.of(state.plan().label()));
                cells.addAll(share(state.shares().map(CandidateDay.Shares::itself)));
                cells.addAll(share(state.shares().map(CandidateDay.Shares::setting)));
                cells.add(ratio(used.map(one -> OptionalDouble.of(one.mass()))));
                cells.add(ratio(used.map(CandidateDay.Consumption::volume)));
                cells.add(ratio(used.map(CandidateDay.Consumption::energy)));
                cells.add(ratio(used.map(CandidateDay.Consumption::cost)));
                grid = grid.row(cells.toArray(String[]::new));
            }
        }
        return grid;
    }

    private static List<String> share(Optional<CandidateDay.Share> share) {
        return share.map(known -> List.of(
                        CompareWords.signed(known.percent()),
                        CompareWords.signed(known.interval().low()),
                        CompareWords.signed(known.interval().high())))
                .orElse(List.of("-", "-", "-"));
    }

    private static String ratio(Optional<OptionalDouble> value) {
        return value.flatMap(known -> known.stream().boxed().findFirst())
                .map(known -> Shown.fixed(known, 2))
                .orElse("-");
    }
}
