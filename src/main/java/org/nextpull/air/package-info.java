/**
 * Air and what it does to torque: the state of the intake air, vapour pressure from humidity, wet bulb or dew point, one small class
 * for each correction standard, checks of the barometer. Imports {@code unit} and {@code finding}.
 */
@NullMarked
package org.nextpull.air;

import org.jspecify.annotations.NullMarked;
