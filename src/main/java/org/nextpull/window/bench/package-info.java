/**
 * The bench page: what a day says now, in large print, with its charts and pulls. {@code BenchPresenter} and the records that it makes
 * have no Swing types; the views only show them. Imports {@code report}, {@code chart}, {@code session}, the result rooms and the
 * other packages of the window.
 */
@NullMarked
package org.nextpull.window.bench;

import org.jspecify.annotations.NullMarked;
