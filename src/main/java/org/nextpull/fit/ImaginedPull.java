package org.nextpull.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.math.SymmetricFactor;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** What a pull that is not yet run would add to the equations of one node. */
final class ImaginedPull {
    /** Standard deviation of what a pull is off by against the scale that the solver counts in: root 1.25 over 0.95. */
    private static final double SPREAD = Math.sqrt(1.25) / PullErrors.SCALE;

    final SolvedCell cell;
    private final SurfacePosterior posterior;
    private final double[] equations;
    private final double order;

    ImaginedPull(SurfacePosterior posterior, SolvedCell cell) {
        this.posterior = posterior;
        this.cell = cell;
        equations = cell.equations();
        Surface surface = posterior.surface();
        order = surface.pulls().stream()
                .filter(pull -> pull.day() == surface.days() - 1)
                .mapToDouble(pull -> pull.order() + 1)
                .max()
                .orElse(0);
    }

    /** The equations with the pull, factored. */
    SymmetricFactor factorAfter(double[] deg, double hundredths) {
        Surface surface = posterior.surface();
        SpeedRows rows = surface.rows();
        Optional<Lambda> lambda = surface.priors().mixture().map(prior -> prior.lambda(hundredths));
        List<SurfacePull.Reading> readings = new ArrayList<>();
        for (int r = 0; r < rows.size(); r++) {
            readings.add(new SurfacePull.Reading(r, Advance.ofDeg(deg[r]), lambda, 0, 0));
        }
        SurfacePull pull = new SurfacePull(surface.days() - 1, order, false, readings);
        SurfaceSolver solver = new SurfaceSolver(new Surface(rows, List.of(pull), surface.priors()), cell.peak);
        SurfaceGrid.Node node = new SurfaceGrid.Node(cell.node.curvature(), cell.node.scatter() * SPREAD, false, 0);
        return solver.factorWith(equations, cell.common, node, posterior.rowError());
    }
}
