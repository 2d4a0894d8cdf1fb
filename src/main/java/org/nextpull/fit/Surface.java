package org.nextpull.fit;

import java.util.List;

/**
 * Torque over speed, advance and mixture, as pulls have shown it.
 *
 * @param rows speeds of the answer
 * @param pulls in any order; none is allowed
 * @param priors what was thought before
 */
public record Surface(SpeedRows rows, List<SurfacePull> pulls, SurfacePriors priors) {
    /**
     * Readings at rows.
     *
     * @throws IllegalArgumentException where a reading stands at a row that is not there
     */
    public Surface {
        pulls = List.copyOf(pulls);
        for (SurfacePull pull : pulls) {
            for (SurfacePull.Reading reading : pull.readings()) {
                if (reading.row() >= rows.size()) {
                    throw new IllegalArgumentException("reading at row " + reading.row() + " of " + rows.size());
                }
            }
        }
    }

    /** The same pulls with something else thought before them. */
    public Surface withPriors(SurfacePriors newPriors) {
        return new Surface(rows, pulls, newPriors);
    }

    int readings() {
        return pulls.stream().mapToInt(pull -> pull.readings().size()).sum();
    }

    int days() {
        return 1 + pulls.stream().mapToInt(SurfacePull::day).max().orElse(0);
    }
}
