/**
 * Serial ports: which there are, how they are set, and threads that only read them and hand on. The only package that sees the serial
 * library, which is loaded when a port is first asked for, so everything else works without it. Imports {@code finding}, {@code plan}
 * and {@code intake.wire}.
 */
@NullMarked
package org.nextpull.intake.serial;

import org.jspecify.annotations.NullMarked;
