/** What a developer who uses nextpull as a library would write: examples of the handbook page "As a library", compiled and run here. */
@NullMarked
package examples;

import org.jspecify.annotations.NullMarked;
