/**
 * What is wrong or worth saying: a code, a severity, named values and a place. The sentences that people read are made in
 * {@code report}; here is only what they are made from. Imports nothing of the project.
 */
@NullMarked
package org.nextpull.finding;

import org.jspecify.annotations.NullMarked;
