package org.scantling.confirm;

/**
 * How timber is used, as far as that changes what it may bear.
 *
 * @param wet true outdoors, where its moisture stays above 19 percent for long
 * @param incised true where its surface was cut open for the preservative
 * @param repetitiveFactor C_r on the bending of dimension lumber, 1 for a piece on its own
 */
public record Service(boolean wet, boolean incised, double repetitiveFactor) {}
