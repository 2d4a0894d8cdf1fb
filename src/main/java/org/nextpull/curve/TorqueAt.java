package org.nextpull.curve;

/** The shaft that a torque is stated at. */
public enum TorqueAt {
    CRANK,
    /** At the driven wheels, as chassis dynos state it: power at the wheels over engine speed. */
    WHEEL,
    ROLLER
}
