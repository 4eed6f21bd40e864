/**
 * Structural confirmation: takes one candidate, asks the kernels, and returns every check with its
 * worst load combination. Decides nothing.
 *
 * <p>May depend on: quantity, design, reasons, mechanics, timber, loads, ground, tables. Entry
 * points: {@link org.scantling.confirm.CrossbeamChecks}, {@link
 * org.scantling.confirm.HeaderChecks}, {@link org.scantling.confirm.PostChecks}; for walks on
 * brackets {@link org.scantling.confirm.BracedWalk}; for joints {@link
 * org.scantling.confirm.JointForces}.
 */
@NullMarked
package org.scantling.confirm;

import org.jspecify.annotations.NullMarked;
