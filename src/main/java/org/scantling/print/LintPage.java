package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import org.scantling.rulebook.LintReport;

/** What was proved of the rule base, and what is wrong with it. */
final class LintPage {
  private LintPage() {}

  static Page of(LintReport report) {
    Page page = new Page().title("The rule base, looked through");
    if (report.clean()) {
      page.paragraph("Complete and consistent.");
    } else {
      page.paragraph("Not in order: " + count(report.complaints().size()) + ".");
      page.heading("Wrong")
          .items(
              report.complaints().stream()
                  .map(each -> new Block.Item(each.where(), each.what() + "."))
                  .toList());
    }
    List<List<String>> proofs = new ArrayList<>();
    proofs.add(List.of("Looked at", "What must hold"));
    report
        .proofs()
        .forEach(each -> proofs.add(List.of(Integer.toString(each.count()), each.sentence())));
    return page.heading("Looked at").add(new Block.Grid(proofs));
  }

  private static String count(int complaints) {
    return complaints == 1 ? "one thing is wrong" : complaints + " things are wrong";
  }
}
