package org.nextpull.intake.wire;

import java.util.ArrayList;
import java.util.List;

/** Finds the fields of a line. */
interface LineParser {
    /** What a line is. */
    enum Result {
        /** It has values; the fields are filled. */
        VALUES,
        /** Nothing for us: a remark, or a sentence that nobody asked for. */
        PASSED_OVER,
        /** It cannot be read. */
        BROKEN,
        /** It is a sentence with a wrong checksum. */
        WRONG_CHECKSUM
    }

    /**
     * Parses a line.
     *
     * @param values takes the values
     * @param names takes their names, one for each value, where the line has them; else left without fields
     */
    Result parse(byte[] line, int start, int end, LineFields values, Names names);

    /** Names that a line gives to its values, and the address of a sentence. */
    final class Names {
        private String address = "";
        private final List<String> all = new ArrayList<>();

        void clear() {
            all.clear();
            address = "";
        }

        void add(String name) {
            all.add(name);
        }

        void address(String newAddress) {
            address = newAddress;
        }

        String address() {
            return address;
        }

        List<String> all() {
            return all;
        }
    }
}
