package org.nextpull.notebook;

import java.time.Instant;
import java.util.Optional;
import org.nextpull.channel.EngineSetting;

/**
 * What was advised at the time.
 *
 * @param at when
 * @param pulls how many pulls there were then
 * @param action what to do, as JSON writes it
 * @param code why, as JSON writes it
 * @param setting what was to be set
 * @param leave what was to be left in the engine if the day had ended then; empty parts where nothing was
 * @param leaveBy what had decided that, as JSON writes it
 */
public record KeptAdvice(
        Instant at,
        int pulls,
        String action,
        String code,
        EngineSetting setting,
        EngineSetting leave,
        Optional<String> leaveBy) {}
