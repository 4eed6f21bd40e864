package org.scantling.drawing;

import java.util.List;
import org.scantling.design.KneeBraces;
import org.scantling.shop.Bore;
import org.scantling.shop.EndCut;
import org.scantling.shop.Piece;
import org.scantling.shop.Recess;
import org.scantling.shop.SetOut;
import org.scantling.shop.Shape;

/** What the pieces and the set-out say of a figure of a detail. */
record DetailTold(Job job) {
  double inches(String of) {
    List<String> words = List.of(of.split(" ")).subList(1, of.split(" ").length);
    return words.get(0).matches("[A-Z]+\\d+") && !words.get(0).equals("A1")
        ? piece(words.get(0), words.subList(1, words.size()))
        : ground(String.join(" ", words));
  }

  private double ground(String of) {
    SetOut.PostMark post = job.lists().setOut().posts().get(0);
    SetOut.Ground ground = job.lists().setOut().ground();
    double footIn = ground.lineOverDatumIn() - post.footBelowLineIn();
    return switch (of) {
      case "hole width" -> ground.holeIn();
      case "A1 dig" -> post.digIn();
      case "frost" ->
          Drawings.number(job.proposal(), org.scantling.reasons.Question.FROST_DEPTH).orElseThrow();
      case "bed" -> ground.bedIn() - ground.padIn();
      case "pad" -> ground.padIn();
      case "A1 foot" -> -footIn;
      case "A1 foot over" -> footIn;
      case "A1 pier" -> post.digIn() - ground.bedIn() + ground.padIn();
      default -> throw new AssertionError("nothing is called " + of);
    };
  }

  private double piece(String mark, List<String> of) {
    Shape shape =
        job.lists().pieces().all().stream()
            .filter(each -> each.mark().equals(mark))
            .findFirst()
            .map(Piece::shape)
            .orElseThrow();
    return switch (of.get(0)) {
      case "recess" -> recess(shape, Integer.parseInt(of.get(1)), of.subList(2, of.size()));
      case "bore" -> bore(shape, Integer.parseInt(of.get(1)), of.subList(2, of.size()));
      case "depth" -> shape.depthIn();
      case "breadth" -> shape.breadthIn();
      case "length" -> shape.lengthIn();
      case "nose" -> tail(shape).get(1).downIn();
      case "cut" -> tail(shape).get(tail(shape).size() - 1).downIn() - tail(shape).get(1).downIn();
      case "run" -> tail(shape).get(tail(shape).size() - 1).backIn();
      case "tail" -> job.structure().geometry().crossbeams().overhangIn();
      case "leg" -> leg(mark);
      default -> throw new AssertionError("a piece has no " + of);
    };
  }

  private static List<EndCut.Corner> tail(Shape shape) {
    return ((EndCut.Shaped) shape.first()).outline();
  }

  private static double recess(Shape shape, int place, List<String> of) {
    Recess recess = shape.recesses().get(place);
    return switch (String.join(" ", of)) {
      case "from" -> recess.fromIn();
      case "after" -> recess.fromIn() - shape.recesses().get(place - 1).toIn();
      case "width" -> recess.widthIn();
      case "depth" -> recess.depthIn();
      case "left" -> shape.depthIn() - recess.depthIn();
      case "across" -> recess.acrossIn();
      case "end first" -> recess.fromIn();
      case "end last" -> shape.lengthIn() - recess.toIn();
      default -> throw new AssertionError("a recess has no " + of);
    };
  }

  private static double bore(Shape shape, int place, List<String> of) {
    Bore bore = shape.bores().get(place);
    if (of.contains("after")) {
      return Math.abs(bore.atIn() - shape.bores().get(Integer.parseInt(of.get(2))).atIn());
    }
    return switch (of.get(0)) {
      case "first", "running" -> bore.atIn();
      case "last" -> shape.lengthIn() - bore.atIn();
      case "under" -> shape.depthIn() / 2 - bore.offIn();
      case "over" ->
          of.get(1).equals("bottom")
              ? shape.depthIn() / 2 + bore.offIn()
              : bore.offIn() - shape.bores().get(Integer.parseInt(of.get(1))).offIn();
      default -> throw new AssertionError("a hole has no " + of);
    };
  }

  /** Of a brace across the walk, or of the first one along it with that mark. */
  private double leg(String mark) {
    KneeBraces braces = job.structure().braces().orElseThrow();
    var place =
        job.lists().pieces().all().stream()
            .filter(each -> each.mark().equals(mark))
            .findFirst()
            .orElseThrow()
            .places()
            .get(0);
    if (place.first().acrossIn() != place.last().acrossIn()) {
      return braces.legIn();
    }
    double towards = place.last().alongIn() - place.first().alongIn();
    return braces.along().stream()
        .filter(each -> each.towards() * towards > 0)
        .filter(each -> each.outside() == place.first().acrossIn() < 0)
        .findFirst()
        .orElseThrow()
        .legIn();
  }
}
