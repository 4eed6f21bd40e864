package org.scantling.print;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.Choice;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reach;
import org.scantling.reasons.Stretch;
import org.scantling.reasons.Threshold;
import org.scantling.reasons.Thresholds;
import org.scantling.words.Reader;
import org.scantling.words.Words;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** How far each choice holds, as JSON for programs. */
public final class ThresholdJson {
  private static final String SCHEMA = "scantling/limits/1";
  private static final String NO_STRUCTURE = "needs-engineer";

  private final Words words;
  private final ThresholdSentences sentences;
  private final ReachSentences ends;

  private ThresholdJson(Words words) {
    this.words = words;
    this.sentences =
        new ThresholdSentences(words, words.voice(Reader.BUILDER, UnitSystem.IMPERIAL), true);
    this.ends = new ReachSentences(words, words.voice(Reader.BUILDER, UnitSystem.IMPERIAL));
  }

  /**
   * @param choice how the base was chosen, where several were named
   */
  public static String of(Thresholds thresholds, Words words, Optional<BaseChoice> choice) {
    return JsonText.print(new ThresholdJson(words).root(thresholds, choice));
  }

  private ObjectNode root(Thresholds thresholds, Optional<BaseChoice> choice) {
    ObjectNode root = JsonText.object();
    root.put("schema", SCHEMA);
    root.put("status", thresholds.today().proposed() ? "proposed" : NO_STRUCTURE);
    root.put("title", thresholds.today().title());
    BasesJson.put(root, choice, words);
    ArrayNode points = root.putArray("turningPoints");
    ArrayNode intervals = root.putArray("intervals");
    ArrayNode ends = root.putArray("ends");
    ArrayNode searched = root.putArray("searched");
    for (Reach reach : thresholds.reaches()) {
      reach.points().forEach(point -> points.add(inBays(point(point), point, thresholds.today())));
      thresholds.questions().stream()
          .filter(reach.mixed()::containsKey)
          .forEach(
              each ->
                  intervals.add(
                      intervals(reach, each, Objects.requireNonNull(reach.mixed().get(each)))));
      reach.ends().forEach(end -> ends.add(end(reach, end, thresholds.today().proposed())));
      searched.add(searched(reach));
    }
    return root;
  }

  private ObjectNode point(Threshold point) {
    ObjectNode node = JsonText.object();
    subject(node, point.question());
    demand(node, point.demand(), point.at());
    node.put("direction", point.up() ? "up" : "down");
    value(node, "at", point.at());
    value(node, "beyond", point.beyond());
    step(node, point.at(), point.beyond());
    choice(node, "from", point.here());
    choice(node, "to", point.there());
    governs(node, "governsHere", point.here());
    governs(node, "governs", point.there());
    node.put("text", sentences.alone(point));
    return node;
  }

  /** A bay is no path of the site file: it is so many bays, and a walk as long as they are. */
  private static ObjectNode inBays(ObjectNode node, Threshold point, Proposal today) {
    if (point.demand() == Demand.BAY) {
      today.decision(Question.BAYS).ifPresent(decision -> value(node, "bays", decision.proposed()));
    }
    return node;
  }

  private ObjectNode intervals(Reach reach, Question question, List<Stretch> stretches) {
    ObjectNode node = JsonText.object();
    subject(node, question);
    demand(node, reach.demand(), reach.today());
    ArrayNode all = node.putArray("stretches");
    for (Stretch each : stretches) {
      ObjectNode stretch = all.addObject();
      value(stretch, "first", each.first());
      value(stretch, "last", each.last());
      choice(stretch, "choice", each.choice());
    }
    return node;
  }

  private ObjectNode end(Reach reach, Reach.End end, boolean proposed) {
    ObjectNode node = JsonText.object();
    demand(node, reach.demand(), end.at());
    node.put("direction", end.up() ? "up" : "down");
    value(node, "at", end.at());
    value(node, "beyond", end.beyond());
    step(node, end.at(), end.beyond());
    node.put("to", proposed ? NO_STRUCTURE : "proposed");
    node.put("governs", end.refused().reason().note().id());
    node.put("text", proposed ? ends.end(reach, end) : ends.begins(reach, end));
    return node;
  }

  private static ObjectNode searched(Reach reach) {
    ObjectNode node = JsonText.object();
    demand(node, reach.demand(), reach.today());
    value(node, "today", reach.today());
    value(node, "least", reach.least());
    value(node, "most", reach.most());
    return node;
  }

  private static void subject(ObjectNode node, Question question) {
    node.put("subject", question.subject());
    node.put("attribute", question.attribute());
  }

  private static void demand(ObjectNode node, Demand demand, Outcome value) {
    node.put("demand", demand.setting());
    node.put(
        "unit",
        value instanceof Outcome.Amount amount ? amount.measure().unit().imperialSymbol() : "word");
  }

  private static void value(ObjectNode node, String key, Outcome value) {
    if (value instanceof Outcome.Word word) {
      node.put(key, word.text());
    } else {
      double amount = ((Outcome.Amount) value).measure().amount();
      if (((Outcome.Amount) value).measure().unit() == Unit.COUNT) {
        node.put(key, Math.round(amount));
      } else {
        node.put(key, JsonText.rounded(amount));
      }
    }
  }

  private static void step(ObjectNode node, Outcome at, Outcome beyond) {
    if (at instanceof Outcome.Amount one && beyond instanceof Outcome.Amount other) {
      double apart = Math.abs(other.measure().amount() - one.measure().amount());
      node.put("step", JsonText.rounded(apart));
    }
  }

  private static void choice(ObjectNode node, String key, Choice choice) {
    if (choice instanceof Choice.Made made) {
      value(node, key, made.decision().proposed());
    } else if (choice.refused()) {
      node.put(key, NO_STRUCTURE);
    } else {
      node.putNull(key);
    }
  }

  private static void governs(ObjectNode node, String key, Choice choice) {
    if (choice instanceof Choice.Made made) {
      node.put(key, made.decision().governing().note().id());
    } else if (choice instanceof Choice.Refused refused) {
      node.put(key, refused.result().reason().note().id());
    } else {
      node.putNull(key);
    }
  }
}
