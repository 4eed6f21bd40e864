package org.scantling.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.scantling.design.Site;
import org.scantling.sayings.Listed;

/**
 * A site names its frost, snow and wind, or its plant hardiness zone for a first estimate; each
 * once, and the wind as something that it can be.
 */
final class ClimateRule {
  static final String MEAN_HOURLY = "mean-hourly";
  private static final String PATH = "site.climate";
  static final String SPEED = PATH + ".wind-speed";
  private static final String GROUND_SNOW = "ground-snow";

  private ClimateRule() {}

  static void check(Node.Group file, Readings said, Problems problems) {
    if (file.at("site") instanceof Node.Group place
        && place.at("climate") instanceof Node.Group climate) {
      enough(climate, problems);
      once(climate, "wind-speed", "wind-pressure", problems);
      once(climate, GROUND_SNOW, "snow", problems);
      basisOfPressure(climate, said, problems);
      speed(climate, said, problems);
    }
  }

  /** The kind of number that the file says the wind speed is, as far as it does. */
  static String basis(Node.Group file) {
    if (file.at("site") instanceof Node.Group place
        && place.at("climate") instanceof Node.Group climate
        && climate.at("wind-basis") instanceof Node.Scalar basis
        && Bounds.ofTheProgram().ranges().containsKey(SPEED + " as " + basis.text())) {
      return basis.text();
    }
    return Site.Weather.STRENGTH_GUST;
  }

  private static void enough(Node.Group climate, Problems problems) {
    Set<String> keys = climate.members().keySet();
    List<String> missing = new ArrayList<>();
    if (!keys.contains("frost-depth") && !keys.contains("air-freezing-index")) {
      missing.add(Listed.or(List.of("frost-depth", "air-freezing-index")));
    }
    if (!keys.contains(GROUND_SNOW) && !keys.contains("snow")) {
      missing.add(GROUND_SNOW);
    }
    if (!keys.contains("wind-speed") && !keys.contains("wind-pressure")) {
      missing.add("wind-speed");
    }
    if (!keys.contains("hardiness-zone") && !missing.isEmpty()) {
      problems.add(
          climate
              .origin()
              .lacking(PATH, String.join(", ", missing), ProblemPhrases.say("accepted.climate")));
    }
  }

  /** Two ways of saying the same could say two things. */
  private static void once(Node.Group climate, String one, String other, Problems problems) {
    Node.Member second = climate.members().get(other);
    if (climate.members().containsKey(one) && second != null) {
      problems.add(
          second
              .key()
              .problem(
                  PATH + "." + other,
                  ProblemPhrases.say("found.key-beside", "key", other, "other", one),
                  ProblemPhrases.say("accepted.left-out", "other", one)));
    }
  }

  private static void basisOfPressure(Node.Group climate, Readings said, Problems problems) {
    String basis = said.maybeWord(PATH + ".wind-basis").orElse(MEAN_HOURLY);
    if (climate.members().containsKey("wind-pressure") && !basis.equals(MEAN_HOURLY)) {
      problems.add(
          climate
              .originOf("wind-basis")
              .problem(
                  PATH + ".wind-basis",
                  basis,
                  ProblemPhrases.say("accepted.hourly", "basis", MEAN_HOURLY)));
    }
  }

  /** A gust of 55 mph is none that anybody designs for; as a mean it may be a storm. */
  private static void speed(Node.Group climate, Readings said, Problems problems) {
    if (said.maybeNumber(SPEED).isEmpty()) {
      return;
    }
    String basis = said.maybeWord(PATH + ".wind-basis").orElse(Site.Weather.STRENGTH_GUST);
    Bounds.Range range = Bounds.ofTheProgram().range(SPEED + " as " + basis);
    double mph = said.number(SPEED);
    if (!range.holds(mph)) {
      problems.add(
          climate
              .originOf("wind-speed")
              .problem(
                  SPEED,
                  said.original(SPEED),
                  ProblemPhrases.say("speed." + basis, "range", range.words(said.original(SPEED))))
              .withAdvice(advice(basis, mph < range.low())));
    }
  }

  private static String advice(String basis, boolean low) {
    if (low) {
      return ProblemPhrases.say("maybe.mean");
    }
    return ProblemPhrases.say(basis.startsWith("mean") ? "maybe.gust" : "maybe.strength-gust");
  }
}
