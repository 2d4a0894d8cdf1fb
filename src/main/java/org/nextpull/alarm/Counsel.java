package org.nextpull.alarm;

import org.nextpull.plan.Limit;

/**
 * What to do when a limit is met. Every one begins with lifting. Retard is counselled for knock alone: it heats the exhaust, so an
 * exhaust that is too hot asks for richer, never for less advance.
 */
public enum Counsel {
    /** Lift; next with less advance. */
    LIFT_THEN_RETARD(Next.LESS_ADVANCE),
    /** Lift; next richer where the plan allows it, and no leaner. */
    LIFT_THEN_RICHER(Next.RICHER),
    /** Lift and let it cool; next richer where the plan allows it, with no further retard and no leaner. */
    LIFT_AND_COOL_THEN_RICHER(Next.RICHER),
    /** Lift and let it cool; nothing else changes. */
    LIFT_AND_COOL(Next.AS_BEFORE),
    /** Lift and switch off; find out why before the engine runs again. */
    LIFT_AND_SWITCH_OFF(Next.NOTHING_UNTIL_FOUND),
    /** Lift; find out why the fuel runs short before the next pull. */
    LIFT_AND_LOOK_AT_FUEL(Next.NOTHING_UNTIL_FOUND),
    /** Lift; less boost before the next pull. */
    LIFT_THEN_LESS_BOOST(Next.LESS_BOOST),
    /** Lift earlier next time. */
    LIFT(Next.AS_BEFORE);

    /** What changes before the next pull. */
    public enum Next {
        AS_BEFORE,
        LESS_ADVANCE,
        RICHER,
        LESS_BOOST,
        NOTHING_UNTIL_FOUND
    }

    private final Next next;

    Counsel(Next next) {
        this.next = next;
    }

    public Next next() {
        return next;
    }

    /** What is counselled when that limit is met. */
    public static Counsel of(Limit limit) {
        return switch (limit) {
            case KNOCK -> LIFT_THEN_RETARD;
            case LEAN -> LIFT_THEN_RICHER;
            case EXHAUST -> LIFT_AND_COOL_THEN_RICHER;
            case COOLANT, OIL, INLET_AIR -> LIFT_AND_COOL;
            case OIL_PRESSURE -> LIFT_AND_SWITCH_OFF;
            case FUEL_PRESSURE, INJECTOR_DUTY -> LIFT_AND_LOOK_AT_FUEL;
            case BOOST -> LIFT_THEN_LESS_BOOST;
            case SPEED -> LIFT;
        };
    }
}
