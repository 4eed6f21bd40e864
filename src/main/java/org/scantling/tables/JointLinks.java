package org.scantling.tables;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.scantling.reasons.Question;

/** Holds the joints of a house against the fasteners that they name and the ways that there are. */
final class JointLinks {
  private static final Map<String, String> FASTENED_BY =
      Map.of(
          "bolted",
          "bolt",
          "lagged",
          "lag",
          "toe-nailed",
          "nail",
          "toe-screwed",
          "screw",
          "housed",
          "screw");
  private static final List<String> THREADED = List.of("lagged", "toe-screwed", "housed");

  private final Tables tables;
  private final Tables ours;
  private final HouseLines lines;

  JointLinks(Tables tables, Tables ours, HouseLines lines) {
    this.tables = tables;
    this.ours = ours;
    this.lines = lines;
  }

  /**
   * @throws TableException at the row of the house that breaks a link
   */
  void check() {
    for (JointRow joint : tables.joints().rows()) {
      fastener(joint);
      pairs(joint);
      faces(joint);
      boolean goes =
          ours.joints().rows().stream()
              .anyMatch(
                  each ->
                      each.question() == joint.question()
                          && each.way().equals(joint.way())
                          && each.style().equals(joint.style()));
      if (!goes) {
        throw lines.refuse(
            TableFile.JOINTS,
            joint.id(),
            "way",
            joint.way(),
            RefusalWords.say(
                "joints.way", "ways", ways(joint.question()), "question", joint.question().id()));
      }
    }
    for (Question question : questions()) {
      for (String style : List.of("on-top", "paired")) {
        usual(question, style);
      }
    }
  }

  /** Bolts through paired headers stand one over the other, in one row or in two. */
  private void pairs(JointRow joint) {
    boolean paired = joint.way().equals("bolted") && joint.question() == Question.HEADER_JOINT;
    if (paired && joint.count() != 2 && joint.count() != 4) {
      throw lines.refuse(
          TableFile.JOINTS,
          joint.id(),
          "count",
          Integer.toString(joint.count()),
          RefusalWords.say("joints.pairs"));
    }
  }

  /** A steel part on one face alone lets the crossbeam roll away from it. */
  private void faces(JointRow joint) {
    boolean rated = joint.way().equals("rated") && joint.question() == Question.CROSSBEAM_JOINT;
    if (rated && joint.count() < 2) {
      throw lines.refuse(
          TableFile.JOINTS,
          joint.id(),
          "count",
          Integer.toString(joint.count()),
          RefusalWords.say("joints.faces"));
    }
  }

  private Set<Question> questions() {
    return ours.joints().rows().stream().map(JointRow::question).collect(Collectors.toSet());
  }

  private void usual(Question question, String style) {
    boolean any =
        tables.joints().rows().stream()
            .anyMatch(each -> each.question() == question && each.fits(style));
    // A joint that one way of laying headers does not have has no usual way there.
    if (any && tables.usualJoint(question, style).isEmpty()) {
      throw lines.refuse(
          TableFile.JOINTS,
          "usual",
          "no",
          RefusalWords.say("joints.usual", "question", question.id(), "style", style));
    }
  }

  private String ways(Question question) {
    Set<String> ways = new TreeSet<>();
    for (JointRow each : ours.joints().rows()) {
      if (each.question() == question) {
        ways.add(each.way() + " (style " + each.style() + ")");
      }
    }
    return String.join(", ", ways);
  }

  private void fastener(JointRow joint) {
    String type = FASTENED_BY.get(joint.way());
    if (type == null) {
      if (joint.ratedLiftLb().isEmpty() || joint.ratedSideLb().isEmpty()) {
        throw lines.refuse(
            TableFile.JOINTS, joint.id(), "rated_lift_lb", "", RefusalWords.say("joints.rated"));
      }
      return;
    }
    FastenerRow fastener = tables.fasteners().find(joint.fastener()).orElse(null);
    if (fastener == null || !fastener.type().equals(type)) {
      throw lines.refuse(
          TableFile.JOINTS,
          joint.id(),
          "fastener",
          joint.fastener(),
          RefusalWords.say(
              "joints.fastener",
              "type",
              type,
              "fasteners",
              String.join(
                  ", ", HouseLines.ids(tables.fasteners(), each -> each.type().equals(type)))));
    }
    threads(joint, fastener);
  }

  private void threads(JointRow joint, FastenerRow fastener) {
    if (fastener.rootDiameterIn() > fastener.diameterIn()) {
      throw lines.refuse(
          TableFile.FASTENERS,
          fastener.id(),
          "root_diameter_in",
          HouseLines.number(fastener.rootDiameterIn()),
          RefusalWords.say("fasteners.shank", "shank", HouseLines.number(fastener.diameterIn())));
    }
    if (THREADED.contains(joint.way())) {
      double gripIn = joint.threadIn().orElse(0) + joint.tipIn().orElse(0);
      if (joint.threadIn().isEmpty() || joint.tipIn().isEmpty() || gripIn > fastener.lengthIn()) {
        throw lines.refuse(
            TableFile.JOINTS,
            joint.id(),
            "thread_in",
            joint.threadIn().isPresent() ? HouseLines.number(joint.threadIn().getAsDouble()) : "",
            RefusalWords.say(
                "joints.thread",
                "length",
                HouseLines.number(fastener.lengthIn()),
                "fastener",
                fastener.id()));
      }
    }
  }
}
