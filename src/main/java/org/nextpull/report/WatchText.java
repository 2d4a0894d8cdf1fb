package org.nextpull.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.alarm.ChannelLife;
import org.nextpull.plan.Limit;
import org.nextpull.session.SessionResult;

/** Which limits nothing watches: what a reader must know before anything else. */
public final class WatchText {
    private WatchText() {}

    /** The limits of a day that no live channel watched, in a sentence or two; empty while all are watched. */
    public static Optional<String> of(SessionResult result) {
        List<SessionResult.WatchGap> gaps = result.watchGaps();
        if (gaps.isEmpty()) {
            return Optional.empty();
        }
        Map<String, List<String>> named = gaps.stream()
                .collect(Collectors.groupingBy(
                        WatchText::reason,
                        LinkedHashMap::new,
                        Collectors.mapping(gap -> name(gap.limit()), Collectors.toList())));
        String said = named.entrySet().stream()
                .map(same -> String.join(", ", same.getValue()) + " (" + same.getKey() + ")")
                .collect(Collectors.joining("; "));
        return Optional.of("Not watched: " + said + ". Watch "
                + (gaps.size() == 1
                        ? "it yourself; steps toward what it guards"
                        : "them yourself; steps toward what they guard")
                + " are half as long.");
    }

    /** Why a limit was not watched, and in which pulls. */
    public static String reason(SessionResult.WatchGap gap) {
        String pulls = gap.inAll()
                ? "in every pull"
                : "in pull " + gap.pulls().stream().map(String::valueOf).collect(Collectors.joining(", "));
        return why(gap.limit(), gap.what().life()) + ", " + pulls;
    }

    /** The limit as it stands within a sentence. */
    public static String name(Limit limit) {
        String name = AdviceText.name(limit);
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    private static String why(Limit limit, ChannelLife.Life life) {
        if (limit == Limit.KNOCK) {
            return "not measured";
        }
        return switch (life) {
            case LIVE -> "live";
            case NOT_LOGGED -> "not logged";
            case BLANK -> "no reading";
            case FROZEN -> "the same reading over and over";
            case OUT_OF_RANGE -> "more than a sensor can show";
            case IMPLAUSIBLE -> "a reading that no engine has under load";
        };
    }
}
