package org.scantling.tables;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Holds the steps of a house to occasions on which their numbers are known: of a walk without
 * braces nobody knows how wide to bore for them.
 */
final class StepLinks {
  private static final Pattern BLANK = Pattern.compile("\\{([a-z-]+)}");
  private static final String ALWAYS = "always";

  private final Tables ours;
  private final HouseLines lines;

  private StepLinks(Tables ours, HouseLines lines) {
    this.ours = ours;
    this.lines = lines;
  }

  /**
   * @throws TableException at the row of the house whose occasion does not bring its numbers along
   */
  static void check(Tables tables, Tables ours, HouseLines lines) {
    StepLinks links = new StepLinks(ours, lines);
    tables.steps().rows().stream()
        .filter(row -> lines.has(TableFile.STEPS, row.id()))
        .forEach(links::known);
  }

  private void known(StepRow row) {
    for (String blank : blanks(row)) {
      List<StepRow> fillers =
          ours.steps().rows().stream().filter(each -> blanks(each).contains(blank)).toList();
      if (fillers.stream().noneMatch(each -> row.occasions().containsAll(needed(each)))) {
        throw lines.refuse(
            TableFile.STEPS,
            row.id(),
            "occasion",
            String.join(";", row.occasions()),
            RefusalWords.say(
                "steps.occasion",
                "blank",
                blank,
                "occasions",
                fillers.stream()
                    .map(each -> String.join(";", each.occasions()))
                    .distinct()
                    .collect(Collectors.joining(", "))));
      }
    }
  }

  private static List<String> needed(StepRow row) {
    return row.occasions().stream().filter(each -> !each.equals(ALWAYS)).toList();
  }

  private static Set<String> blanks(StepRow row) {
    return BLANK
        .matcher(row.text())
        .results()
        .map((MatchResult each) -> each.group(1))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
