package org.nextpull.live;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.session.ActionLine;
import org.nextpull.session.OperatorAction;

/** The acts in what arrives from the operator, who is a source like the others: each act a line. */
final class OperatorLines {
    /** Name of the source; no port has it. */
    static final String SOURCE = "operator";

    private final ByteArrayOutputStream rest = new ByteArrayOutputStream();

    List<OperatorAction> acts(Chunk chunk) {
        List<OperatorAction> acts = new ArrayList<>();
        for (byte next : chunk.toArray()) {
            if (next == '\n') {
                ActionLine.read(rest.toString(StandardCharsets.UTF_8)).ifPresent(acts::add);
                rest.reset();
            } else {
                rest.write(next);
            }
        }
        return acts;
    }

    static String line(OperatorAction act) {
        return ActionLine.write(act) + "\n";
    }
}
