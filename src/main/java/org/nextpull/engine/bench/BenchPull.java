package org.nextpull.engine.bench;

import org.nextpull.channel.Samples;

/**
 * A pull on the simulated brake.
 *
 * @param number order in the day, from 1
 * @param setting what was set
 * @param conditions what really held
 * @param samples what was logged
 */
public record BenchPull(int number, BenchSetting setting, PullConditions conditions, Samples samples) {}
