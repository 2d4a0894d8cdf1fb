package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.List;

/** Finds the comments in a text that is TOML. */
final class Comments {
    private static final int TRIPLE = 3;

    private final String text;
    private final List<Comment> found = new ArrayList<>();
    private int at;
    private int line = 1;
    private boolean blank = true;

    private Comments(String text) {
        this.text = text;
    }

    /**
     * A comment.
     *
     * @param line its line, from 1
     * @param isAlone whether nothing else stands in that line
     * @param text with its sign
     */
    record Comment(int line, boolean isAlone, String text) {}

    static List<Comment> of(String text) {
        Comments comments = new Comments(text);
        while (comments.at < text.length()) {
            comments.step();
        }
        return comments.found;
    }

    private void step() {
        char character = text.charAt(at);
        if (character == '#') {
            comment();
        } else if (character == '"' || character == '\'') {
            blank = false;
            string(character);
        } else {
            pass();
        }
    }

    private void pass() {
        char character = text.charAt(at);
        at++;
        if (character == '\n') {
            line++;
            blank = true;
        } else if (!Character.isWhitespace(character)) {
            blank = false;
        }
    }

    private void comment() {
        int end = text.indexOf('\n', at);
        end = end < 0 ? text.length() : end;
        found.add(new Comment(line, blank, text.substring(at, end).stripTrailing()));
        at = end;
    }

    private void string(char quote) {
        String one = String.valueOf(quote);
        String end = text.startsWith(one.repeat(TRIPLE), at) ? one.repeat(TRIPLE) : one;
        at += end.length();
        while (at < text.length() && !text.startsWith(end, at)) {
            if (quote == '"' && text.charAt(at) == '\\') {
                pass();
            }
            if (at < text.length()) {
                pass();
            }
        }
        at = Math.min(text.length(), at + end.length());
        // a string over several lines may end with up to two more of its quotes
        while (end.length() == TRIPLE && at < text.length() && text.charAt(at) == quote) {
            at++;
        }
        blank = false;
    }
}
