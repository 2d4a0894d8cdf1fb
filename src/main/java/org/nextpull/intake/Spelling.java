package org.nextpull.intake;

import org.nextpull.channel.Role;

/**
 * One way to write a channel's name.
 *
 * @param compact the spelling in small letters and digits only
 * @param role what it means
 * @param needsUnit whether it counts only beside a unit that fits
 * @param gauge whether it is a pressure above that of the air
 */
record Spelling(String compact, Role role, boolean needsUnit, boolean gauge) {}
