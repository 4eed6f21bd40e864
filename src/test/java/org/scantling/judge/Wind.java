package org.scantling.judge;

import java.util.Map;

/** Wind on the open frame by ASCE 7-16 29.4: each row in full, leaves by their own drag. */
final class Wind {
  private final Design design;
  private final Climate climate;

  Wind(Design design, Climate climate) {
    this.design = design;
    this.climate = climate;
  }

  /** Across the walk, on a post that has one bay beside it or two. */
  Push across(boolean end) {
    double bay = design.layout("bayIn");
    Stock post = design.need("post").stock();
    Stock header = design.need("header").stock();
    Stock crossbeam = design.need("crossbeam").stock();
    double tail = design.layout("headerOverhangIn") + post.depthIn() / 2;
    double sideIn = end ? bay / 2 : bay;
    double headIn = end ? bay / 2 + tail : bay;
    double heightIn = design.postHeightIn();
    double headers = headIn * header.depthIn();
    double ends =
        headIn
            / design.layout("crossbeamSpacingIn")
            * crossbeam.thicknessIn()
            * crossbeam.depthIn();
    double posts = post.thicknessIn() * heightIn;
    double under = design.layout("headerTopIn") - header.depthIn();
    double rails = 0;
    double pickets = 0;
    if (design.member("rail").isPresent()) {
      double rail = design.need("rail").stock().depthIn();
      rails = (sideIn - post.thicknessIn() * (end ? 0.5 : 1)) * rail;
      double count = Tables.number(design.decided("picket.count")) * (end ? 0.5 : 1);
      double long_ = under - Tables.number(design.decided("rail.height")) - rail / 2;
      pickets = count * picketIn() * long_;
    }
    double solid = headers + ends + posts + rails + pickets;
    double gross = Math.max(sideIn, headIn) * design.crossbeamTopIn();
    double onTimber = onTimber(solid, gross);
    double leaves =
        climate.pressurePsf()
            * climate.vine("side_fill_leaf_ratio")
            * climate.vine("drag_factor")
            * (sideIn * heightIn - posts - rails - pickets)
            / 144;
    double at =
        (headers * (design.layout("headerTopIn") - header.depthIn() / 2)
                + ends * (design.crossbeamTopIn() - crossbeam.depthIn() / 2))
            / (headers + ends);
    Push timber =
        new Push(
            onTimber * (headers + ends) / solid,
            at,
            onTimber * (posts + rails + pickets) / solid + leaves,
            heightIn);
    return with(timber, onMatLb(headIn), design.crossbeamTopIn());
  }

  /** Along the walk, on each post; a crossbeam close behind another counts a share. */
  Push along() {
    Stock post = design.need("post").stock();
    Stock crossbeam = design.need("crossbeam").stock();
    double beams = design.need("crossbeam").lengthIn() * crossbeam.depthIn();
    double posts = post.depthIn() * design.postHeightIn();
    double gross = design.need("crossbeam").lengthIn() * design.crossbeamTopIn();
    double solid = beams + 2 * posts;
    double force = onTimber(solid, gross);
    double count = design.layout("crossbeamCount");
    double depths = design.layout("crossbeamSpacingIn") / crossbeam.depthIn();
    double share =
        depths <= Tables.value("thumb", "wind.sheltered-depths")
            ? Tables.value("thumb", "wind.sheltered-share")
            : 1;
    double postCount = design.layout("postCount");
    Push timber =
        new Push(
            force * beams / solid * (1 + share * (count - 1)) / postCount,
            design.crossbeamTopIn() - crossbeam.depthIn() / 2,
            force * posts / solid,
            design.postHeightIn());
    return with(timber, onEndOfMatLb() / postCount, design.crossbeamTopIn() + matIn() / 4);
  }

  /** Strength-level wind on the face of one crossbeam in the open. */
  double onCrossbeamLb() {
    Stock post = design.need("post").stock();
    Stock crossbeam = design.need("crossbeam").stock();
    double beams = design.need("crossbeam").lengthIn() * crossbeam.depthIn();
    double solid = beams + 2 * post.depthIn() * design.postHeightIn();
    double gross = design.need("crossbeam").lengthIn() * design.crossbeamTopIn();
    return onTimber(solid, gross) * beams / solid;
  }

  /** The edge of a picket is what the wind sees. */
  private double picketIn() {
    String market = design.metric() ? "metric" : "north-america";
    return Stock.of(Tables.row("defaults", "picket." + market).get("word")).thicknessIn();
  }

  private double matIn() {
    Map<String, String> vine = Tables.row("vines", design.criterionText("vine"));
    return Tables.number(vine.getOrDefault("mat_in", "0"));
  }

  /**
   * Along the walk the end crossbeam stands before the half that lies between the crossbeams, as
   * deep as it is, and has its own wind; the rest stands over it and under it.
   */
  private double onEndOfMatLb() {
    Design.Member crossbeam = design.need("crossbeam");
    double hidden = Math.min(matIn() / 2, crossbeam.stock().depthIn());
    return onLeavesLb(crossbeam.lengthIn() * (matIn() - hidden));
  }

  /** Across the walk, on the leafy edge of the top. */
  private double onMatLb(double lengthIn) {
    return onLeavesLb(lengthIn * matIn());
  }

  private double onLeavesLb(double areaIn2) {
    return climate.pressurePsf()
        * climate.vine("canopy_fill_leaf_ratio")
        * climate.vine("drag_factor")
        * areaIn2
        / 144;
  }

  private static Push with(Push push, double moreLb, double atIn) {
    double top = push.topLb() + moreLb;
    return new Push(
        top,
        (push.topLb() * push.topAtIn() + moreLb * atIn) / top,
        push.spreadLb(),
        push.heightIn());
  }

  /** Force on timber of a solid area inside an outline; more timber is never less wind. */
  private double onTimber(double solidIn2, double grossIn2) {
    double q = climate.pressurePsf() * 0.85;
    double e = solidIn2 / grossIn2;
    double most = 0;
    double[][] bands = {{2.0, 0.1}, {1.8, 0.3}, {1.6, 0.7}};
    double from = 0;
    for (double[] band : bands) {
      if (e >= from) {
        most = Math.max(most, Math.max(16, q * band[0]) * Math.min(e, band[1]));
      }
      from = band[1];
    }
    if (e > 0.7) {
      double ratio = grossIn2 / Math.pow(design.crossbeamTopIn(), 2);
      double cf = ratio <= 0.5 ? 1.55 : ratio <= 1 ? 1.45 : 1.4;
      most = Math.max(most, Math.max(16, q * cf * (1 - Math.pow(1 - e, 1.5))));
    }
    return most * grossIn2 / 144;
  }
}
