/**
 * The planner: stages of a day, the next setting, when to stop, each with a typed reason. Sees no samples and no curves; present
 * conditions come as a record. Imports {@code unit}, {@code finding}, {@code channel}, {@code plan}, {@code response} and {@code fit}.
 */
@NullMarked
package org.nextpull.advice;

import org.jspecify.annotations.NullMarked;
