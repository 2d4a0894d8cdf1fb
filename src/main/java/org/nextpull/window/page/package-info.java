/**
 * What all pages of the window share: the switch between them, keys and their list, questions at the foot, cautions, banners, charts. Imports
 * {@code report}, {@code chart}, {@code unit}, {@code window.look} and {@code window.work}.
 */
@NullMarked
package org.nextpull.window.page;

import org.jspecify.annotations.NullMarked;
