package org.scantling.cli;

import java.util.List;
import org.scantling.intake.Outside;
import org.scantling.intake.OutsideException;
import org.scantling.intake.Problem;
import org.scantling.print.ErrorText;
import org.scantling.print.JsonText;
import org.scantling.print.Page;
import org.scantling.print.PrintOptions;
import org.scantling.print.TextPage;
import org.scantling.quantity.UnitSystem;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The answer to a file that asks for something outside the rules. */
final class OutsideAnswer {
  private OutsideAnswer() {}

  /** What is outside is the answer; what else is wrong with the file is told beside it. */
  static void print(OutsideException outside, CommandLine command, ParseResult parsed) {
    boolean json = "json".equalsIgnoreCase(format(parsed));
    command.getOut().print(json ? json(outside.found()) : text(outside.found()));
    command.getOut().flush();
    for (Problem problem : outside.problems()) {
      command.getErr().println(ErrorText.of(problem.text()));
    }
  }

  private static String format(ParseResult parsed) {
    ParseResult last = parsed;
    while (last.hasSubcommand()) {
      last = last.subcommand();
    }
    Object format = last.matchedOptionValue("--format", (Object) "text");
    return String.valueOf(format);
  }

  private static String text(List<Outside> found) {
    Page page = new Page();
    found.forEach(each -> page.paragraph(each.text()));
    return TextPage.print(page, PrintOptions.plain(UnitSystem.IMPERIAL));
  }

  private static String json(List<Outside> found) {
    ObjectNode root = JsonText.object();
    root.put("schema", "scantling/outside/1");
    root.put("status", "needs-engineer");
    ArrayNode all = root.putArray("outside");
    for (Outside each : found) {
      ObjectNode node = all.addObject();
      node.put("file", each.file());
      each.line().ifPresent(line -> node.put("line", line));
      node.put("field", each.field());
      node.put("found", each.found());
      node.put("because", each.because());
      node.put("for", each.whose());
      node.put("text", each.sentence());
    }
    return JsonText.print(root);
  }
}
