package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.scantling.design.Geometry;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;

/**
 * A header that is cut over posts no longer runs on over them. Of all pieces the shortest work
 * hardest: one bay alone sags and bends most in its middle and rests on half a post at each end,
 * two bays bend most over the post between them and press hardest on it. Both are checked without
 * the tails, which would relieve them.
 */
final class HeaderPieces {
  private static final int MOST_BAYS = 2;

  private final Geometry geometry;
  private final HeaderLoad each;
  private final double sunkIn;
  private final Limits limits;
  private final Function<String, Source> sources;
  private final SolvedBeams beams;

  /**
   * @param sunkIn depth of what is bored into the top over the posts
   * @param beams what was solved before
   */
  HeaderPieces(
      Geometry geometry,
      HeaderLoad each,
      double sunkIn,
      Limits limits,
      Function<String, Source> sources,
      SolvedBeams beams) {
    this.beams = beams;
    this.geometry = geometry;
    this.each = each;
    this.sunkIn = sunkIn;
    this.limits = limits;
    this.sources = sources;
  }

  /** Every check of that stock size; of a pair one board is checked for the whole. */
  List<Checked> of(Material material) {
    List<Checked> checks = new ArrayList<>();
    parts().forEach(part -> checks.addAll(part.of(material.onePly())));
    return checks;
  }

  /** The longest piece looked at. */
  BeamChecks longest() {
    return new BeamChecks(loaded(mostBays()), seating(mostBays()), limits, sources);
  }

  /** The pieces of one bay and of two. */
  List<BeamChecks> parts() {
    List<BeamChecks> parts = new ArrayList<>();
    for (int bays = 1; bays <= mostBays(); bays++) {
      parts.add(new BeamChecks(loaded(bays), seating(bays), limits, sources));
    }
    return parts;
  }

  /** What the end of a piece presses on its half of a post, or lifts off it: of one bay alone. */
  List<HeaderChecks.PostLoad> onEnds(Material material) {
    LoadedBeam one = loaded(1);
    return one.onSupports(material.weightLbPerIn()).stream()
        .map(each -> HeaderChecks.PostLoad.of(each, one.vines().reactionsLb()))
        .toList();
  }

  /** The load on the post in the middle of the longest piece looked at. */
  List<HeaderChecks.PostLoad> onPosts(Material material) {
    List<HeaderChecks.PostLoad> all = new ArrayList<>();
    for (SupportCase one : loaded(mostBays()).onSupports(material.weightLbPerIn())) {
      all.add(new HeaderChecks.PostLoad(one.combination(), one.mostLb(), 0));
    }
    return all;
  }

  private int mostBays() {
    return Math.min(MOST_BAYS, geometry.plan().bays());
  }

  private BeamChecks.Seating seating(int bays) {
    double postIn = geometry.posts().breadthIn();
    return new BeamChecks.Seating(
        "header",
        geometry.headers().notchIn(),
        sunkIn,
        bays == 1 ? postIn / 2 : postIn,
        postIn,
        !geometry.headers().paired(),
        0,
        geometry.plan().bayIn());
  }

  private LoadedBeam loaded(int bays) {
    double bayIn = geometry.plan().bayIn();
    double[] posts = new double[bays + 1];
    for (int i = 0; i < posts.length; i++) {
      posts[i] = i * bayIn;
    }
    double lengthIn = bays * bayIn;
    List<Double> people = PersonPlaces.on(lengthIn, posts, geometry.posts().breadthIn() / 2);
    return beams.of(lengthIn, posts, loads(bays, people));
  }

  private BeamLoads loads(int bays, List<Double> people) {
    List<List<Double>> byBay = new ArrayList<>();
    List<Double> all = new ArrayList<>();
    for (int bay = 0; bay < bays; bay++) {
      boolean last = bay == bays - 1;
      byBay.add(crossbeams(bay, last));
      all.addAll(byBay.get(bay));
    }
    return new BeamLoads(
        BeamLoads.points(all, each.deadLb()),
        BeamLoads.points(all, each.vinesLb()),
        byBay.stream().map(places -> BeamLoads.points(places, each.liveLb())).toList(),
        BeamLoads.points(people, each.personLb()),
        byBay.stream().map(places -> BeamLoads.points(places, each.snowLb())).toList(),
        BeamLoads.points(all, each.windDownLb()),
        BeamLoads.points(all, -each.windUpLb()));
  }

  /** A crossbeam over the joint may rest on either piece, so it counts on both. */
  private List<Double> crossbeams(int bay, boolean last) {
    List<Double> places = new ArrayList<>();
    int perBay = geometry.crossbeams().perBay();
    for (int i = 0; i < perBay + (last ? 1 : 0); i++) {
      places.add((bay + (double) i / perBay) * geometry.plan().bayIn());
    }
    return places;
  }
}
