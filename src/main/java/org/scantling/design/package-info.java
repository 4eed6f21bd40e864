/**
 * The nouns of the trade as plain records: the base design, the site, its demands, and the
 * proposal.
 *
 * <p>Numbers are inches, pounds, psf, mph and degrees, with the unit in the name. Nothing here
 * decides or computes.
 *
 * <p>May depend on: quantity. Entry points: {@link org.scantling.design.Site}, {@link
 * org.scantling.design.BaseDesign}.
 */
@NullMarked
package org.scantling.design;

import org.jspecify.annotations.NullMarked;
