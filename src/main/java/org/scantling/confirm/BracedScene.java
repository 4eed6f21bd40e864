package org.scantling.confirm;

import java.util.List;

/**
 * The post of a braced walk that is worked hardest, with what the frame came to there: what can be
 * gone over by statics from the forces at the feet. Forces count positive against the wind.
 *
 * @param post load, moments and the sum
 * @param index of the post in its plane, from 0
 * @param postCount posts in the plane
 * @param bayIn between two posts
 * @param heightIn from bracket to the centre of the beam
 * @param legIn of a brace along the post
 * @param windFactor what the combination counts of the wind
 * @param verticalLb what stands on all feet of the plane
 * @param criticalLb what would make the plane lean over by itself
 * @param topLb push at the top of each post, sway counted
 * @param spreadLbPerIn push on each inch of the post, sway counted
 * @param feetLb sideways force of each foot
 * @param standsLb what stands on each foot
 * @param kneeInLb bending where the brace meets the post
 * @param mostAtIn height at which it is bent most
 * @param oneBraceLb force in the brace that pushes the knee most, with the wind
 * @param otherBraceLb the same of the other one, 0 where there is none
 * @param pulled true where that brace is pulled
 * @param bracesUpLb what both pull up at the post
 * @param pressedAtFoot true where the post is pressed most at its foot
 */
public record BracedScene(
    PostScene post,
    int index,
    int postCount,
    double bayIn,
    double heightIn,
    double legIn,
    double windFactor,
    double verticalLb,
    double criticalLb,
    double topLb,
    double spreadLbPerIn,
    List<Double> feetLb,
    List<Double> standsLb,
    double kneeInLb,
    double mostAtIn,
    double oneBraceLb,
    double otherBraceLb,
    boolean pulled,
    double bracesUpLb,
    boolean pressedAtFoot) {}
