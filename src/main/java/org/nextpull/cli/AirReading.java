package org.nextpull.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;

/** What somebody may read off an instrument, each in a unit of its own; its id is an option and a key of {@code --later}. */
enum AirReading {
    BARO_KPA(Kind.BAROMETER, Unit.KILOPASCAL),
    BARO_HPA(Kind.BAROMETER, Unit.HECTOPASCAL),
    BARO_INHG(Kind.BAROMETER, Unit.INCH_OF_MERCURY),
    AIR_C(Kind.AIR, Unit.CELSIUS),
    AIR_F(Kind.AIR, Unit.FAHRENHEIT),
    HUMIDITY_PERCENT(Kind.HUMIDITY, Unit.PERCENT),
    WET_BULB_C(Kind.WET_BULB, Unit.CELSIUS),
    WET_BULB_F(Kind.WET_BULB, Unit.FAHRENHEIT),
    DEW_POINT_C(Kind.DEW_POINT, Unit.CELSIUS),
    DEW_POINT_F(Kind.DEW_POINT, Unit.FAHRENHEIT);

    /** What is read. */
    enum Kind {
        BAROMETER,
        AIR,
        HUMIDITY,
        WET_BULB,
        DEW_POINT
    }

    private final Kind kind;
    private final Unit unit;

    AirReading(Kind kind, Unit unit) {
        this.kind = kind;
        this.unit = unit;
    }

    Kind kind() {
        return kind;
    }

    Unit unit() {
        return unit;
    }

    boolean isTemperature() {
        return unit.quantity() == Quantity.TEMPERATURE;
    }

    String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<AirReading> find(String id) {
        String wanted = id.strip().replace('_', '-');
        return Arrays.stream(values())
                .filter(reading -> reading.id().equalsIgnoreCase(wanted))
                .findFirst();
    }

    static String ids() {
        return Arrays.stream(values()).map(AirReading::id).collect(Collectors.joining(", "));
    }
}
