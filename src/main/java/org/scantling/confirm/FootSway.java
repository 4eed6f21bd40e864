package org.scantling.confirm;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.scantling.ground.EmbeddedPost;
import org.scantling.ground.LateralLoad;
import org.scantling.ground.TurnedFoot;
import org.scantling.ground.TurningFoot;

/**
 * How deep a foot must stand so that bending and turning together do not let the top of the post
 * sway too far, and what of the sway is its turning.
 */
public final class FootSway {
  private final FootingWork.Foot foot;
  private final List<PostSway> sways;
  private final ToDoubleFunction<SidePush> mostIn;

  /**
   * @param post the size that was decided
   */
  public FootSway(FootingWork.Foot foot, PostChecks posts, Material post) {
    this.foot = foot;
    this.sways = posts.sways(post);
    this.mostIn = posts::mostSwayIn;
  }

  /**
   * The depth from which on the sway keeps within its limit.
   *
   * @param limitRatio how much of the limit may be used, 1 or what a record eases it to
   * @return 0 where nothing turns, endless where bending alone takes all that may be used
   */
  public double depthIn(double limitRatio) {
    return sways.stream()
        .mapToDouble(each -> depthIn(each, limitRatio * mostIn.applyAsDouble(each.push())))
        .max()
        .orElse(0);
  }

  private double depthIn(PostSway sway, double allowedIn) {
    LateralLoad push = push(sway);
    if (!(foot.stiffeningLbPerIn3() > 0 && push.forceLb() > 0)) {
      return 0;
    }
    double leftIn = sway.leftToTurnIn(allowedIn);
    return sway.stands() && leftIn > 0
        ? TurningFoot.depthIn(push, foot.stiffeningLbPerIn3(), leftIn, sway.push().heightIn())
        : Double.POSITIVE_INFINITY;
  }

  /**
   * @param groundIn how far the post moves at the ground
   * @param turnedIn how far its top moves because the foot turns
   * @param bentIn how far its top moves because the post bends and leans
   * @param mostIn how far it may move at the top
   * @param turnsAtIn how deep the point lies about which the foot turns
   * @param heightIn ground to top
   */
  public record Moved(
      double groundIn,
      double turnedIn,
      double bentIn,
      double mostIn,
      double turnsAtIn,
      double heightIn) {

    /** Where the top goes if the post moves that much at the ground. */
    public double topIn(double atGroundIn) {
      return atGroundIn * (turnsAtIn + heightIn) / turnsAtIn;
    }
  }

  /** What moves under the push that turns the foot farthest, in a hole of that depth. */
  public Moved moved(double depthIn) {
    return sways.stream()
        .map(each -> moved(each, depthIn))
        .reduce((one, other) -> one.turnedIn() >= other.turnedIn() ? one : other)
        .orElseThrow();
  }

  private Moved moved(PostSway sway, double depthIn) {
    LateralLoad push = push(sway);
    return new Moved(
        foot.turnIn(push, depthIn, 0),
        foot.turnIn(push, depthIn, sway.push().heightIn()),
        sway.leaningIn(),
        mostIn.applyAsDouble(sway.push()),
        new EmbeddedPost(push, depthIn).turnsAtIn(),
        sway.push().heightIn());
  }

  /**
   * The sway that is greatest in a combination, of a foot in a hole of that depth.
   *
   * @return nothing where no foot turns
   */
  public Optional<Swayed> most(double depthIn, String combination) {
    return foot.stiffeningLbPerIn3() > 0
        ? sways.stream()
            .filter(each -> each.combination().id().equals(combination) && each.stands())
            .filter(each -> push(each).forceLb() > 0)
            .map(each -> Swayed.of(each, turned(each, depthIn)))
            .max(Comparator.comparingDouble(Swayed::swayIn))
        : Optional.empty();
  }

  private TurnedFoot turned(PostSway sway, double depthIn) {
    return new TurningFoot(push(sway), depthIn, foot.stiffeningLbPerIn3())
        .turned(sway.push().heightIn());
  }

  private static LateralLoad push(PostSway sway) {
    return new LateralLoad(sway.windFactor() * sway.push().forceLb(), sway.push().resultantIn());
  }
}
