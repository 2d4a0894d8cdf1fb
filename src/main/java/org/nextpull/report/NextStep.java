package org.nextpull.report;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The next step in large print: what is read first, from a distance.
 *
 * @param kind what is asked
 * @param word the same in a word or three
 * @param figures what to set, or at a stop what to leave; the first is the one that matters most
 * @param about what the figures are for
 * @param because why, in one sentence
 * @param listen what the operator must watch and listen for beside it, where no live channel does
 * @param whole why, with the numbers
 */
public record NextStep(
        Kind kind,
        String word,
        List<Figure> figures,
        String about,
        String because,
        Optional<String> listen,
        String whole) {
    public NextStep {
        figures = List.copyOf(figures);
    }

    /** What is asked of the operator. */
    public enum Kind {
        PULL,
        REPEAT,
        WAIT,
        STOP,
        /** A stop that is good news: the peak was found and its setting stays. */
        DONE,
        /** No sweep is asked for, so there is nothing to advise. */
        NOTHING
    }

    /**
     * One number to set.
     *
     * @param number the number alone: {@code 28.0}
     * @param unit its unit, empty where it has none
     * @param name what it is
     * @param change what changes against the last pull, empty where that is not known
     */
    public record Figure(String number, String unit, String name, String change) {}

    /** The sentences of the whole that the reason does not say already. */
    public String more() {
        return Arrays.stream(whole.split("(?<=[.;]) "))
                .filter(sentence -> !because.contains(sentence))
                .collect(Collectors.joining(" "));
    }

    /** The same without the numbers behind it, for a page that has another place for them. */
    public NextStep brief() {
        return new NextStep(kind, word, figures, about, because, listen, because);
    }

    /** The same with a sentence before what is to be listened for. */
    public NextStep with(String sentence) {
        String both = sentence + listen.map(words -> " " + words).orElse("");
        return new NextStep(kind, word, figures, about, because, Optional.of(both), whole);
    }

    /** All of it in one line, for whoever does not see the page. */
    public String spoken() {
        StringBuilder line = new StringBuilder(word);
        for (Figure figure : figures) {
            line.append(", ")
                    .append(figure.name())
                    .append(' ')
                    .append(figure.number())
                    .append(figure.unit().isEmpty() ? "" : " " + figure.unit());
        }
        line.append(". ").append(because);
        listen.ifPresent(sentence -> line.append(' ').append(sentence));
        return line.toString();
    }
}
