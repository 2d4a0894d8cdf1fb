package org.nextpull.simulator;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;

/** Writes samples as the text of a log. */
final class LogText {
    /** What stands on top of every log that no real engine made. */
    static final String INVENTED = "invented demo data: a model engine on a simulated brake, no real engine was run";

    private LogText() {}

    /**
     * The text of a log.
     *
     * @param parts samples in order, all of the same channels
     * @param dialect how it is written
     * @param words columns of words that are written behind the numbers: labels, fuel
     * @param preamble remarks, a line each, written before the headers behind a hash sign
     */
    public static String of(List<Samples> parts, LogDialect dialect, List<Role> words, List<String> preamble) {
        StringBuilder text = new StringBuilder();
        preamble.forEach(line -> text.append("# ").append(line).append('\n'));
        List<Channel> channels = parts.get(0).channels();
        List<Role> roles = new ArrayList<>();
        channels.forEach(channel -> roles.add(channel.role()));
        roles.addAll(words);
        String separator = String.valueOf(dialect.separator());
        text.append(String.join(separator, roles.stream().map(dialect::header).toList()))
                .append('\n');
        if (dialect.hasUnitRow()) {
            text.append(String.join(
                            separator, roles.stream().map(dialect::unitCell).toList()))
                    .append('\n');
        }
        for (Samples samples : parts) {
            for (int row = 0; row < samples.rows(); row++) {
                List<String> cells = new ArrayList<>();
                for (Channel channel : channels) {
                    cells.add(number(dialect, channel.role(), samples.find(channel, row)));
                }
                for (Role role : words) {
                    Optional<String> word = role == Role.FUEL ? samples.fuel(row) : samples.label(row);
                    cells.add(word.orElse(""));
                }
                text.append(String.join(separator, cells)).append('\n');
            }
        }
        return text.toString();
    }

    private static String number(LogDialect dialect, Role role, OptionalDouble value) {
        if (value.isEmpty()) {
            return "";
        }
        LogDialect.Column column = dialect.column(role);
        double shown = column.unit().fromSi(value.getAsDouble());
        String plain = new BigDecimal(shown)
                .setScale(column.decimals(), RoundingMode.HALF_EVEN)
                .toPlainString();
        return plain.replace('.', dialect.decimal());
    }
}
