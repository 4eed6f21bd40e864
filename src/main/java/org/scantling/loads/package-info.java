/**
 * What presses, pulls and pushes on the walk: dead weight, vines, snow on an open top, wind on
 * lattice, leaves and canopy, and the allowable-stress combinations of them.
 *
 * <p>Pure functions of numbers: every tabulated value (force coefficients, shares, duration
 * factors, exposure constants) is handed in by the caller, and every result keeps its working.
 *
 * <p>May depend on: {@code org.scantling.quantity}. Entry points: {@link
 * org.scantling.loads.FlatRoofSnow}, {@link org.scantling.loads.OpenTop}, {@link
 * org.scantling.loads.VelocityPressure}, {@link org.scantling.loads.SideWind}, {@link
 * org.scantling.loads.LoadCombination}.
 */
@NullMarked
package org.scantling.loads;

import org.jspecify.annotations.NullMarked;
