package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.OptionMeasure;
import org.scantling.reasons.Proposal.Result;
import org.scantling.reasons.WholeOption;
import org.scantling.reasons.WholeOptions;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Whole structures that could be built, for programs. */
public final class OptionsJson {
  private final WholeOptions found;
  private final OptionWays ways;

  private OptionsJson(WholeOptions found, Words words) {
    this.found = found;
    Voice voice = words.voice(Reader.BUILDER, UnitSystem.IMPERIAL);
    this.ways =
        new OptionWays(
            found, words, voice, new OptionFigures(voice, UnitSystem.IMPERIAL), OptionWays.SAYINGS);
  }

  public static String of(WholeOptions found, Words words) {
    return JsonText.print(new OptionsJson(found, words).whole());
  }

  private ObjectNode whole() {
    ObjectNode node = JsonText.object();
    node.put("schema", "scantling/options/1");
    node.put("title", found.today().title());
    node.put("status", found.shown().isEmpty() ? "needs-engineer" : "proposed");
    if (found.today().result() instanceof Result.NeedsEngineer none) {
      node.put("demand", none.demand());
    }
    node.put("tried", found.tried()).put("sound", found.sound());
    ArrayNode options = node.putArray("options");
    found.shown().forEach(each -> options.add(option(each)));
    found.beaten().ifPresent(by -> by.settings().forEach(node.putArray("proposedBeatenBy")::add));
    return node;
  }

  private ObjectNode option(WholeOption option) {
    ObjectNode node = JsonText.object();
    node.put("name", String.join(", ", named(option)));
    option.settings().forEach(node.putArray("set")::add);
    node.put("proposed", option.asProposed());
    ArrayNode best = node.putArray("bestAt");
    option.bestAt().forEach(each -> best.add(each.id()));
    number(node, "timberCuFt", option, OptionMeasure.TIMBER);
    node.put("postCount", Math.round(option.measure(OptionMeasure.HOLES)));
    number(node, "soilOutCuFt", option, OptionMeasure.SOIL);
    number(node, "heaviestLiftLb", option, OptionMeasure.LIFT);
    node.put("hands", option.hands());
    number(node, "workHours", option, OptionMeasure.HOURS);
    number(node, "nearness", option, OptionMeasure.LOOK);
    number(node, "tightestRatio", option, OptionMeasure.SPARE);
    number(node, "concededIn", option, OptionMeasure.CONCEDED);
    option.cost().ifPresent(cost -> cost(cost, node.putObject("cost")));
    ways.changes(option).forEach(node.putArray("changes")::add);
    ways.saves(option).forEach(node.putArray("saves")::add);
    ways.givesUp(option).forEach(node.putArray("givesUp")::add);
    return node;
  }

  private List<String> named(WholeOption option) {
    List<String> names = new ArrayList<>();
    if (option.asProposed()) {
      names.add(OptionWays.SAYINGS.say("name.proposed"));
    }
    names.addAll(ways.best(option));
    return names.isEmpty() ? List.of(OptionWays.SAYINGS.say("name.next")) : names;
  }

  private static void number(
      ObjectNode node, String key, WholeOption option, OptionMeasure measure) {
    node.put(key, JsonText.rounded(option.measure(measure)));
  }

  private static void cost(WholeOption.Cost cost, ObjectNode node) {
    cost.amount().ifPresentOrElse(each -> node.put("amount", each), () -> node.putNull("amount"));
    node.put("currency", cost.currency());
    cost.without().forEach(node.putArray("without")::add);
  }
}
