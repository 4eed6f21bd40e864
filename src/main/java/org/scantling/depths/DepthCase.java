package org.scantling.depths;

import java.util.Optional;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.search.SiteDemand;

/**
 * What one cell of a table of hole depths is about.
 *
 * @param post its size
 * @param heightIn from finished ground to the top of the post
 * @param bayIn center to center of the posts along the walk
 * @param soil class of the soils table
 * @param fill tamped-soil, gravel or concrete
 * @param windSpeedMph strength-level gust
 */
public record DepthCase(
    String post,
    double heightIn,
    double bayIn,
    String soil,
    String fill,
    double windSpeedMph,
    double frostDepthIn) {

  /** The site with this soil, wind and frost. */
  Site on(Site site) {
    Site soiled = new SiteDemand(Demand.SOIL).with(site, new Outcome.Word(soil));
    Site blown = with(soiled, Demand.WIND_SPEED, Measure.mph(windSpeedMph));
    return with(blown, Demand.FROST_DEPTH, Measure.inches(frostDepthIn));
  }

  private static Site with(Site site, Demand demand, Measure measure) {
    return new SiteDemand(demand).with(site, new Outcome.Amount(measure));
  }

  /** The structure with these posts in this fill; what stands on steel stays as it stands. */
  BaseDesign of(BaseDesign design) {
    BaseDesign.Posts posts = design.posts();
    return spread(design)
        .with(
            new BaseDesign.Posts(
                post,
                posts.rowSpacingIn(),
                posts.along().stretchedTo(bayIn),
                heightIn,
                posts.embedmentIn(),
                inTheGround(posts) ? footing() : posts.footing(),
                inTheGround(posts) ? Optional.of(fill) : posts.backfill(),
                posts.holeDiameterIn()));
  }

  /** About as many crossbeams to a length as before. */
  private BaseDesign spread(BaseDesign design) {
    BaseDesign.Posts posts = design.posts();
    BaseDesign.Crossbeams now = design.crossbeams();
    double ratio = bayIn / posts.bayIn();
    int count = Math.max(posts.bays() + 1, (int) Math.round((now.count() - 1) * ratio) + 1);
    return design.with(
        new BaseDesign.Crossbeams(
            now.size(), count, now.overhangIn(), now.notchIn(), now.endCut(), now.atPosts()));
  }

  /** True for posts that no bracket and no base holds over a pier. */
  public static boolean inTheGround(BaseDesign.Posts posts) {
    return posts.footing().equals(WayOfBuilding.EMBEDDED)
        || posts.footing().equals(WayOfBuilding.CONCRETE);
  }

  private String footing() {
    return fill.equals(WayOfBuilding.CONCRETE) ? WayOfBuilding.CONCRETE : WayOfBuilding.EMBEDDED;
  }
}
