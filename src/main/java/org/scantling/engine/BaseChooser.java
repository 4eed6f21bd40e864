package org.scantling.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.BaseCount;
import org.scantling.reasons.BaseGap;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.TriedBase;
import org.scantling.rulebase.Fired;
import org.scantling.rulebase.RuleBase;
import org.scantling.rulebase.RuleBaseFault;
import org.scantling.tables.BaseChangeRow;
import org.scantling.tables.Tables;

/**
 * Chooses among several bases, once the whole structure is proposed from each: the rules are told
 * in what any two of them differ, and the one that gives way to none is taken.
 */
final class BaseChooser {
  private final RuleBase rules;
  private final Predicate<String> allowed;
  private final List<BaseChangeRow> rows;

  BaseChooser(RuleBase rules, Predicate<String> allowed, Tables tables) {
    this.rules = rules;
    this.allowed = allowed;
    this.rows = List.copyOf(tables.baseChanges().rows());
  }

  /**
   * @param bases two or more
   * @param proposals what is answered over each
   */
  BaseChoice choose(List<NamedBase> bases, List<Proposal> proposals) {
    List<TriedBase> tried = new ArrayList<>();
    for (int place = 0; place < bases.size(); place++) {
      NamedBase base = bases.get(place);
      Proposal proposal = proposals.get(place);
      BaseCounts counts =
          new BaseCounts(proposal, base.site().base().proven().isEmpty(), place, rows);
      tried.add(
          new TriedBase(
              base.file(),
              name(base, bases),
              proposal,
              counts.list(),
              counts.changed(),
              Optional.empty()));
    }
    return decided(tried);
  }

  /** Where two have one title their files tell them apart. */
  private static String name(NamedBase base, List<NamedBase> all) {
    String title = base.site().base().title();
    boolean only = all.stream().filter(each -> title(each).equals(title)).count() == 1;
    return only ? title : title + " (" + base.file() + ")";
  }

  private static String title(NamedBase base) {
    return base.site().base().title();
  }

  private BaseChoice decided(List<TriedBase> tried) {
    List<Fact> facts = new ArrayList<>(gaps(tried));
    facts.addAll(rows);
    Map<String, List<Reason>> against = new HashMap<>();
    for (Fired fired : rules.run(Phase.BASE, facts, allowed)) {
      against.computeIfAbsent(base(fired), name -> new ArrayList<>()).add(reason(fired));
    }
    List<TriedBase> left =
        tried.stream().filter(each -> !against.containsKey(each.name())).toList();
    if (left.size() != 1) {
      throw new RuleBaseFault(left.size() + " of " + tried.size() + " bases give way to none");
    }
    String taken = left.get(0).name();
    List<TriedBase> told =
        tried.stream()
            .map(each -> each.name().equals(taken) ? each : beside(each, taken, against))
            .toList();
    return new BaseChoice(decision(taken, told), told);
  }

  /** The same base with what it gives way to the taken one by. */
  private static TriedBase beside(TriedBase base, String taken, Map<String, List<Reason>> against) {
    Reason reason =
        against.getOrDefault(base.name(), List.of()).stream()
            .filter(each -> other(each).equals(taken))
            .findFirst()
            .orElseThrow(() -> new RuleBaseFault(base.name() + " does not give way to " + taken));
    return new TriedBase(
        base.file(),
        base.name(),
        base.proposal(),
        base.counts(),
        base.changed(),
        Optional.of(reason));
  }

  /** The last to give way tells why it is this one, the others why they are not. */
  private Decision decision(String taken, List<TriedBase> tried) {
    List<Reason> reasons = tried.stream().flatMap(each -> each.reason().stream()).toList();
    Reason last = reasons.get(0);
    for (Reason each : reasons) {
      last = weighs(each) > weighs(last) ? each : last;
    }
    return new Decision(
        Question.BASE,
        Optional.empty(),
        new Outcome.Word(taken),
        false,
        List.of(last.governing(true)),
        reasons,
        List.of());
  }

  private int weighs(Reason reason) {
    String row = ((Finding.Reject) reason.finding()).check();
    return rows.stream().map(BaseChangeRow::id).toList().indexOf(row);
  }

  private Collection<BaseGap> gaps(List<TriedBase> tried) {
    List<BaseGap> gaps = new ArrayList<>();
    for (TriedBase one : tried) {
      for (TriedBase other : tried) {
        for (int place = 0; one != other && place < rows.size(); place++) {
          gap(one, other, place).ifPresent(gaps::add);
        }
      }
    }
    return gaps;
  }

  /** Nothing where the two are alike, or where one of them does not tell. */
  private Optional<BaseGap> gap(TriedBase one, TriedBase other, int place) {
    String what = rows.get(place).id();
    Optional<BaseCount> here = count(one, what);
    Optional<BaseCount> there = count(other, what);
    if (here.isEmpty() || there.isEmpty() || here.equals(there)) {
      return Optional.empty();
    }
    return Optional.of(
        new BaseGap(
            one.name(),
            other.name(),
            what,
            place + 1,
            here.get().measure().amount(),
            there.get().measure().amount(),
            here.get().measure().unit()));
  }

  private static Optional<BaseCount> count(TriedBase base, String what) {
    return base.counts().stream().filter(each -> each.what().equals(what)).findFirst();
  }

  private static String base(Fired fired) {
    return ((Finding.Reject) fired.finding()).option();
  }

  private static Reason reason(Fired fired) {
    return new Reason(fired.finding(), fired.note(), false, fired.because());
  }

  private static String other(Reason reason) {
    return reason
        .finding()
        .evidence()
        .find("rival")
        .map(seen -> ((Evidence.Seen.Word) seen).text())
        .orElse("");
  }
}
