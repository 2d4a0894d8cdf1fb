package org.nextpull.simulator;

/**
 * An invented log with the truth behind it.
 *
 * @param name file name without its ending
 * @param seed that it is made from
 * @param log text of the log
 * @param truth text of the truth, in TOML
 */
public record DemoLog(String name, long seed, String log, String truth) {}
