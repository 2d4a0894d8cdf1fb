package org.nextpull.fit;

/** Which earlier days an experience rests on. */
public enum Kin {
    /** Days of the same engine. */
    ENGINE,
    /** Days of engines of the same class: induction, cylinders, displacement and fuel. */
    CLASS
}
