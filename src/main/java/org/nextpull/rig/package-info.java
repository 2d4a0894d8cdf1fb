/**
 * The model engine as a source of logs: dialects of log text, truth beside it, and the invented logs that come with the project.
 * Imports {@code engine}, {@code channel}, {@code unit} and {@code finding}.
 */
@NullMarked
package org.nextpull.rig;

import org.jspecify.annotations.NullMarked;
