package org.nextpull.compare;

/**
 * How often the pulls are looked at. A difference that is claimed at the first look that shows one is claimed too often, so it must be
 * settled beforehand when a look may claim, or each look must claim less easily.
 */
public sealed interface InterimLooks {
    /** Error that a whole comparison may make when nothing differs, as a part of one. */
    double ERROR = 0.05;

    /**
     * The number of pulls was fixed before the first. The verdict comes when all are run; before that only a difference so clear that it
     * would hold at one in two thousand is claimed (Haybittle 1971, Peto 1976), which leaves the last look its full error.
     *
     * @param pulls planned pulls of all labels together, at least 4
     * @param earlier looks that came before the number was fixed, not negative; the last look then claims as an open one would
     */
    record Planned(int pulls, int earlier) implements InterimLooks {
        private static final double EARLY = 0.0005;

        /**
         * Checks the numbers.
         *
         * @throws IllegalArgumentException for fewer than 4 pulls or a negative number of looks
         */
        public Planned {
            if (pulls < 4) {
                throw new IllegalArgumentException("a comparison has at least 4 pulls, not " + pulls);
            }
            if (earlier < 0) {
                throw new IllegalArgumentException("earlier looks are counted from 0, not " + earlier);
            }
        }

        /** A number that was fixed before anything was looked at. */
        public Planned(int pulls) {
            this(pulls, 0);
        }

        @Override
        public double claimError(int done) {
            if (!isFinal(done)) {
                return EARLY;
            }
            return earlier == 0 ? ERROR : new Open(earlier).claimError(done);
        }

        @Override
        public InterimLooks next(int done, int further) {
            return isFinal(done) ? new Planned(done + further, earlier + 1) : this;
        }

        @Override
        public boolean isFinal(int done) {
            return done >= pulls;
        }
    }

    /**
     * Nothing was fixed: after each look more pulls may follow. The first look keeps most of the error, later ones share the rest, so
     * that all of them together make no more false claims than one.
     *
     * @param earlier looks that came before this one, not negative
     */
    record Open(int earlier) implements InterimLooks {
        private static final double FIRST = 0.04;

        /**
         * Checks the number.
         *
         * @throws IllegalArgumentException when it is negative
         */
        public Open {
            if (earlier < 0) {
                throw new IllegalArgumentException("earlier looks are counted from 0, not " + earlier);
            }
        }

        @Override
        public double claimError(int done) {
            return FIRST / ((earlier + 1.0) * (earlier + 1));
        }

        @Override
        public InterimLooks next(int done, int further) {
            return new Planned(done + further, earlier + 1);
        }

        @Override
        public boolean isFinal(int done) {
            return true;
        }
    }

    /**
     * A look after each block there and back, six at most, planned so from the start: each look may make the same error (Pocock,
     * Biometrika 64, 1977), and for "same" likewise. Ends soonest on a large difference.
     */
    record EachBlock() implements InterimLooks {
        private static final double EACH = 0.0125;

        @Override
        public double claimError(int done) {
            return EACH;
        }

        @Override
        public InterimLooks next(int done, int further) {
            return this;
        }

        @Override
        public double sameError() {
            return EACH;
        }

        @Override
        public boolean isFinal(int done) {
            return true;
        }
    }

    /** Error, as a part of one, of the interval that must lie within the worth for "same". */
    default double sameError() {
        return ERROR;
    }

    /** How the next look must be taken, after so many further pulls, for all looks together to keep their error. */
    InterimLooks next(int done, int further);

    /** Error, as a part of one, at which a difference may be claimed now, with so many pulls done. */
    double claimError(int done);

    /** Whether the verdict stands with so many pulls done. */
    boolean isFinal(int done);
}
