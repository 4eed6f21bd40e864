package org.scantling.intake;

import java.util.stream.IntStream;
import org.scantling.quantity.Length;

/** Stretches in which no post may stand: each ends farther on than it begins, and on the walk. */
final class StretchRule {
  static final String PATH = "walkway.no-post";

  private static final double SLACK_IN = 1e-6;

  private StretchRule() {}

  static void check(Node.Group file, Readings said, Problems problems) {
    IntStream.range(0, said.size(PATH))
        .mapToObj(place -> PATH + "[" + place + "]")
        .filter(path -> said.maybeNumber(path + ".from").isPresent())
        .filter(path -> said.maybeNumber(path + ".to").isPresent())
        .forEach(path -> check(path, file, said, problems));
  }

  private static void check(String path, Node.Group file, Readings said, Problems problems) {
    double fromIn = said.number(path + ".from");
    double toIn = said.number(path + ".to");
    if (fromIn >= toIn) {
      wrong(path + ".to", "accepted.farther-on", fromIn, file, said, problems);
    } else if (said.maybeNumber("walkway.length").isPresent()
        && toIn > said.number("walkway.length") + SLACK_IN) {
      wrong(path + ".to", "accepted.on-walk", said.number("walkway.length"), file, said, problems);
    }
  }

  private static void wrong(
      String field,
      String accepted,
      double lengthIn,
      Node.Group file,
      Readings said,
      Problems problems) {
    Origin where =
        file.at("walkway") instanceof Node.Group walkway
            ? walkway.originOf("no-post")
            : file.origin();
    problems.add(
        where.problem(
            field,
            said.original(field),
            ProblemPhrases.say(accepted, "length", Length.feetAndInches(lengthIn))));
  }
}
