package org.scantling.print;

import java.util.Optional;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Review;
import org.scantling.reasons.Shortfall;
import org.scantling.sayings.Sayings;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The check of a fixed design as JSON for programs: inches, pounds and psf. */
public final class ReviewJson {
  private static final String SCHEMA = "scantling/check/1";

  private final Review review;
  private final Words words;
  private final Voice voice;
  private final ReasonJson reasons;

  private ReviewJson(Review review, Words words) {
    this.review = review;
    this.words = words;
    this.voice = words.voice(Reader.BUILDER, UnitSystem.IMPERIAL);
    this.reasons = new ReasonJson(words, Reader.BUILDER);
  }

  /**
   * @param choice how the base was chosen, where several were named
   */
  public static String of(Review review, Words words, Optional<BaseChoice> choice) {
    return JsonText.print(new ReviewJson(review, words).node(choice));
  }

  private ObjectNode node(Optional<BaseChoice> choice) {
    ObjectNode root = JsonText.object();
    root.put("schema", SCHEMA);
    root.put("status", status());
    root.put("title", review.title());
    root.putObject("design").put("title", review.designTitle());
    root.set("base", reasons.base(review.baseTitle(), review.checkLimits()));
    BasesJson.put(root, choice, words);
    review.refusal().ifPresent(broken -> root.set("broken", reasons.broken(broken)));
    root.set("criteria", CriteriaJson.of(review));
    root.set("checks", reasons.checks(review.checks(), review.checkLimits()));
    failures(root.putArray("failures"));
    ArrayNode limits = root.putArray("limits");
    review.limits().forEach(each -> limits.add(limit(each)));
    review.unworked().forEach(root.putArray("unworked")::add);
    ArrayNode taken = root.putArray("taken");
    review.decisions().stream()
        .filter(each -> !words.subjects().row(each.question()).given())
        .forEach(each -> taken.add(reasons.decision(each)));
    root.set("cautions", reasons.cautions(review.cautions()));
    review.assumptions().forEach(root.putArray("assumptions")::add);
    review.unsaid().forEach(root.putArray("unsaid")::add);
    return root;
  }

  private String status() {
    return review.refusal().isPresent() ? "needs-engineer" : review.passes() ? "passes" : "fails";
  }

  /** All that makes it fail, checks first, each kind worst first. */
  private void failures(ArrayNode failures) {
    CheckLine line = new CheckLine(voice, review.checkLimits());
    for (Checked each : review.failing()) {
      ObjectNode node = failures.addObject();
      node.put("kind", "check");
      node.put("id", each.id());
      JsonText.ratio(node, each.check().ratio());
      node.put("limitRatio", JsonText.rounded(review.checkLimits().limitRatio(each)));
      node.put("text", Sentence.capital(each.role()) + ", " + line.failing(each));
      node.set("source", ReasonJson.source(each.source()));
    }
    review.limits().stream()
        .filter(each -> each.kind().fails())
        .forEach(each -> failures.add(limit(each)));
    for (String role : review.unworked()) {
      ObjectNode node = failures.addObject();
      node.put("kind", "unworked");
      node.put("id", role);
      node.put("text", Sayings.of("review").say("unworked.one"));
    }
  }

  private ObjectNode limit(Shortfall limit) {
    ObjectNode node = JsonText.object();
    node.put("kind", limit.kind().word());
    node.put("subject", limit.question().subject());
    node.put("attribute", limit.question().attribute());
    ReasonJson.put(node, "found", limit.found());
    node.put("unit", limit.question().unit().imperialSymbol());
    limit.ratio().ifPresent(ratio -> JsonText.ratio(node, ratio));
    node.put("rule", limit.reason().note().id());
    node.put("text", voice.sentence(limit.reason()));
    node.set("source", ReasonJson.source(limit.reason().source()));
    return node;
  }
}
