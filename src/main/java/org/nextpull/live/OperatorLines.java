package org.nextpull.live;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.session.Act;
import org.nextpull.session.ActLine;

/** The acts in what arrives from the operator, who is a source like the others: each act a line. */
final class OperatorLines {
    /** Name of the source; no port has it. */
    static final String SOURCE = "operator";

    private final ByteArrayOutputStream rest = new ByteArrayOutputStream();

    List<Act> acts(Chunk chunk) {
        List<Act> acts = new ArrayList<>();
        for (byte next : chunk.toArray()) {
            if (next == '\n') {
                ActLine.read(rest.toString(StandardCharsets.UTF_8)).ifPresent(acts::add);
                rest.reset();
            } else {
                rest.write(next);
            }
        }
        return acts;
    }

    static String line(Act act) {
        return ActLine.write(act) + "\n";
    }
}
