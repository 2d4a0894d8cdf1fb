package org.nextpull.fuel;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;

/** What the shares of a blend count. */
public enum ShareBy {
    VOLUME,
    MASS;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Reads {@code by} of a plan's blend. */
    public static Outcome<ShareBy> find(String text, Place place) {
        List<ShareBy> all = Arrays.asList(values());
        return all.stream()
                .filter(by -> by.id().equals(text))
                .findFirst()
                .map(Outcome::of)
                .orElseGet(() ->
                        Outcome.failed(Finding.error(FindingCode.FUEL_SHARE_UNKNOWN, place, Detail.of("name", text))));
    }
}
