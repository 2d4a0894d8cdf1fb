package org.nextpull.pull;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Stretches that are judged while the next rows come in, and numbered in their order. Not for use by several threads. */
final class JudgedAside {
    private static final int MOST = 3;

    /** More rows do not wait, so that little memory is filled by them. */
    private static final int MOST_ROWS = 8192;

    private final CandidateMaker maker;
    private final Aside aside;
    private final Deque<Waiting> waiting = new ArrayDeque<>();

    JudgedAside(CandidateMaker maker, Aside aside) {
        this.maker = maker;
        this.aside = aside;
    }

    /** A stretch that is being judged. */
    private final class Waiting {
        private final int rows;
        private final Runnable wait;
        private CandidateMaker.@Nullable Judged judged;

        Waiting(FullLoadStretch stretch, SpeedSource speed) {
            this.rows = stretch.samples().rows();
            this.wait = aside.start(() -> judged = maker.judged(stretch, speed));
        }

        List<Candidate> candidates() {
            wait.run();
            CandidateMaker.Judged done = judged;
            return done == null ? List.of() : maker.candidates(done);
        }
    }

    /** Takes a stretch, and gives the candidates of those that wait no longer. */
    List<Candidate> add(FullLoadStretch stretch, SpeedSource speed) {
        waiting.add(new Waiting(stretch, speed));
        List<Candidate> found = new ArrayList<>();
        while (waiting.size() > MOST || rows() > MOST_ROWS) {
            found.addAll(waiting.remove().candidates());
        }
        return found;
    }

    /** The candidates of all that wait. */
    List<Candidate> finish() {
        List<Candidate> found = new ArrayList<>();
        while (!waiting.isEmpty()) {
            found.addAll(waiting.remove().candidates());
        }
        return found;
    }

    /** Rows of the stretches that wait. */
    int rows() {
        return waiting.stream().mapToInt(each -> each.rows).sum();
    }
}
