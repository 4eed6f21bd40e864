package org.scantling.words;

import java.util.List;
import java.util.Optional;
import org.scantling.quantity.Check;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Priority;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.tables.CheckNature;

/** What fills the blanks of a sentence: the evidence, then the finding, then the decision. */
final class Blanks {
  private static final double SEEN_IN = 1.0 / 64;
  private static final List<String> PAIR = List.of("demand", "capacity");

  private final Voice voice;
  private final Reason reason;
  private final Optional<Decision> decision;

  Blanks(Voice voice, Reason reason, Optional<Decision> decision) {
    this.voice = voice;
    this.reason = reason;
    this.decision = decision;
  }

  Optional<String> fill(String name) {
    return pointless(name) || untold(name) ? Optional.empty() : found(name);
  }

  /** The numbers of a check that is so far past its limit that they mean nothing. */
  private boolean pointless(String name) {
    return PAIR.contains(name)
        && reason.finding() instanceof Finding.Reject reject
        && Check.beyondTelling(reject.ratio());
  }

  /** True where no tape tells what a check asks from what there is. */
  private boolean untold(String name) {
    return reason.finding() instanceof Finding.Reject
        && against(name).filter(both -> both.get(0).equals(both.get(1))).isPresent();
  }

  private Optional<String> found(String name) {
    return reason
        .finding()
        .evidence()
        .find(name)
        .map(this::seen)
        .or(() -> ofFinding(name))
        .or(() -> ofDecision(name));
  }

  private String seen(Evidence.Seen seen) {
    if (seen instanceof Evidence.Seen.Amount amount) {
      return against(amount.name())
          .map(both -> both.get(PAIR.indexOf(amount.name())))
          .orElseGet(() -> voice.say(amount.measure()));
    }
    String text = ((Evidence.Seen.Word) seen).text();
    return switch (seen.name()) {
      case "combination" -> voice.combination(text);
      case "check" -> voice.check(text);
      case "broken" -> voice.label(Question.of(text));
      case "exposure", "vine", "soil" -> voice.word("criteria." + seen.name(), text);
      case "design", "rival" -> text;
      case "text", "fasteners" -> voice.metric(text);
      default -> voice.word(seen.name(), text);
    };
  }

  /** What a check asks and what there is are told apart. */
  private Optional<List<String>> against(String name) {
    Evidence evidence = reason.finding().evidence();
    return PAIR.contains(name)
            && evidence.find("demand").orElse(null) instanceof Evidence.Seen.Amount demand
            && evidence.find("capacity").orElse(null) instanceof Evidence.Seen.Amount capacity
        ? Optional.of(voice.apart(demand.measure(), capacity.measure()))
        : Optional.empty();
  }

  private Optional<String> ofFinding(String name) {
    if (name.equals("rule")) {
      return Optional.of(reason.note().id());
    }
    Finding finding = reason.finding();
    if (finding instanceof Finding.AtLeast least) {
      return number(name, least.question(), least.number());
    }
    if (finding instanceof Finding.AtMost most) {
      return number(name, most.question(), most.number());
    }
    if (finding instanceof Finding.PreferNumber wish) {
      return name.equals("moved")
          ? moved(wish)
          : kept(name, wish).or(() -> number(name, wish.question(), wish.number()));
    }
    if (finding instanceof Finding.PreferOption wish) {
      return option(name, wish.question(), wish.option());
    }
    if (finding instanceof Finding.Reject reject) {
      return rejected(name, reject);
    }
    if (finding instanceof Finding.Ease ease) {
      return over(name, ease.ratio());
    }
    return finding instanceof Finding.Refuse refuse ? over(name, refuse.ratio()) : Optional.empty();
  }

  private Optional<String> number(String name, Question question, double number) {
    return name.equals("number")
        ? Optional.of(voice.say(new Measure(number, question.unit())))
        : Optional.empty();
  }

  /** What stays as in the base is told as it will be, not as a hair more before it was rounded. */
  private Optional<String> kept(String name, Finding.PreferNumber wish) {
    return decision
        .filter(d -> name.equals("number") && wish.priority() == Priority.KEPT)
        .filter(d -> reason.governing() && d.base().isPresent() && !d.changed())
        .map(d -> voice.say(d.question(), d.proposed()));
  }

  private Optional<String> option(String name, Question question, String option) {
    return name.equals("option") ? Optional.of(voice.option(question, option)) : Optional.empty();
  }

  /** Which way a wish went from what was wanted first, if that can be seen. */
  private Optional<String> moved(Finding.PreferNumber wish) {
    return wish.evidence()
        .find("wanted")
        .filter(Evidence.Seen.Amount.class::isInstance)
        .map(seen -> wish.number() - ((Evidence.Seen.Amount) seen).measure().amount())
        .filter(byIn -> Math.abs(byIn) > SEEN_IN)
        .map(byIn -> voice.word("moved", byIn > 0 ? "out" : "in"));
  }

  private Optional<String> rejected(String name, Finding.Reject reject) {
    CheckNature nature = voice.nature(reject.check());
    return switch (name) {
      case "check" -> Optional.of(voice.check(reject.check()));
      case "must" -> Optional.of(voice.word("must", nature.word()));
      case "over" -> Optional.of(voice.over(reject.ratio(), nature));
      case "stopped" ->
          Optional.of(voice.check(reject.check())).filter(said -> !said.equals(reject.check()));
      case "exceeded" ->
          Optional.of(voice.over(reject.ratio(), nature)).filter(over -> reject.ratio() > 1);
      default ->
          option(name, reject.question(), reject.option()).or(() -> over(name, reject.ratio()));
    };
  }

  private Optional<String> over(String name, double ratio) {
    return switch (name) {
      case "ratio" -> Optional.of(voice.say(Measure.ratio(ratio)));
      case "over" -> Optional.of(voice.over(ratio));
      default -> Optional.empty();
    };
  }

  private Optional<String> ofDecision(String name) {
    return switch (name) {
      case "proposed" -> decision.map(d -> voice.say(d.question(), d.proposed()));
      case "base" -> decision.flatMap(d -> d.base().map(base -> voice.say(d.question(), base)));
      case "before" ->
          decision
              .filter(Decision::changed)
              .flatMap(d -> d.base().map(base -> voice.say(d.question(), base)));
      case "rounded" ->
          decision.filter(d -> rounded(d)).map(d -> voice.say(d.question(), d.proposed()));
      case "lowered" ->
          decision.filter(d -> lowered(d)).map(d -> voice.say(d.question(), d.proposed()));
      case "governs" -> reason.governing() ? Optional.of("") : Optional.empty();
      default -> Optional.empty();
    };
  }

  /** True where the governing number became a greater one by rounding. */
  private boolean rounded(Decision decision) {
    return reason.governing()
        && decision.proposed() instanceof Outcome.Amount amount
        && amount.measure().amount() - wished() > SEEN_IN;
  }

  /** True where rounding made the governing number a smaller one, as far as the reader can see. */
  private boolean lowered(Decision decision) {
    return reason.governing()
        && decision.proposed() instanceof Outcome.Amount amount
        && amount.measure().amount() < highest()
        && !number("number", decision.question(), highest())
            .equals(Optional.of(voice.say(decision.question(), decision.proposed())));
  }

  /** The number that was not to be passed or was wished for, or none that anything is less than. */
  private double highest() {
    Finding finding = reason.finding();
    if (finding instanceof Finding.AtMost most) {
      return most.number();
    }
    return finding instanceof Finding.PreferNumber wish ? wish.number() : Double.NEGATIVE_INFINITY;
  }

  /** The number that was to be reached, or none that anything is greater than. */
  private double wished() {
    Finding finding = reason.finding();
    if (finding instanceof Finding.AtLeast least) {
      return least.number();
    }
    return finding instanceof Finding.PreferNumber wish ? wish.number() : Double.POSITIVE_INFINITY;
  }
}
