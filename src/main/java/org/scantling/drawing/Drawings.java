package org.scantling.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.shop.Lists;
import org.scantling.tables.Tables;

/** Every drawing of a proposal, as files. */
public final class Drawings {
  private final Subject subject;
  private final BaseFrame base;

  private Drawings(Subject subject, BaseFrame base) {
    this.subject = subject;
    this.base = base;
  }

  /**
   * The drawings of a proposal.
   *
   * @param lists what is drawn: pieces and set-out
   * @param site the site that it was made for
   * @param base where everything stands in the base design
   * @param tables the sizes that the base is made of
   * @param units feet and inches, or millimeters
   * @return text by the name of its file, each a picture that works by itself
   * @throws IllegalArgumentException when the proposal holds no structure
   */
  public static Map<String, String> of(
      Lists lists, Proposal proposal, Site site, Geometry base, Tables tables, UnitSystem units) {
    if (!(proposal.result() instanceof Proposal.Result.Proposed done)) {
      throw new IllegalArgumentException("'" + proposal.title() + "' has nothing to draw");
    }
    Subject subject =
        new Subject(
            proposal.title(),
            lists.pieces(),
            lists.setOut(),
            done.structure(),
            number(proposal, Question.FROST_DEPTH),
            machine(site),
            new DrawnLengths(units));
    return new Drawings(subject, new BaseFrame(site.base(), base, tables)).files();
  }

  private Map<String, String> files() {
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(new SetOutSheet(subject).sheet());
    sheets.add(new SideSheet(subject).sheet());
    sheets.add(new EndSheet(subject).sheet());
    sheets.add(new CanopySheet(subject).sheet());
    sheets.add(new ThenAndNowSheet(subject, base).sheet());
    Map<String, String> files = new LinkedHashMap<>();
    sheets.forEach(each -> files.put(each.name() + ".svg", SvgWriter.write(each)));
    return files;
  }

  private static OptionalDouble machine(Site site) {
    return site.walkway().users().stream()
        .filter(Site.User.Machine.class::isInstance)
        .mapToDouble(each -> ((Site.User.Machine) each).machineWidthIn())
        .max();
  }

  static OptionalDouble number(Proposal proposal, Question question) {
    Optional<Outcome> outcome = proposal.decision(question).map(Decision::proposed);
    return outcome.isPresent() && outcome.get() instanceof Outcome.Amount amount
        ? OptionalDouble.of(amount.measure().amount())
        : OptionalDouble.empty();
  }
}
