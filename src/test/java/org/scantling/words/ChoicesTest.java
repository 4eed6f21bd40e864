package org.scantling.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.tables.Tables;

class ChoicesTest {
  private static final Choices CHOICES = Words.load(Tables.load()).choices();

  @Test
  void every_choice_among_options_is_one_of_which_it_can_be_asked_how_far_it_holds() {
    Set<Question> options = EnumSet.noneOf(Question.class);
    for (Question question : Question.values()) {
      // A base is chosen among whole structures, and no demand is searched for where it turns.
      if (!question.numeric() && question.phase() != Phase.CLIMATE && question.phase().answers()) {
        options.add(question);
      }
    }

    assertThat(CHOICES.questions()).containsAll(options);
  }

  @Test
  void every_size_is_told_without_being_asked_for() {
    assertThat(CHOICES.questions())
        .filteredOn(question -> question.attribute().equals("size"))
        .allMatch(question -> CHOICES.find(question).orElseThrow().chief());
  }

  @Test
  void a_noun_has_its_article_and_no_end() {
    assertThat(CHOICES.questions())
        .extracting(question -> CHOICES.find(question).orElseThrow().noun())
        .allMatch(noun -> noun.matches("the [a-z ]+[a-z]"))
        .doesNotHaveDuplicates();
  }
}
