package org.nextpull.plan.text;

import java.util.OptionalDouble;
import org.nextpull.plan.EngineFacts;
import org.nextpull.plan.EngineFacts.Induction;
import org.nextpull.unit.Unit;

/** Table {@code [engine]}. */
final class EngineTable {
    private EngineTable() {}

    static EngineFacts read(TableReader table) {
        OptionalDouble litres = table.number("displacement_l", new Range(0.01, 100));
        return new EngineFacts(
                table.text("name"),
                Si.of(Unit.LITRE, litres),
                table.whole("cylinders", new Range(1, 48)),
                table.number("compression_ratio", new Range(2, 40)),
                table.word("induction", Induction.NATURAL));
    }

    static String write(EngineFacts engine) {
        TableWriter table = new TableWriter("[engine]");
        table.text("name", engine.name());
        table.quantity("displacement_l", Unit.LITRE, engine.displacementM3());
        engine.cylinders().ifPresent(cylinders -> table.number("cylinders", cylinders));
        table.number("compression_ratio", engine.compressionRatio());
        table.word("induction", engine.induction());
        return table.written();
    }
}
