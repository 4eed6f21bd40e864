package org.scantling.intake;

import java.util.List;

/**
 * One value of the site file overridden on the command line: {@code --set walkway.length=32ft}.
 *
 * @param path the field, such as {@code walkway.length} or {@code planting[0].vine}
 * @param value the new value, as it would stand in the file
 */
public record Setting(String path, String value) {
  /**
   * Reads the text after {@code --set}.
   *
   * @param text {@code path=value}
   * @throws IntakeException when it has no equals sign or no path
   */
  public static Setting parse(String text) {
    int equals = text.indexOf('=');
    if (equals < 1) {
      Problem problem =
          Origin.whole("--set " + ProblemPhrases.shortened(text))
              .problem("option", ProblemPhrases.shortened(text), "path=value")
              .withAdvice(ProblemPhrases.say("advice.setting"));
      throw new IntakeException(List.of(problem));
    }
    return new Setting(text.substring(0, equals).strip(), text.substring(equals + 1).strip());
  }

  String name() {
    return "--set " + ProblemPhrases.shortened(path);
  }
}
