package org.scantling.judge;

import java.util.List;
import java.util.Map;

/** Wind on the open frame by ASCE 7-16 29.4: each row in full, leaves by their own drag. */
final class Wind {
  private final Design design;
  private final Climate climate;
  private final double lowerIn;

  Wind(Design design, Climate climate) {
    this(design, climate, 0);
  }

  private Wind(Design design, Climate climate, double lowerIn) {
    this.design = design;
    this.climate = climate;
    this.lowerIn = lowerIn;
  }

  /** The same wind as the row on the higher ground has it: all stands that much lower over it. */
  Wind uphill() {
    return new Wind(design, climate, design.dropIn());
  }

  private double postHeightIn() {
    return design.postHeightIn() - lowerIn;
  }

  private double headerTopIn() {
    return design.layout("headerTopIn") - lowerIn;
  }

  private double crossbeamTopIn() {
    return design.crossbeamTopIn() - lowerIn;
  }

  /**
   * Timber of one side that leans on a post, square inches.
   *
   * @param sideIn length of side
   * @param headIn length of header
   */
  private record Side(
      double sideIn,
      double headIn,
      double headers,
      double ends,
      double posts,
      double rails,
      double pickets) {
    double solid() {
      return headers + ends + posts + rails + pickets;
    }
  }

  private Side side(boolean end) {
    double bay = end ? longestEndBay() : longestPairOfBays();
    Stock post = design.need("post").stock();
    Stock crossbeam = design.need("crossbeam").stock();
    double tail = design.layout("headerOverhangIn") + post.depthIn() / 2;
    double sideIn = end ? bay / 2 : bay;
    double headIn = end ? bay / 2 + tail : bay;
    double between = headIn / design.layout("crossbeamSpacingIn");
    boolean railed = design.member("rail").isPresent();
    double rail = railed ? design.need("rail").stock().depthIn() : 0;
    double count = railed ? picketsPerIn() * sideIn : 0;
    return new Side(
        sideIn,
        headIn,
        headIn * design.need("header").stock().depthIn(),
        between * design.crossbeamBreadthIn() * crossbeam.depthIn(),
        post.thicknessIn() * postHeightIn(),
        (sideIn - post.thicknessIn() * (end ? 0.5 : 1)) * rail,
        railed ? count * picketIn() * uprightIn() : 0);
  }

  private double longestEndBay() {
    List<Double> bays = design.baysIn();
    return Math.max(bays.get(0), bays.get(bays.size() - 1));
  }

  /** Half of each of the two bays beside a post, where that is most; of one bay, itself. */
  private double longestPairOfBays() {
    List<Double> bays = design.baysIn();
    double most = bays.size() == 1 ? bays.get(0) : 0;
    for (int i = 1; i < bays.size(); i++) {
      most = Math.max(most, (bays.get(i - 1) + bays.get(i)) / 2);
    }
    return most;
  }

  /** As many as leave no gap wider than in the longest bay, where they stand closest. */
  private double picketsPerIn() {
    double gap = design.layout("bayIn") / (Tables.number(design.decided("picket.count")) + 1);
    return design.baysIn().stream()
        .mapToDouble(bay -> (Math.ceil(bay / gap - 1e-6) - 1) / bay)
        .max()
        .orElseThrow();
  }

  /** From the rail to the header. */
  private double uprightIn() {
    return headerTopIn()
        - design.need("header").stock().depthIn()
        - Tables.number(design.decided("rail.height"))
        - design.need("rail").stock().depthIn() / 2;
  }

  private double onTimber(Side side) {
    return onTimber(side.solid(), Math.max(side.sideIn(), side.headIn()) * crossbeamTopIn());
  }

  /** Across the walk, on a post that has one bay beside it or two. */
  Push across(boolean end) {
    Side side = side(end);
    double heightIn = postHeightIn();
    double onTimber = onTimber(side);
    double leaves =
        onSideLeavesLb(side.sideIn() * heightIn - side.posts() - side.rails() - side.pickets());
    double upper = pickets(side);
    double top = side.headers() + side.ends() + upper;
    Stock header = design.need("header").stock();
    Stock crossbeam = design.need("crossbeam").stock();
    double at =
        ((side.headers() + upper) * (headerTopIn() - header.depthIn() / 2)
                + side.ends() * (crossbeamTopIn() - crossbeam.depthIn() / 2))
            / top;
    Push timber =
        new Push(
            onTimber * top / side.solid(),
            at,
            onTimber * (side.solid() - top) / side.solid() + leaves,
            heightIn);
    return with(timber, onMatLb(side.headIn()), crossbeamTopIn());
  }

  /**
   * A picket leans with half of its wind on the header and with half on the rail. Of what is on the
   * top and what is spread over the post, this much on the top turns the foot as hard.
   */
  private double pickets(Side side) {
    if (!(side.pickets() > 0)) {
      return 0;
    }
    double header = headerTopIn() - design.need("header").stock().depthIn() / 2;
    double rail = Tables.number(design.decided("rail.height"));
    double spread = postHeightIn() / 2;
    return side.pickets() * ((header + rail) / 2 - spread) / (header - spread);
  }

  private double onSideLeavesLb(double areaIn2) {
    return climate.pressurePsf()
        * climate.vine("side_fill_leaf_ratio")
        * climate.vine("drag_factor")
        * areaIn2
        / 144;
  }

  /**
   * Across the walk, on a header from what hangs between it and the rail, as far as the push on the
   * post has it lower: half of the leaves, and of the pickets what is left to a half.
   */
  double hungLb(boolean end) {
    if (design.member("rail").isEmpty()) {
      return 0;
    }
    Side side = side(end);
    double post = design.need("post").stock().thicknessIn() * (end ? 0.5 : 1);
    double open = (side.sideIn() - post) * uprightIn() - side.pickets();
    double more = side.pickets() / 2 - pickets(side);
    return onTimber(side) * more / side.solid() + onSideLeavesLb(open) / 2;
  }

  /** Along the walk, on each post; a crossbeam close behind another counts a share. */
  Push along() {
    Stock post = design.need("post").stock();
    Stock crossbeam = design.need("crossbeam").stock();
    double beams = design.need("crossbeam").lengthIn() * crossbeam.depthIn();
    double posts = post.depthIn() * postHeightIn();
    double gross = design.need("crossbeam").lengthIn() * crossbeamTopIn();
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
            crossbeamTopIn() - crossbeam.depthIn() / 2,
            force * posts / solid,
            postHeightIn());
    return with(timber, onEndOfMatLb() / postCount, crossbeamTopIn() + matIn() / 4);
  }

  /** Strength-level wind on the face of one crossbeam in the open. */
  double onCrossbeamLb() {
    Stock post = design.need("post").stock();
    Stock crossbeam = design.need("crossbeam").stock();
    double beams = design.need("crossbeam").lengthIn() * crossbeam.depthIn();
    double solid = beams + 2 * post.depthIn() * postHeightIn();
    double gross = design.need("crossbeam").lengthIn() * crossbeamTopIn();
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
      double ratio = grossIn2 / Math.pow(crossbeamTopIn(), 2);
      double cf = ratio <= 0.5 ? 1.55 : ratio <= 1 ? 1.45 : 1.4;
      most = Math.max(most, Math.max(16, q * cf * (1 - Math.pow(1 - e, 1.5))));
    }
    return most * grossIn2 / 144;
  }
}
