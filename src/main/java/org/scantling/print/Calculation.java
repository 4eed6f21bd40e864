package org.scantling.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.scantling.quantity.Measure;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Sight;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.words.CalculationWords;
import org.scantling.words.Reader;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** All that was worked out for a proposal, in the order in which one goes over it. */
public final class Calculation {
  private final Proposal proposal;
  private final Words words;
  private final Voice voice;
  private final Voice plain;

  public Calculation(Proposal proposal, Words words, UnitSystem units) {
    this.proposal = proposal;
    this.words = words;
    this.voice = words.voice(Reader.ENGINEER, units);
    this.plain = words.voice(Reader.BUILDER, units);
  }

  /**
   * Some lines under one heading.
   *
   * @param member the member that it is a check of; empty for what several go by
   */
  public record Part(String member, String title, List<Line> lines) {
    public Part {
      lines = List.copyOf(lines);
    }
  }

  /**
   * One line of it.
   *
   * @param what is worked out
   * @param formula in symbols, then in numbers
   * @param clause where it comes from
   * @param seen false where nobody has seen that in print
   */
  public record Line(String what, String formula, String clause, boolean seen) {}

  /** The working from the loads to the joints, each line after what it reads. */
  public List<Part> parts() {
    Map<List<String>, List<Line>> byTitle = new LinkedHashMap<>();
    for (CalculationStep step : proposal.trace()) {
      byTitle
          .computeIfAbsent(
              List.of(member(step), CalculationWords.of(voice).part(step)),
              key -> new ArrayList<>())
          .add(line(step));
    }
    List<Part> parts = new ArrayList<>();
    byTitle.forEach((key, lines) -> parts.add(new Part(key.get(0), key.get(1), lines)));
    return parts;
  }

  Line line(CalculationStep step) {
    return new Line(
        CalculationWords.of(voice).worked(step),
        CalculationWords.of(voice).formula(step),
        voice.source(step.source()),
        seen(step.source()));
  }

  private static boolean seen(Source source) {
    return source.sight() == Sight.SEEN;
  }

  /** Of which member a step is the check; what several checks read belongs to none. */
  private String member(CalculationStep step) {
    return step.evidence()
        .find("check")
        .filter(Evidence.Seen.Word.class::isInstance)
        .map(check -> ((Evidence.Seen.Word) check).text())
        .flatMap(id -> proposal.checks().stream().filter(each -> each.id().equals(id)).findFirst())
        .map(Checked::role)
        .orElse("");
  }

  /** What every symbol of the working means, each once. */
  public List<Block.Item> symbols() {
    return new SymbolList(steps().toList(), voice).items();
  }

  /** All steps that are told: of what is built, then of smaller sizes that were tried. */
  private Stream<CalculationStep> steps() {
    return Stream.concat(
        proposal.trace().stream(),
        proposal.more().tried().stream().flatMap(each -> each.steps().stream()));
  }

  /**
   * A check with its numbers as they are printed.
   *
   * @param worked false for a distance that a standard prescribes
   */
  public record Check(
      Checked checked,
      String name,
      boolean worked,
      String combination,
      String duration,
      String demand,
      String capacity,
      String used,
      String base,
      String clause) {}

  /** That all checks pass, and which of them do so only by the record of the base. */
  public String passing() {
    return new PassingChecks(plain, proposal.checkLimits()).sentence(proposal.checks());
  }

  /** Every check, the one that is nearest to its limit first. */
  public List<Check> checks() {
    return proposal.checks().stream()
        .sorted(Comparator.comparingDouble((Checked each) -> each.check().ratio()).reversed())
        .map(this::check)
        .toList();
  }

  Check check(Checked checked) {
    CheckLine line = new CheckLine(plain, proposal.checkLimits());
    boolean pointless = line.pointless(checked);
    return new Check(
        checked,
        Sentence.capital(line.name(checked)),
        !plain.prescribed(checked.id()),
        checked.combination(),
        voice.say(Measure.ratio(checked.loadDurationFactor())),
        pointless ? "" : voice.say(checked.demand()),
        pointless ? "" : voice.say(checked.capacity()),
        line.used(checked),
        line.base(checked),
        voice.source(checked.source()));
  }

  /**
   * A number that the calculation starts from.
   *
   * @param from where it was taken
   */
  public record Input(String name, String value, String from) {}

  /** What the place, the timber and the loads are, each with where that was taken from. */
  public List<Input> inputs() {
    return words.subjects().rows().stream()
        .filter(SubjectRow::given)
        .flatMap(row -> proposal.decision(row.question()).stream())
        .map(
            each ->
                new Input(
                    Sentence.capital(plain.label(each.question())),
                    plain.proposed(each),
                    Sourced.sentence(plain, each.governing(), each)))
        .toList();
  }

  /**
   * A document or a clause that was used.
   *
   * @param sight how it came to us
   * @param uses how many lines and checks go by it
   */
  public record Used(String citation, Sight sight, int uses) {}

  /** Clauses of documents, by their names; statics and common practice have none. */
  public List<Used> clauses() {
    Map<String, Used> byName = new TreeMap<>();
    Stream.concat(
            steps().map(CalculationStep::source), proposal.checks().stream().map(Checked::source))
        .filter(each -> each.kind() == SourceKind.STANDARD || each.kind() == SourceKind.HANDBOOK)
        .forEach(
            each ->
                byName.merge(
                    each.citation(),
                    new Used(each.citation(), each.sight(), 1),
                    (one, other) ->
                        new Used(
                            one.citation(),
                            one.sight().compareTo(other.sight()) > 0 ? one.sight() : other.sight(),
                            one.uses() + 1)));
    return List.copyOf(byName.values());
  }

  /** The documents that the clauses are of, with their editions, each once. */
  public List<String> documents() {
    return clauses().stream()
        .flatMap(each -> document(each.citation()).stream())
        .distinct()
        .sorted()
        .toList();
  }

  private Optional<String> document(String clause) {
    return words.tables().documents().stream()
        .filter(clause::startsWith)
        .max(Comparator.comparingInt(String::length));
  }
}
