package org.scantling.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.quantity.Length;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.tables.FastenerRow;
import org.scantling.tables.JointRow;

/** Counts nails, screws, bolts and steel parts, joint by joint. */
final class Fixings {
  private static final Sayings SAYINGS = Sayings.of("buying");

  private final Built built;
  private final Pieces pieces;
  private final InchSizes sizes;
  private final MakersParts parts;
  private final Map<String, Fixing> found = new LinkedHashMap<>();

  private Fixings(Built built, Pieces pieces) {
    this.built = built;
    this.pieces = pieces;
    this.sizes = new InchSizes(built);
    this.parts = new MakersParts(built);
  }

  static List<Fixing> of(Built built, Pieces pieces) {
    Fixings fixings = new Fixings(built, pieces);
    fixings.crossbeams();
    fixings.pairs();
    fixings.blocking();
    fixings.headers();
    fixings.steps();
    fixings.rails();
    fixings.pickets();
    fixings.braces();
    fixings.feet();
    fixings.temporary();
    return new ArrayList<>(fixings.found.values());
  }

  private void crossbeams() {
    JointRow joint = built.joint(Question.CROSSBEAM_JOINT);
    // Two side by side are held like one, on their outer faces.
    int seats = 2 * built.geometry().crossbeamCount();
    if (built.fastener(joint).isPresent()) {
      add(built.fastener(joint).get(), joint.count() * seats, "crossbeam");
    } else {
      add(parts.holding("crossbeam", joint, seats));
    }
  }

  /** What makes one of two crossbeams side by side. */
  private void pairs() {
    if (!built.geometry().crossbeams().doubled()) {
      return;
    }
    Plies plies = new Plies(built);
    int count = plies.inAPair() * (built.geometry().plan().bays() + 1);
    plies
        .nail()
        .ifPresentOrElse(
            nail -> add(nail, count, "pair"),
            () ->
                bolts(
                    plies.bolt(), built.geometry().crossbeams().breadthAtPostsIn(), count, "pair"));
  }

  /** Each end of a block is held to the header and to the crossbeam alike. */
  private void blocking() {
    JointRow joint = built.blockJoint();
    int holds = 2 * 2 * pieces.count(Blocking.ROLE);
    built.fastener(joint).ifPresent(each -> add(each, joint.count() * holds, "blocking"));
  }

  private void headers() {
    JointRow joint = built.joint(Question.HEADER_JOINT);
    switch (joint.way()) {
      case "bolted" -> {
        double gripIn =
            built.geometry().posts().breadthIn() + 2 * built.member("header").breadthIn();
        bolts(joint, gripIn, new HeaderBolts(built).count(), "boards");
      }
      case "lagged" -> {
        FastenerRow lag = built.fastener(joint).orElseThrow();
        add(lag, bores("header"), "lag");
        washers(lag, bores("header"), "heads");
      }
      default -> add(parts.holding("header", joint, built.geometry().postCount()));
    }
  }

  /** The lower header at every step. */
  private void steps() {
    built
        .findJoint(Question.HEADER_STEP)
        .ifPresent(
            joint -> {
              int steps = 2 * (built.geometry().plan().bays() - 1);
              add(parts.hangers(joint, steps));
            });
  }

  private int bores(String role) {
    return pieces.of(role).stream()
        .mapToInt(each -> each.count() * each.shape().bores().size())
        .sum();
  }

  private void rails() {
    if (built.has("rail")) {
      JointRow joint = built.joint(Question.RAIL_JOINT);
      int ends = 2 * pieces.count("rail");
      built
          .fastener(joint)
          .ifPresentOrElse(
              each -> add(each, joint.count() * ends, "rail"),
              () -> add(parts.holding("rail", joint, ends)));
    }
  }

  private void pickets() {
    FastenerRow screw =
        built.tables().fastener(built.tables().defaults().row("picket.screw").word());
    int ends = 2 * pieces.count("picket");
    add(screw, whole("picket.screws") * ends, "picket");
    int blocks = 2 * pieces.count("block");
    add(screw, whole("spacer.screws") * blocks, "spacer");
  }

  private void braces() {
    if (!built.has("brace")) {
      return;
    }
    JointRow joint = built.joint(Question.BRACE_JOINT);
    double braceIn = built.member("brace").breadthIn();
    double postIn = built.geometry().posts().breadthIn();
    int across = built.geometry().postCount() * joint.count();
    int along = 4 * built.geometry().plan().bays() * joint.count();
    bolts(joint, braceIn + postIn, across, "brace-foot-across");
    bolts(
        joint,
        braceIn + built.geometry().crossbeams().breadthAtPostsIn(),
        across,
        "brace-head-across");
    double packedIn = braceIn + postIn + Braces.packingIn(built);
    bolts(joint, packedIn, along, "brace-foot-along");
    bolts(joint, braceIn + built.member("header").breadthIn(), along, "brace-head-along");
  }

  private void feet() {
    int posts = built.geometry().postCount();
    built.findJoint(Question.BASE_JOINT).ifPresent(joint -> add(parts.bases(joint, posts)));
    if (built.onBrackets()) {
      add(parts.brackets(posts));
    }
  }

  /** What is screwed on to stand and lift by, and taken off again. */
  private void temporary() {
    FastenerRow screw =
        built.tables().fastener(built.tables().defaults().row("brace.temporary-screw").word());
    add(screw, braceScrews(built, pieces), "temporary-brace");
    add(screw, blockScrews(built, pieces), "temporary-block");
  }

  static int braceScrews(Built built, Pieces pieces) {
    int each = (int) built.shop("brace.temporary-screws");
    return each * new Sundries(built, pieces).braces();
  }

  static int blockScrews(Built built, Pieces pieces) {
    int each = (int) built.shop("block.temporary-screws");
    return each * new Sundries(built, pieces).blocks();
  }

  /** The shortest bolt of that diameter that goes through with its nut and washers. */
  private void bolts(JointRow joint, double gripIn, int count, String use) {
    bolts(built.fastener(joint).orElseThrow(), gripIn, count, use);
  }

  private void bolts(FastenerRow named, double gripIn, int count, String use) {
    double neededIn = gripIn + built.shop("bolt.over-grip");
    FastenerRow bolt =
        built.tables().fasteners().rows().stream()
            .filter(each -> each.type().equals("bolt"))
            .filter(each -> each.diameterIn() == named.diameterIn())
            .filter(each -> each.lengthIn() >= neededIn - 1e-6)
            .min(Comparator.comparingDouble(FastenerRow::lengthIn))
            .orElse(null);
    if (bolt == null) {
      String name =
          SAYINGS.say(
              "rod", "size", sizes.told(named.diameterIn()), "length", sizes.told(neededIn));
      add(
          new Fixing(
              "rod." + plain(named.diameterIn()) + "." + plain(neededIn), name, count, use(use)));
      nuts(named, 2 * count);
    } else {
      add(bolt, count, use);
      nuts(named, count);
    }
    washers(named, 2 * count, "heads-and-nuts");
  }

  private void nuts(FastenerRow bolt, int count) {
    String name = SAYINGS.say("nut", "size", sizes.told(bolt.diameterIn()));
    add(new Fixing("nut." + plain(bolt.diameterIn()), name, count, use("nuts")));
  }

  private void washers(FastenerRow bolt, int count, String use) {
    String name = SAYINGS.say("washer", "size", sizes.told(bolt.diameterIn()));
    add(new Fixing("washer." + plain(bolt.diameterIn()), name, count, use(use)));
  }

  /** An inch size as the ids of fasteners have it: {@code 1-2} of 1/2 in. */
  private static String plain(double inches) {
    return Length.inches(inches).replace(" in", "").replaceAll("[ /]", "-");
  }

  /** Where something goes, as the list says it. */
  private static String use(String what) {
    return SAYINGS.say("use." + what);
  }

  private void add(FastenerRow row, int count, String use) {
    add(new Fixing(row.id(), sizes.told(row), count, use(use)));
  }

  /** The same thing for two uses is bought once. */
  private void add(Fixing fixing) {
    if (fixing.count() > 0) {
      found.merge(fixing.id(), fixing, Fixings::together);
    }
  }

  private static Fixing together(Fixing one, Fixing other) {
    String use = one.use().contains(other.use()) ? one.use() : one.use() + "; " + other.use();
    return new Fixing(
        one.id(), one.key(), one.name(), one.count() + other.count(), use, one.rating());
  }

  private int whole(String row) {
    return (int) built.shop(row);
  }
}
