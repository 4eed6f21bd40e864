package org.scantling.problem;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;

/**
 * The site on which the base design has stood. What its file does not say of that place is taken as
 * on the site that is asked about, so that both are held against the same limits: the soil, the
 * climber, the timber, how much snow an open top keeps.
 */
public final class OwnPlace {
  private OwnPlace() {}

  /** Empty where nobody has said what snow and wind the base has stood through. */
  public static Optional<Site> of(Site here) {
    return here.base()
        .proven()
        .filter(stood -> stood.climate().groundSnowPsf().isPresent())
        .filter(stood -> stood.climate().windSpeedMph().isPresent())
        .map(stood -> site(here, stood));
  }

  private static Site site(Site here, BaseDesign.Proven stood) {
    BaseDesign.Posts posts = here.base().posts();
    return new Site(
        here.base().title(),
        here.base(),
        climate(here.climate(), stood.climate()),
        new Site.Ground(stood.soil().or(() -> here.ground().soil()), stood.slopePercent()),
        new Site.Walkway(
            posts.along().overallIn(), OptionalDouble.empty(), List.of(), OptionalDouble.empty()),
        stood.vine().map(vine -> List.of(new Site.Planting(vine))).orElse(here.planting()),
        timber(here),
        preferences(here.preferences()));
  }

  /** Its own where its file names any, as it is sold here. */
  private static Site.Materials timber(Site here) {
    return here.base()
        .materials()
        .filter(Site.Materials::named)
        .map(
            own ->
                new Site.Materials(
                    own.species(), own.grade(), here.materials().market(), own.byRole()))
        .orElse(here.materials());
  }

  /** No check reads the depth of frost, so none at all will do where the file does not say it. */
  private static Site.Climate climate(Site.Climate here, Site.Climate stood) {
    return new Site.Climate(
        OptionalDouble.of(stood.frostDepthIn().orElse(0)),
        stood.groundSnowPsf(),
        stood.windSpeedMph(),
        stood.exposure().or(here::exposure),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  private static Site.Preferences preferences(Site.Preferences here) {
    return new Site.Preferences(
        "auto",
        "auto",
        DesignProblem.KEEP_LOOK,
        "published",
        "code",
        here.riskCategory(),
        here.snowShare(),
        "auto");
  }
}
