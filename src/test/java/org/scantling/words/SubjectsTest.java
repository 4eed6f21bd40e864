package org.scantling.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.scantling.reasons.Question;

class SubjectsTest {
  private final Subjects subjects = Subjects.read();

  @Test
  void a_bare_subject_starts_with_its_chief_question() {
    assertThat(subjects.find("posts").questions())
        .startsWith(Question.POST_SIZE, Question.POST_HEIGHT);
    assertThat(subjects.find("Crossbeams").questions()).startsWith(Question.CROSSBEAM_SIZE);
    assertThat(subjects.find("header").questions()).startsWith(Question.HEADER_SIZE);
    assertThat(subjects.find("footings").questions())
        .contains(Question.FOOTING_DEPTH, Question.HOLE_DIAMETER);
  }

  @Test
  void singular_and_plural_mean_the_same() {
    assertThat(subjects.find("post.size").questions()).containsExactly(Question.POST_SIZE);
    assertThat(subjects.find("posts.size").questions()).containsExactly(Question.POST_SIZE);
    assertThat(subjects.find("layout.bays").questions()).containsExactly(Question.BAYS);
    assertThat(subjects.find("bays").questions()).startsWith(Question.BAYS);
    assertThat(subjects.find("layout.bay").questions()).containsExactly(Question.BAY);
  }

  @Test
  void words_of_everyday_find_what_is_decided() {
    assertThat(subjects.find("snow").questions())
        .containsExactly(Question.GROUND_SNOW, Question.FLAT_SNOW, Question.SNOW_SHARE);
    assertThat(subjects.find("holes").questions()).contains(Question.FOOTING_DEPTH);
    assertThat(subjects.find("hole.depth").questions()).containsExactly(Question.FOOTING_DEPTH);
    assertThat(subjects.find("climber").questions()).startsWith(Question.VINE);
  }

  @Test
  void every_question_is_found_by_its_own_id() {
    for (Question question : Question.values()) {
      assertThat(subjects.find(question.id()).questions()).containsExactly(question);
    }
  }

  @Test
  void a_slip_of_the_pen_gets_a_suggestion() {
    assertThatThrownBy(() -> subjects.find("psots"))
        .isInstanceOf(UnknownSubject.class)
        .hasMessageContaining("'psots' is nothing that is decided. Maybe post?")
        .hasMessageContaining("Ask about base, brace, criteria, crossbeam, footing, header");
    assertThatThrownBy(() -> subjects.find("post.sise")).hasMessageContaining("Maybe post.size?");
    assertThatThrownBy(() -> subjects.find("chandelier"))
        .hasMessageStartingWith("'chandelier' is nothing that is decided. Ask about");
  }

  @Test
  void a_topic_without_a_question_is_refused() {
    assertThatThrownBy(() -> new Topic("air", java.util.List.of()))
        .hasMessage("topic 'air' needs a question");
  }
}
