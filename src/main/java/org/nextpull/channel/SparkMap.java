package org.nextpull.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.unit.Advance;

/**
 * Advance over speed as an ignition holds it: straight lines between breakpoints, level beyond the outermost ones. A map of one cell
 * is the flat case, one number at every speed.
 *
 * @param cells breakpoints in rising order of speed, one at least
 */
public record SparkMap(List<Cell> cells) {
    /** Two shifts nearer than this are one. */
    private static final double SAME_DEG = 1e-6;

    /**
     * One breakpoint.
     *
     * @param rpm speed in rpm, finite and not negative
     * @param advance advance that stands there
     */
    public record Cell(double rpm, Advance advance) {
        /**
         * Accepts any finite speed from 0.
         *
         * @throws IllegalArgumentException when the speed is NaN, infinite or negative
         */
        public Cell {
            if (!(rpm >= 0) || Double.isInfinite(rpm)) {
                throw new IllegalArgumentException("breakpoint at " + rpm + " rpm");
            }
        }
    }

    /**
     * A map of those cells.
     *
     * @throws IllegalArgumentException where there is no cell, or two stand at one speed, or the speeds do not rise
     */
    public SparkMap {
        cells = List.copyOf(cells);
        if (cells.isEmpty()) {
            throw new IllegalArgumentException("a spark map needs a cell");
        }
        for (int i = 1; i < cells.size(); i++) {
            if (cells.get(i).rpm() <= cells.get(i - 1).rpm()) {
                throw new IllegalArgumentException("breakpoints must rise, and no two stand at "
                        + cells.get(i).rpm() + " rpm");
            }
        }
    }

    /** The same advance at every speed. */
    public static SparkMap flat(Advance advance) {
        return new SparkMap(List.of(new Cell(0, advance)));
    }

    /** The same advance at every speed, in degrees before top dead centre, finite. */
    public static SparkMap flat(double deg) {
        return flat(Advance.ofDeg(deg));
    }

    /**
     * Cells from two arrays that run in parallel.
     *
     * @param rpm rising speeds, finite and not negative
     * @param deg advance at each, degrees before top dead centre, finite; at least as many as there are speeds
     * @throws IllegalArgumentException where there is no speed, the speeds do not rise, or a number is not in its range
     */
    public static SparkMap of(double[] rpm, double[] deg) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < rpm.length; i++) {
            cells.add(new Cell(rpm[i], Advance.ofDeg(deg[i])));
        }
        return new SparkMap(cells);
    }

    /** The one advance of every speed; empty where a cell stands at a speed of its own. */
    public Optional<Advance> number() {
        return isFlat() && cells.get(0).rpm() == 0 ? Optional.of(cells.get(0).advance()) : Optional.empty();
    }

    /** Whether the ignition holds one number. */
    public boolean isFlat() {
        return cells.size() == 1;
    }

    /** Degrees of advance at a speed in rpm, on the straight line between the breakpoints around it. */
    public double degAt(double rpm) {
        Cell before = cells.get(0);
        if (rpm <= before.rpm()) {
            return before.advance().deg();
        }
        for (Cell cell : cells) {
            if (rpm <= cell.rpm()) {
                double share = (rpm - before.rpm()) / (cell.rpm() - before.rpm());
                return before.advance().deg() * (1 - share) + cell.advance().deg() * share;
            }
            before = cell;
        }
        return before.advance().deg();
    }

    /** Degrees of advance at each of several speeds. */
    public double[] degAt(double[] rpm) {
        double[] deg = new double[rpm.length];
        for (int i = 0; i < deg.length; i++) {
            deg[i] = degAt(rpm[i]);
        }
        return deg;
    }

    /**
     * The map moved as a whole.
     *
     * @param deg crank degrees, finite; positive for more advance
     * @throws IllegalArgumentException for NaN or an infinite number
     */
    public SparkMap shiftedBy(double deg) {
        List<Cell> moved = new ArrayList<>();
        for (Cell cell : cells) {
            moved.add(new Cell(cell.rpm(), Advance.ofDeg(cell.advance().deg() + deg)));
        }
        return new SparkMap(moved);
    }

    /**
     * By how many crank degrees this is the other map moved as a whole, to 1e-6; empty where it is not, or where the breakpoints differ.
     */
    public OptionalDouble shiftFrom(SparkMap other) {
        if (cells.size() != other.cells.size()) {
            return OptionalDouble.empty();
        }
        double shift =
                cells.get(0).advance().deg() - other.cells.get(0).advance().deg();
        for (int i = 0; i < cells.size(); i++) {
            double here =
                    cells.get(i).advance().deg() - other.cells.get(i).advance().deg();
            if (cells.get(i).rpm() != other.cells.get(i).rpm() || Math.abs(here - shift) > SAME_DEG) {
                return OptionalDouble.empty();
            }
        }
        return OptionalDouble.of(shift);
    }
}
