package org.nextpull.window.start;

/**
 * A sentence with how it is to be taken.
 *
 * @param isError whether nothing goes on with it
 * @param sentence for a person
 */
record Said(boolean isError, String sentence) {}
