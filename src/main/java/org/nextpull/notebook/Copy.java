package org.nextpull.notebook;

import java.nio.file.Path;

/**
 * A back-up that was written and read back.
 *
 * @param file where it lies
 * @param sessions how many sessions it holds
 * @param bytes its size
 */
public record Copy(Path file, int sessions, long bytes) {}
