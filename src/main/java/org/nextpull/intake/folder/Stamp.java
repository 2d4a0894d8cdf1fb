package org.nextpull.intake.folder;

import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

/**
 * What a folder says of a file. Only ever compared with an earlier one: the clock of a network share need not be ours.
 *
 * @param size bytes
 * @param changedMs time of the last change, as the file system has it
 * @param key what stays the same when a file gets another name; empty where the file system has no such thing
 */
record Stamp(long size, long changedMs, Optional<Object> key) {
    static Stamp of(BasicFileAttributes attributes) {
        return new Stamp(
                attributes.size(), attributes.lastModifiedTime().toMillis(), Optional.ofNullable(attributes.fileKey()));
    }
}
