/**
 * What all pages of the window share: the switch between them, keys and their list, questions at the foot, cautions, banners. Imports
 * {@code report} and {@code window.look}.
 */
@NullMarked
package org.nextpull.window.page;

import org.jspecify.annotations.NullMarked;
