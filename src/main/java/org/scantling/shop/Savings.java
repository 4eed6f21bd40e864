package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.sayings.Sayings;

/**
 * What it would have taken to buy the pieces as they were first wanted: an overhang that a rule
 * changed for the yard's sake, and posts with all of their usual spare.
 */
final class Savings {
  private static final Sayings SAYINGS = Sayings.of("buying");

  private static final double HAIR_IN = 1e-6;

  private final Built built;
  private final Pieces pieces;

  Savings(Built built, Pieces pieces) {
    this.built = built;
    this.pieces = pieces;
  }

  List<Saving> of(List<TimberPlan> timber) {
    List<Saving> savings = new ArrayList<>();
    Map<String, Double> longer = longerIn();
    for (TimberPlan plan : timber) {
      for (String role : plan.roles()) {
        double moreIn = longer.getOrDefault(role, 0.0);
        if (moreIn > HAIR_IN) {
          spared(plan, role, moreIn, savings);
        }
      }
    }
    return savings;
  }

  /** How much longer each piece of a role was first wanted. */
  private Map<String, Double> longerIn() {
    Map<String, Double> longer = new TreeMap<>();
    longer.put("crossbeam", 2 * trimmedIn(Question.CROSSBEAM_OVERHANG));
    if (built.headerBays().size() == 1 && !built.topLine().equals(WayOfBuilding.STEPPED)) {
      longer.put("header", 2 * trimmedIn(Question.HEADER_OVERHANG));
    }
    double spareIn = pieces.of("post").get(0).shape().spareIn();
    longer.put("post", new PostSpare(built).usualIn() - spareIn);
    return longer;
  }

  /** How much less it is than was wanted before a length the yard sells was preferred. */
  private double trimmedIn(Question question) {
    return built
        .decision(question)
        .map(Decision::governing)
        .map(Reason::finding)
        .filter(finding -> finding.evidence().find("sold").isPresent())
        .filter(Finding.PreferNumber.class::isInstance)
        .map(finding -> wantedIn(finding) - built.find(question).orElseThrow())
        .orElse(0.0);
  }

  private static double wantedIn(Finding finding) {
    Evidence.Seen wanted = finding.evidence().find("wanted").orElseThrow();
    return ((Evidence.Seen.Amount) wanted).measure().amount();
  }

  private void spared(TimberPlan plan, String role, double moreIn, List<Saving> savings) {
    List<Piece> wanted = new ArrayList<>();
    for (Piece piece : pieces.all()) {
      if (plan.stock().equals(Timbers.stock(built, piece))) {
        boolean changed = piece.shape().role().equals(role);
        wanted.add(changed ? longer(piece, moreIn) : piece);
      }
    }
    TimberPlan instead = Timbers.plan(built, plan.stock(), wanted);
    double sparedIn = instead.boughtIn() - plan.boughtIn();
    OptionalLong sparedCents = sparedCents(plan, instead);
    boolean joint = !instead.special().isEmpty();
    if (joint || sparedIn > HAIR_IN) {
      double cutIn = pieces.of(role).get(0).shape().cutIn();
      String what = SAYINGS.say(role.equals("post") ? "saved.posts" : "pieces." + role);
      savings.add(
          new Saving(
              what,
              plan.stock().size(),
              cutIn + moreIn,
              cutIn,
              joint ? 0 : sparedIn,
              joint,
              sparedCents));
    }
  }

  private static OptionalLong sparedCents(TimberPlan plan, TimberPlan instead) {
    OptionalLong now = plan.result().cents();
    OptionalLong then = instead.result().cents();
    return now.isPresent() && then.isPresent() && then.getAsLong() > now.getAsLong()
        ? OptionalLong.of(then.getAsLong() - now.getAsLong())
        : OptionalLong.empty();
  }

  private static Piece longer(Piece piece, double moreIn) {
    Shape shape = piece.shape();
    boolean spare = shape.spareIn() > 0;
    return new Piece(
        piece.mark(),
        new Shape(
            shape.role(),
            shape.size(),
            shape.breadthIn(),
            shape.depthIn(),
            spare ? shape.lengthIn() : shape.lengthIn() + moreIn,
            spare ? shape.spareIn() + moreIn : 0,
            shape.ends(),
            shape.first(),
            shape.last(),
            shape.recesses(),
            shape.bores()),
        piece.places());
  }
}
