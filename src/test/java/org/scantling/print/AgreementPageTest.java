package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.reasons.ThumbTrial;
import org.scantling.reasons.ThumbTrial.Standing;
import org.scantling.rulebook.Agreement;
import org.scantling.rulebook.Grid;
import org.scantling.tables.Tables;
import org.scantling.words.Words;

/** How thumb and calculation read side by side. */
class AgreementPageTest {
  private static final List<Grid.Axis> AXES =
      List.of(
          new Grid.Axis("walkway.headroom", List.of("7 ft", "9 ft")),
          new Grid.Axis("planting", List.of("[{vine: clematis}]", "[{vine: wisteria}]")));

  private static ThumbTrial trial(String rule, Standing standing, String calculated) {
    Source source = new Source(SourceKind.COMMON_PRACTICE, "common practice, no source", false);
    RuleNote note = new RuleNote(rule, Phase.POSTS, "post size/tall", source);
    return new ThumbTrial(note, Question.POST_SIZE, standing, false, "4x4", calculated);
  }

  private static String text(boolean markdown) {
    Agreement agreement = new Agreement(AXES);
    for (List<String> site : Grid.sites(AXES)) {
      boolean heavy = site.get(1).contains("wisteria");
      agreement.add(
          site,
          List.of(
              trial(
                  "posts.size.tall",
                  heavy ? Standing.NOT_ENOUGH : Standing.EQUAL,
                  heavy ? "6x6" : "4x4"),
              trial("posts.size.spindly", Standing.EQUAL, "4x4")));
    }
    Words words = Words.load(Tables.load());
    PrintOptions how = PrintOptions.plain(UnitSystem.IMPERIAL);
    return new RulesText(words, how, markdown).agreement(agreement);
  }

  @Test
  void the_count_comes_first_then_where_and_how_often() {
    String text = text(false);
    assertThat(text)
        .contains("1 of 2 rules of thumb do not ask for enough somewhere on 4 sites.")
        .containsPattern("posts.size.tall +0 +0 +2 +2\n")
        .containsPattern("posts.size.spindly +0 +0 +4 +0\n")
        .containsPattern("headroom needed 7 ft, climber\\s+wisteria")
        .containsPattern("Climber +clematis +wisteria\nposts.size.tall +\\. +10\n");
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void a_picture_has_one_sign_a_site_under_the_range_of_its_rule() {
    assertThat(text(false))
        .contains("Down the side headroom")
        .containsPattern("posts.size.tall: alone only .* where it falls short on 2 of\\s+4 sites")
        .contains("\n7 ft  =x\n9 ft  =x\n")
        .containsPattern("alone there\\s+falls\\s+short: posts.size.tall");
    assertThat(text(true)).contains("```\n7 ft  =x\n9 ft  =x\n```\n");
  }

  @Test
  void the_same_as_markdown() {
    assertThat(text(true)).contains("| posts.size.tall | 0 | 0 | 2 | 2 |");
  }
}
