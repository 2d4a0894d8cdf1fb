/**
 * What all pages of the window share: the switch between them, keys and their list, questions at the foot, cautions, banners, charts, and
 * the threads that work and draw away from the event thread. Imports {@code app}, {@code report}, {@code chart}, {@code unit} and {@code window.look}.
 */
@NullMarked
package org.nextpull.window.page;

import org.jspecify.annotations.NullMarked;
