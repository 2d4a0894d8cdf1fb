/**
 * The only place where the chain is written down: plan and recordings in, an immutable result out; replay of a day pull by pull.
 * Imports the rooms {@code unit} to {@code advice}, but not {@code math}, {@code intake} and {@code engine}.
 */
@NullMarked
package org.nextpull.session;

import org.jspecify.annotations.NullMarked;
