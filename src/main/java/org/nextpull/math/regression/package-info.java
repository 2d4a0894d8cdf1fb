/**
 * Least squares with covariance scaled by the residuals, and what is read off a fit:
 * Welch-Satterthwaite degrees of freedom. A fit that the data cannot carry is a value, not an exception. Imports
 * {@code math} only.
 */
@NullMarked
package org.nextpull.math.regression;

import org.jspecify.annotations.NullMarked;
