package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.BeamDiagram;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Reason;
import org.scantling.words.Reader;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** What goes with a calculation: smaller sizes that were tried, shear and moment of the beams. */
public final class CalculationBeside {
  private final Calculation calculation;
  private final Proposal proposal;
  private final Words words;
  private final Voice voice;
  private final Voice plain;

  public CalculationBeside(
      Calculation calculation, Proposal proposal, Words words, UnitSystem units) {
    this.calculation = calculation;
    this.proposal = proposal;
    this.words = words;
    this.voice = words.voice(Reader.ENGINEER, units);
    this.plain = words.voice(Reader.BUILDER, units);
  }

  /**
   * A size that was tried and could not be.
   *
   * @param why the check that stopped it, with its numbers
   */
  public record Rejected(String part, String option, String why, String clause) {}

  /** Of every timber the next smaller sizes, the nearest to what is proposed last. */
  public List<Rejected> rejected() {
    List<Rejected> all = new ArrayList<>();
    for (SubjectRow row : words.subjects().rows()) {
      if (row.safety()) {
        proposal.decision(row.question()).ifPresent(each -> rejected(each, all));
      }
    }
    return all;
  }

  private void rejected(Decision decision, List<Rejected> all) {
    for (Reason reason : decision.rejected()) {
      if (reason.finding() instanceof Finding.Reject reject) {
        all.add(
            new Rejected(
                Sentence.capital(plain.label(decision.question())),
                plain.option(decision.question(), reject.option()),
                plain.sentence(reason, decision),
                voice.source(reason.source())));
      }
    }
  }

  /**
   * The next smaller size of a member, with the check that stopped it.
   *
   * @param size as it is said
   * @param check with its numbers
   * @param asStopped false where it is worked among timbers that changed since it was stopped
   */
  public record Tried(
      String member,
      String size,
      Calculation.Check check,
      boolean asStopped,
      List<Calculation.Line> lines) {
    public Tried {
      lines = List.copyOf(lines);
    }
  }

  /** Next smaller sizes that a check stopped, each worked as the size proposed. */
  public List<Tried> tried() {
    return proposal.more().tried().stream()
        .map(
            each ->
                new Tried(
                    each.checked().role(),
                    plain.option(each.question(), each.option()),
                    calculation.check(each.checked()),
                    each.asStopped(),
                    each.steps().stream().map(calculation::line).toList()))
        .toList();
  }

  /**
   * Shear or moment of a beam.
   *
   * @param check the name of the check
   */
  public record Drawn(BeamDiagram diagram, String check) {}

  /** Shear and moment of crossbeam and header. */
  public List<Drawn> diagrams() {
    CheckLine line = new CheckLine(plain, proposal.checkLimits());
    return proposal.more().diagrams().stream()
        .map(
            each ->
                new Drawn(
                    each,
                    proposal.checks().stream()
                        .filter(one -> one.id().equals(each.check()))
                        .findFirst()
                        .map(line::name)
                        .orElseThrow()))
        .toList();
  }
}
