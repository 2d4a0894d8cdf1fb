package org.nextpull.engine.bench;

import java.util.List;

/**
 * Full-load spark advance over speed: straight lines between nodes, flat beyond them.
 *
 * @param nodes at least one, speeds ascending
 */
public record SparkMap(List<Node> nodes) {
    /**
     * One node.
     *
     * @param rpm engine speed
     * @param deg advance in degrees before top dead centre
     */
    public record Node(double rpm, double deg) {}

    /**
     * Accepts one node or more.
     *
     * @throws IllegalArgumentException without a node
     */
    public SparkMap {
        nodes = List.copyOf(nodes);
        if (nodes.isEmpty()) {
            throw new IllegalArgumentException("a spark map needs a node");
        }
    }

    /** The same advance at every speed. */
    public static SparkMap flat(double deg) {
        return new SparkMap(List.of(new Node(0, deg)));
    }

    /** Advance at a speed. */
    public double degAt(double rpm) {
        Node last = nodes.get(0);
        for (Node node : nodes) {
            if (rpm < node.rpm()) {
                double width = node.rpm() - last.rpm();
                return width <= 0 ? node.deg() : last.deg() + (node.deg() - last.deg()) * (rpm - last.rpm()) / width;
            }
            last = node;
        }
        return last.deg();
    }

    /** Degrees added everywhere. */
    public SparkMap plus(double deg) {
        return new SparkMap(nodes.stream()
                .map(node -> new Node(node.rpm(), node.deg() + deg))
                .toList());
    }
}
