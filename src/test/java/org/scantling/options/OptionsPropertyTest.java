package org.scantling.options;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;
import org.scantling.engine.Engine;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.print.ProposedDesign;
import org.scantling.property.House;
import org.scantling.reasons.Decision;
import org.scantling.reasons.OptionMeasure;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Review;
import org.scantling.reasons.WholeOption;
import org.scantling.reasons.WholeOptions;
import org.scantling.tables.OptionCountRow;

/** What holds of the ways to build any site, drawn by a seed over the sites that ship. */
class OptionsPropertyTest {
  private static final Engine ENGINE = new Engine(House.RULES, House.TABLES);

  private static final List<String> SITES =
      List.of(
          "bean-row",
          "mower-lane",
          "stone-terrace",
          "metric-country",
          "wisteria-court",
          "step-free");

  @Property(tries = 1, seed = "20261130", edgeCases = EdgeCasesMode.NONE)
  void one_site(@ForAll @IntRange(max = 1_000_000) int seed) {
    check(new Drawn(seed));
  }

  @Tag("slow")
  @Property(tries = 3, seed = "20270101", edgeCases = EdgeCasesMode.NONE)
  void a_few_sites(@ForAll @IntRange(max = 1_000_000) int seed) {
    check(new Drawn(seed));
  }

  /** A site that ships, asked otherwise. */
  private static final class Drawn {
    private final Path file;
    private final List<String> settings = new ArrayList<>();
    private final Random random;

    Drawn(int seed) {
      this.random = new Random(seed);
      this.file = Path.of("scenarios", SITES.get(random.nextInt(SITES.size())) + ".yaml");
      settings.add("walkway.length=" + (72 + random.nextInt(400)) + " in");
      settings.add("walkway.clear-width=" + (48 + random.nextInt(48)) + " in");
      settings.add("site.climate.wind-speed=" + (95 + random.nextInt(35)) + " mph");
      settings.add("site.climate.ground-snow=" + random.nextInt(45) + " psf");
    }

    Intake read(List<String> more) {
      List<Setting> all = new ArrayList<>();
      settings.forEach(each -> all.add(Setting.parse(each)));
      more.forEach(each -> all.add(Setting.parse(each)));
      return new SiteReader(Vocabulary.of(House.TABLES)).read(file, all);
    }
  }

  private static void check(Drawn site) {
    Intake intake = site.read(List.of());
    Proposal today = House.propose(intake.site());
    OptionSearch search =
        new OptionSearch(ENGINE, House.TABLES, site::read, Optional.empty(), Optional.empty());
    List<Attempt> attempts = new OptionAxes(House.TABLES, intake, today).attempts();

    WholeOptions found = search.of(intake, today, attempts);

    assertThat(found.shown()).hasSizeLessThanOrEqualTo(6);
    assertThat(found.shown().stream().filter(WholeOption::asProposed))
        .hasSize(today.proposed() ? 1 : 0);
    found.shown().forEach(each -> holds(site, each));
    noneIsBeaten(found);
    theOrderOfTryingChangesNothing(search, intake, found, attempts, site.random);
  }

  /** It passes as a design that is given, and what it sets proposes it to the last number. */
  private static void holds(Drawn site, WholeOption option) {
    Intake intake = site.read(option.settings());
    Proposal again = House.propose(intake.site());
    assertThat(again.result()).isEqualTo(option.proposal().result());
    assertThat(answers(again)).isEqualTo(answers(option.proposal()));
    assertThat(again.checks()).isEqualTo(option.proposal().checks());

    Review review =
        ENGINE.check(
            intake.site(), ProposedDesign.of(again, intake.site().base()), List.of(), List.of());
    assertThat(review.failing()).isEmpty();
    assertThat(review.refusal()).isEmpty();
  }

  private static Map<Question, Outcome> answers(Proposal proposal) {
    Map<Question, Outcome> answers = new TreeMap<>();
    for (Decision each : proposal.decisions()) {
      answers.put(each.question(), each.proposed());
    }
    return answers;
  }

  /**
   * Counted anew, in the steps of the table: nothing that is shown is worse than another in all.
   */
  private static void noneIsBeaten(WholeOptions found) {
    for (WholeOption one : found.shown()) {
      for (WholeOption other : found.shown()) {
        assertThat(beats(one, other) && !other.asProposed())
            .as("%s beats %s", one.settings(), other.settings())
            .isFalse();
      }
    }
  }

  private static boolean beats(WholeOption one, WholeOption other) {
    boolean better = false;
    for (OptionCountRow row : House.TABLES.optionCounts().rows()) {
      double sign = row.measure() == OptionMeasure.LOOK ? 1 : -1;
      double here = sign * Math.rint(one.measure(row.measure()) / row.step());
      double there = sign * Math.rint(other.measure(row.measure()) / row.step());
      if (here < there) {
        return false;
      }
      better |= here > there;
    }
    return better;
  }

  private static void theOrderOfTryingChangesNothing(
      OptionSearch search,
      Intake intake,
      WholeOptions found,
      List<Attempt> attempts,
      Random random) {
    List<Attempt> shuffled = new ArrayList<>(attempts);
    Collections.shuffle(shuffled, random);

    WholeOptions again = search.of(intake, found.today(), shuffled);

    assertThat(again.shown()).extracting(WholeOption::settings).isEqualTo(settings(found));
    assertThat(again.shown()).extracting(WholeOption::bestAt).isEqualTo(best(found));
    assertThat(again.beaten().map(WholeOption::settings))
        .isEqualTo(found.beaten().map(WholeOption::settings));
  }

  private static List<List<String>> settings(WholeOptions found) {
    return found.shown().stream().map(WholeOption::settings).toList();
  }

  private static List<List<OptionMeasure>> best(WholeOptions found) {
    return found.shown().stream().map(WholeOption::bestAt).toList();
  }
}
