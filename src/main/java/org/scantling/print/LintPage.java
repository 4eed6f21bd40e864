package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import org.scantling.rulebook.LintReport;
import org.scantling.sayings.Sayings;

/** What was proved of the rule base, and what is wrong with it. */
final class LintPage {
  private static final Sayings SAYINGS = Sayings.of("rulebook");

  private LintPage() {}

  static Page of(LintReport report) {
    Page page = new Page().title(SAYINGS.say("lint"));
    if (report.clean()) {
      page.paragraph(SAYINGS.say("lint.clean"));
    } else {
      String count = Integer.toString(report.complaints().size());
      page.paragraph(SAYINGS.say("lint.complaints", "count", count));
      page.heading(SAYINGS.say("lint.wrong"))
          .items(
              report.complaints().stream()
                  .map(each -> new Block.Item(each.where(), each.what() + "."))
                  .toList());
    }
    List<List<String>> proofs = new ArrayList<>();
    proofs.add(List.of(SAYINGS.say("lint.proofs"), SAYINGS.say("column.holds")));
    report
        .proofs()
        .forEach(each -> proofs.add(List.of(Integer.toString(each.count()), each.sentence())));
    return page.heading(SAYINGS.say("lint.proofs")).add(new Block.Grid(proofs));
  }
}
