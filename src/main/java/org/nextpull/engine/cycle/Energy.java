package org.nextpull.engine.cycle;

/**
 * Where the heat of a closed cycle went, in J.
 *
 * @param released heat of combustion
 * @param work work on the piston
 * @param kept what did not become work
 */
public record Energy(double released, double work, Kept kept) {
    /**
     * What did not become work.
     *
     * @param lost heat given to the walls in J
     * @param stored rise of internal energy in J
     */
    public record Kept(double lost, double stored) {}
}
