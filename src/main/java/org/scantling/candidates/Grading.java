package org.scantling.candidates;

import static org.scantling.reasons.Question.GRADE;
import static org.scantling.reasons.Question.SPECIES;

import java.util.List;
import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.answers.Stock;
import org.scantling.confirm.Material;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Question;
import org.scantling.reasons.TimberRole;

/**
 * Of which species and grade the timber of a role is: its own where it has one, else that of the
 * rest. A size for which the standard has no strength in the grade of the rest is offered in the
 * nearest better grade that has one.
 */
public final class Grading {
  private final Stock stock;
  private final Answers answers;

  public Grading(Stock stock, Answers answers) {
    this.stock = stock;
    this.answers = answers;
  }

  /** The timber of an option; empty where the standard has no such grade in that size. */
  public Optional<Material> material(Question size, String option) {
    return stock.material(option, species(size), grade(size, option));
  }

  public String species(Question size) {
    return TimberRole.of(size)
        .flatMap(role -> answers.find(role.species()))
        .map(Answer::option)
        .orElseGet(() -> answers.option(SPECIES));
  }

  public String grade(Question size, String option) {
    return TimberRole.of(size)
        .flatMap(role -> answers.find(role.grade()))
        .map(Answer::option)
        .orElseGet(() -> nearest(size, option));
  }

  private String nearest(Question size, String option) {
    String general = answers.option(GRADE);
    List<String> grades = stock.grades();
    return grades.subList(Math.max(0, grades.indexOf(general)), grades.size()).stream()
        .filter(grade -> published(size, option, grade))
        .findFirst()
        .orElse(general);
  }

  /** True where the size that was decided has no strength in the grade of the rest, but in some. */
  public boolean stepsUp(TimberRole role) {
    if (!answers.has(role.size()) || !answers.has(GRADE) || !answers.has(SPECIES)) {
      return false;
    }
    String option = answers.option(role.size());
    String general = answers.option(GRADE);
    return !published(role.size(), option, general)
        && published(role.size(), option, nearest(role.size(), option));
  }

  public boolean published(Question size, String option, String grade) {
    return stock.material(option, species(size), grade).isPresent();
  }
}
