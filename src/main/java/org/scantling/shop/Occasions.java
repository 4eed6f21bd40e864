package org.scantling.shop;

import java.util.Set;
import java.util.TreeSet;
import org.scantling.reasons.Question;

/** What is true of a structure, in the words that the order of work asks for. */
final class Occasions {
  /** Every word that may stand there. */
  static final Set<String> ALL =
      Set.of(
          "always",
          "standing=embedded",
          "standing=bracket",
          "standing=moment-base",
          "fill=tamped-soil",
          "fill=gravel",
          "fill=concrete",
          "pads",
          "dig=deep",
          "headers=notched",
          "headers=plain",
          "headers=paired",
          "headers=lagged",
          "headers=rated",
          "headers=cut",
          "top=level",
          "top=follows-ground",
          "top=stepped",
          "steps=bolted",
          "steps=hung",
          "bed=gravel",
          "bed=rock",
          "rock=told",
          "ground=falls",
          "ground=falls-across",
          "rails",
          "rails=from-line",
          "rails=by-the-post",
          "posts=housed-standing",
          "posts=on-trestles",
          "pickets",
          "braces",
          "wires=bored",
          "wires=plain",
          "wires",
          "plants",
          "woody",
          "bolts",
          "timber=treated",
          "timber=lasting",
          "middle-posts",
          "heavy",
          "post=light",
          "post=heavy",
          "header=light",
          "header=heavy",
          "crossbeam=light",
          "crossbeam=heavy",
          "crossbeam=blocked",
          "crossbeam=over-post",
          "crossbeam=one-each",
          "crossbeam=pairs",
          "crossbeam=nailed-pairs",
          "crossbeam=bolted-pairs");

  private final Built built;
  private final Pieces pieces;
  private final Set<String> here = new TreeSet<>();

  private Occasions(Built built, Pieces pieces) {
    this.built = built;
    this.pieces = pieces;
  }

  static Set<String> of(Built built, Pieces pieces, Climbers climbers) {
    Occasions occasions = new Occasions(built, pieces);
    occasions.frame();
    occasions.ground();
    boolean wired = !climbers.runs().isEmpty();
    occasions.when(wired, "wires");
    occasions.when(wired && climbers.holes() > 0, "wires=bored");
    occasions.when(wired && climbers.holes() == 0, "wires=plain");
    occasions.when(!climbers.plants().isEmpty(), "plants");
    occasions.when(
        !climbers.plants().isEmpty() && built.tables().vine(built.vine()).woody(), "woody");
    return occasions.here;
  }

  private void when(boolean holds, String word) {
    if (holds) {
      here.add(word);
    }
  }

  private void frame() {
    here.add("always");
    boolean notched = built.geometry().headers().notchIn() > 0;
    here.add(built.paired() ? "headers=paired" : notched ? "headers=notched" : "headers=plain");
    boolean lagged = built.joint(Question.HEADER_JOINT).way().equals("lagged");
    when(!built.paired() && lagged, "headers=lagged");
    when(!built.paired() && !lagged, "headers=rated");
    when(built.headerBays().size() > 1 && !built.top().stepped(), "headers=cut");
    when(!pieces.overPosts().isEmpty(), "crossbeam=over-post");
    when(built.has("rail"), "rails");
    here.add(built.railsFromLine() ? "posts=housed-standing" : "posts=on-trestles");
    when(built.railsFromLine(), built.railsLevel() ? "rails=from-line" : "rails=by-the-post");
    when(pieces.count("picket") > 0, "pickets");
    when(built.has("brace"), "braces");
    when(built.paired() || lagged || built.has("brace"), "bolts");
    here.add(lasting() ? "timber=lasting" : "timber=treated");
    when(built.geometry().plan().bays() > 1, "middle-posts");
    double mostLb = built.tables().thumb("lift.one-person").amount();
    when(pieces.all().stream().anyMatch(each -> Weights.of(built, each) > mostLb), "heavy");
    alone("post", 1.0 / 2, mostLb);
    alone("header", 1.0 / 2, mostLb);
    alone("crossbeam", 1, mostLb);
    when(pieces.count(Blocking.ROLE) > 0, "crossbeam=blocked");
    boolean doubled = built.geometry().crossbeams().doubled();
    here.add(doubled ? "crossbeam=pairs" : "crossbeam=one-each");
    boolean nailed = new Plies(built).nail().isPresent();
    when(doubled, nailed ? "crossbeam=nailed-pairs" : "crossbeam=bolted-pairs");
  }

  /** True where all of it is of heartwood that lasts untreated. */
  private boolean lasting() {
    return built.members().stream()
        .allMatch(each -> PieceTimber.of(each).use(false).lasts(built.tables()));
  }

  /** A post is walked up and a header raised end by end, so one pair of hands holds half of it. */
  private void alone(String role, double share, double mostLb) {
    boolean light = share * Weights.heaviest(built, pieces, role) <= mostLb;
    here.add(role + (light ? "=light" : "=heavy"));
  }

  private void ground() {
    here.add("standing=" + built.footings().kind());
    here.add("fill=" + built.footings().backfill());
    when(new Holes(built).padded(), "pads");
    here.add(built.footings().onRock() ? "bed=rock" : "bed=gravel");
    when(built.overRock(), "rock=told");
    when(new Holes(built).fromAbove(), "dig=deep");
    here.add("top=" + built.topLine());
    boolean steps = built.top().stepped() && built.geometry().plan().bays() > 1;
    when(steps && built.paired(), "steps=bolted");
    when(steps && !built.paired(), "steps=hung");
    when(built.slopeRatio() > 0, "ground=falls");
    when(built.top().dropIn() > 0, "ground=falls-across");
  }
}
