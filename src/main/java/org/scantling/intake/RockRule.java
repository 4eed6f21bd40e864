package org.scantling.intake;

import org.scantling.reasons.Demand;

/**
 * Solid rock begins at the ground or under other soil, not both: holes in soil over rock freeze and
 * give way as that soil does.
 */
final class RockRule {
  private static final String BEDROCK = "bedrock";

  private RockRule() {}

  static void check(Node.Group file, Readings said, Problems problems) {
    String path = Demand.ROCK_AT.path();
    String soil = Demand.SOIL.path();
    if (said.maybeNumber(path).isPresent()
        && said.maybeWord(soil).filter(BEDROCK::equals).isPresent()
        && file.at("site") instanceof Node.Group place) {
      problems.add(
          place
              .originOf("rock-at")
              .problem(
                  path,
                  ProblemPhrases.say(
                      "found.beside", "found", said.original(path), "other", "soil: " + BEDROCK),
                  ProblemPhrases.say("accepted.no-rock-below"))
              .withAdvice(ProblemPhrases.say("maybe.soil-over-rock")));
    }
  }
}
