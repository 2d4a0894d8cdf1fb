package org.nextpull.cli;

/** Exit statuses of the program. */
final class ExitCodes {
    static final int DONE = 0;
    /** The input could not be used, no pull was found, some of many files failed, or the output could not be written. */
    static final int BAD_INPUT = 1;

    static final int WRONG_USAGE = 2;
    static final int FAULT = 3;
    /** By Ctrl-C or a system that shuts down; 128 and the number of the signal, as shells have it. */
    static final int INTERRUPTED = 130;

    private ExitCodes() {}
}
