package org.scantling.options;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.engine.Engine;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.property.House;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.SmallChange;
import org.scantling.shop.Lists;
import org.scantling.tables.ChangedTables;
import org.scantling.tables.ChangedTables.Cell;
import org.scantling.tables.ChangedTables.Change;
import org.scantling.tables.NearMissRow;
import org.scantling.tables.NearMissRow.Gain;
import org.scantling.tables.Tables;

/** What is mentioned beside a proposal: true when it is built, and worth the words. */
class NearMissesTest {
  private static final Engine ENGINE = new Engine(House.RULES, House.TABLES);

  private static Function<List<String>, Intake> reading(String site) {
    SiteReader reader = new SiteReader(Vocabulary.of(House.TABLES));
    return set ->
        reader
            .readEach(
                Path.of("scenarios", site + ".yaml"), set.stream().map(Setting::parse).toList())
            .get(0);
  }

  private static Proposal proposed(Intake intake) {
    return ENGINE.propose(intake.site(), intake.defaulted());
  }

  private static List<SmallChange> near(String site, Tables tables, String... set) {
    Function<List<String>, Intake> file = reading(site);
    List<String> all = List.of(set);
    Intake intake = file.apply(all);
    return new NearMisses(
            ENGINE, tables, more -> file.apply(Stream.concat(all.stream(), more.stream()).toList()))
        .of(intake, proposed(intake));
  }

  /** The tables with one cell as if our own file said so. */
  private static Tables with(String table, String id, String column, String value) {
    return new ChangedTables().with(List.of(new Change(new Cell(table, id, column, 0), value)));
  }

  private static List<String> ids(String site, Tables tables, String... set) {
    return near(site, tables, set).stream().map(SmallChange::id).toList();
  }

  /** The post grew by an inch of headroom that nobody may need. */
  @Test
  void an_inch_less_that_keeps_the_smaller_post_is_told_and_not_more_than_that_inch() {
    assertThat(near("same-place", House.TABLES, "walkway.headroom=90 in"))
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.settings()).containsExactly("walkway.headroom=87 in");
              assertThat(answer(each.then(), Question.POST_SIZE)).isEqualTo("4x4");
            });
    assertThat(near("same-place", House.TABLES, "walkway.headroom=92 in")).isEmpty();
  }

  @Test
  void nothing_is_told_where_no_timber_grew() {
    assertThat(near("same-place", House.TABLES)).isEmpty();
  }

  /** What each cell of the table is for: with another number something else is told. */
  @ParameterizedTest
  @CsvSource({
    "same-place, less-headroom, most, 2, walkway.headroom=90 in, less-headroom",
    "past-the-pipe, in-concrete, from, 65, title=P, in-concrete",
    "past-the-pipe, in-concrete, gain, 7, title=P, in-concrete",
    "mower-lane, fewer-bays, from, 12, title=P, fewer-bays",
    "mower-lane, fewer-bays, gain, 4, title=P, fewer-bays",
    "mower-lane, fewer-bays, deeper_in, 4, title=P, fewer-bays"
  })
  void a_number_decides_what_is_told(
      String site, String row, String column, String value, String set, String told) {
    assertThat(ids(site, House.TABLES, set)).contains(told);
    assertThat(ids(site, with("near-misses.csv", row, column, value), set)).doesNotContain(told);
  }

  @Test
  void no_more_are_told_than_somebody_reads() {
    Change shallow = new Change(new Cell("near-misses.csv", "in-concrete", "from", 0), "30");
    Change little = new Change(new Cell("near-misses.csv", "in-concrete", "gain", 0), "1");
    Change one = new Change(new Cell("shop.csv", "near-misses.most", "value", 0), "1");

    assertThat(ids("mower-lane", new ChangedTables().with(List.of(shallow, little))))
        .containsExactly("in-concrete", "fewer-bays");
    assertThat(ids("mower-lane", new ChangedTables().with(List.of(shallow, little, one))))
        .containsExactly("in-concrete");
  }

  @Test
  void beside_a_very_long_walk_nothing_is_tried() {
    Change few = new Change(new Cell("shop.csv", "near-misses.bays-most", "value", 0), "3");

    assertThat(ids("mower-lane", new ChangedTables().with(List.of(few)))).isEmpty();
  }

  private static String answer(Proposal proposal, Question question) {
    return ((Outcome.Word) proposal.decision(question).orElseThrow().proposed()).text();
  }

  /** Each is what the program proposes for that setting, to the last answer. */
  @ParameterizedTest
  @ValueSource(strings = {"mower-lane", "past-the-pipe", "step-free"})
  void each_is_what_its_setting_comes_to(String site) {
    Function<List<String>, Intake> file = reading(site);
    Proposal today = proposed(file.apply(List.of()));
    List<SmallChange> near = near(site, House.TABLES);

    assertThat(near).isNotEmpty();
    for (SmallChange each : near) {
      Proposal again = proposed(file.apply(each.settings()));
      assertThat(again.proposed()).isTrue();
      assertThat(again.decisions())
          .extracting(Decision::question, Decision::proposed)
          .containsExactlyElementsOf(
              each.then().decisions().stream()
                  .map(made -> Tuple.tuple(made.question(), made.proposed()))
                  .toList());
      NearMissRow row = House.TABLES.nearMisses().row(each.id());
      assertThat(spared(row.gains(), site, today, again)).isGreaterThanOrEqualTo(row.gain());
    }
  }

  /** By the cut list and the answers, not by what the search went by. */
  private static double spared(Gain gains, String site, Proposal today, Proposal then) {
    Intake intake = reading(site).apply(List.of());
    return switch (gains) {
      case SIZE -> timber(today, intake) - timber(then, intake);
      case DEPTH -> depthIn(today) - depthIn(then);
      case POSTS -> 2 * (bays(today) - bays(then));
    };
  }

  private static double timber(Proposal proposal, Intake intake) {
    return Lists.of(proposal, intake.site(), House.TABLES, Optional.empty()).size().timberCuFt();
  }

  private static double bays(Proposal proposal) {
    return amount(proposal, Question.BAYS);
  }

  private static double depthIn(Proposal proposal) {
    return amount(proposal, Question.FOOTING_DEPTH);
  }

  private static double amount(Proposal proposal, Question question) {
    return ((Outcome.Amount) proposal.decision(question).orElseThrow().proposed())
        .measure()
        .amount();
  }
}
