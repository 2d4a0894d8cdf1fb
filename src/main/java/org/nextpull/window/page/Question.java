package org.nextpull.window.page;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A question at the foot of the window.
 *
 * @param title what is asked
 * @param fields what can be filled in, the first has the focus; none asks for yes or no
 * @param take is given the fields' texts in order; it answers with what is wrong with them, and then the question stays
 */
public record Question(String title, List<Field> fields, Function<List<String>, Optional<String>> take) {
    public Question {
        fields = List.copyOf(fields);
    }

    /**
     * One field.
     *
     * @param name what it is
     * @param text what it holds at first
     * @param wide whether it needs much room
     */
    public record Field(String name, String text, boolean wide) {
        public static Field narrow(String name, String text) {
            return new Field(name, text, false);
        }

        public static Field wide(String name, String text) {
            return new Field(name, text, true);
        }
    }
}
