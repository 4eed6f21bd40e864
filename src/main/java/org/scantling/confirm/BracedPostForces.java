package org.scantling.confirm;

import org.scantling.mechanics.FrameResult;
import org.scantling.mechanics.MemberResult;

/**
 * What one post of a braced plane goes through in one combination, each the worst along its length.
 *
 * @param pressedLb greatest pressure along it, 0 or more
 * @param pulledLb greatest pull along it, 0 or more
 * @param momentInLb greatest bending
 * @param kneeMomentInLb bending where the brace meets it
 * @param shearLb greatest shear
 * @param headPullLb pull at its top, where it holds the beam; negative while the beam presses
 * @param headSideLb sideways force at its top
 */
record BracedPostForces(
    double pressedLb,
    double pulledLb,
    double momentInLb,
    double kneeMomentInLb,
    double shearLb,
    double headPullLb,
    double headSideLb) {

  static BracedPostForces of(FrameResult result, int post) {
    MemberResult shaft = result.member(BracedPlane.shaft(post));
    MemberResult neck = result.member(BracedPlane.neck(post));
    return new BracedPostForces(
        Math.max(-shaft.mostCompression().amount(), -neck.mostCompression().amount()),
        Math.max(shaft.mostTension().amount(), neck.mostTension().amount()),
        Math.max(Math.abs(shaft.largestMoment().amount()), Math.abs(neck.largestMoment().amount())),
        Math.abs(shaft.momentInLb(shaft.lengthIn())),
        Math.max(Math.abs(shaft.largestShear().amount()), Math.abs(neck.largestShear().amount())),
        neck.axialLb(neck.lengthIn()),
        Math.abs(neck.shearLb(neck.lengthIn())));
  }
}
