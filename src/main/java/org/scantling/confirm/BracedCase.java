package org.scantling.confirm;

import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.FrameResult;
import org.scantling.mechanics.Sway;

/**
 * One combination on one braced plane, second-order sway included.
 *
 * @param combination the combination
 * @param all forces and movements under everything in it
 * @param still the same without the push of the wind
 * @param sway vertical load against the load at which the plane leans over by itself
 * @param driftIn movement of the top under the push, the added sway included
 * @param onPostLb what each post carries besides the beam of this plane
 */
record BracedCase(
    LoadCombination combination,
    FrameResult all,
    FrameResult still,
    Sway sway,
    double driftIn,
    double onPostLb) {}
