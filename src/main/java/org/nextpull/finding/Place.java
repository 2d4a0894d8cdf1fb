package org.nextpull.finding;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * Where a finding belongs; any part may be absent.
 *
 * @param file name as the user gave it
 * @param line line of the file, from 1
 * @param column column of the line, from 1
 * @param key key of a plan file, dotted, or header of a log's column
 * @param pull number of the pull or candidate
 */
public record Place(
        Optional<String> file, OptionalLong line, OptionalInt column, Optional<String> key, OptionalInt pull) {
    private static final Place NOWHERE = new Place(
            Optional.empty(), OptionalLong.empty(), OptionalInt.empty(), Optional.empty(), OptionalInt.empty());

    public static Place nowhere() {
        return NOWHERE;
    }

    public static Place inFile(String file) {
        return NOWHERE.withFile(file);
    }

    public static Place atLine(String file, long line) {
        return NOWHERE.withFile(file).withLine(line);
    }

    public static Place ofPull(int pull) {
        return NOWHERE.withPull(pull);
    }

    Place withFile(String newFile) {
        return new Place(Optional.of(newFile), line, column, key, pull);
    }

    public Place withLine(long newLine) {
        return new Place(file, OptionalLong.of(newLine), column, key, pull);
    }

    public Place withColumn(int newColumn) {
        return new Place(file, line, OptionalInt.of(newColumn), key, pull);
    }

    public Place withKey(String newKey) {
        return new Place(file, line, column, Optional.of(newKey), pull);
    }

    public Place withPull(int newPull) {
        return new Place(file, line, column, key, OptionalInt.of(newPull));
    }
}
