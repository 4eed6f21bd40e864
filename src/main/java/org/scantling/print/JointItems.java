package org.scantling.print;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.design.Geometry;
import org.scantling.design.Structure;
import org.scantling.design.Structure.Bolts;
import org.scantling.design.Structure.Member;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.words.TimberWords;
import org.scantling.words.Voice;

/** What holds the pieces together, joint by joint. */
final class JointItems {
  private static final Sayings SAYINGS = Sayings.of("proposal");
  private static final List<Question> JOINTS =
      List.of(
          Question.CROSSBEAM_JOINT,
          Question.HEADER_JOINT,
          Question.RAIL_JOINT,
          Question.BRACE_JOINT,
          Question.HEADER_STEP,
          Question.BASE_JOINT);

  private final Proposal proposal;
  private final Voice voice;
  private final Structure structure;
  private final boolean spliced;

  /**
   * @param spliced true where a header is of several pieces
   */
  JointItems(Told told, Structure structure, boolean spliced) {
    this.proposal = told.proposal();
    this.voice = told.voice();
    this.structure = structure;
    this.spliced = spliced;
  }

  List<Block.Item> items() {
    return JOINTS.stream().flatMap(question -> way(question).stream()).toList();
  }

  private Optional<Block.Item> way(Question question) {
    return proposal
        .decision(question)
        .map(decision -> ((Outcome.Word) decision.proposed()).text())
        .map(way -> fastened(question, way));
  }

  private Block.Item fastened(Question question, String way) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("fastened", TimberWords.of(voice).fastened(way, joints(question)));
    if (question == Question.HEADER_JOINT) {
      // Each piece that ends over a post has fasteners of its own there.
      if (spliced && !structure.top().stepped()) {
        blanks.put("pieced", "");
      }
      structure.bolts().ifPresent(bolts -> blanks.put("bolts", bolts(bolts)));
    }
    return new Block.Item(Sentence.capital(voice.label(question)), SAYINGS.say("joint", blanks));
  }

  /** Every piece is held at two places; a header, of one timber or two boards, at every post. */
  private int joints(Question question) {
    return switch (question) {
      case HEADER_JOINT -> headerJoints();
      case CROSSBEAM_JOINT -> 2 * structure.geometry().crossbeamCount();
      case RAIL_JOINT -> 2 * count("rail");
      case BRACE_JOINT -> 2 * count("brace");
      case HEADER_STEP -> 2 * (structure.geometry().plan().bays() - 1);
      default -> structure.geometry().postCount();
    };
  }

  /** At a step the boards of both bays are bolted to the post. */
  private int headerJoints() {
    Geometry geometry = structure.geometry();
    return structure.top().stepped() && geometry.headers().paired()
        ? 2 * 2 * geometry.plan().bays()
        : geometry.postCount();
  }

  private int count(String role) {
    return structure.members().stream()
        .filter(each -> each.role().equals(role))
        .mapToInt(Member::count)
        .sum();
  }

  private String bolts(Bolts bolts) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("from-top", inches(bolts.fromTopIn()));
    blanks.put("apart", inches(bolts.apartIn()));
    if (bolts.rowsApartIn() > 0) {
      blanks.put("rows", inches(bolts.rowsApartIn()));
    }
    return SAYINGS.say(structure.top().stepped() ? "bolts.boards" : "bolts.post", blanks);
  }

  private String inches(double amount) {
    return voice.say(Measure.inches(amount));
  }
}
