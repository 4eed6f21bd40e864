package org.scantling.problem;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Question;
import org.scantling.reasons.TimberRole;
import org.scantling.tables.Tables;

/** What a given design is made of, told as answers. */
final class StatedTimber {
  private StatedTimber() {}

  /**
   * The timber as far as files say it, else what is usual. What the site asks for one role alone
   * holds in a design that does not speak of that role.
   */
  static Answers of(BaseDesign design, Site site, Tables tables) {
    Site.Materials said = design.materials().orElse(site.materials());
    Map<Question, Answer> answers = new EnumMap<>(Question.class);
    answer(answers, Question.SPECIES, Optional.of(said.species().orElse(usual(tables, "species"))));
    answer(answers, Question.GRADE, Optional.of(said.grade().orElse(usual(tables, "grade"))));
    for (TimberRole role : TimberRole.values()) {
      Optional<Site.Timber> own =
          Optional.ofNullable(said.byRole().get(role.key()))
              .or(() -> Optional.ofNullable(site.materials().byRole().get(role.key())));
      answer(answers, role.species(), own.flatMap(Site.Timber::species));
      answer(answers, role.grade(), own.flatMap(Site.Timber::grade));
    }
    return Answers.of(answers);
  }

  private static void answer(
      Map<Question, Answer> answers, Question question, Optional<String> word) {
    word.ifPresent(it -> answers.put(question, Answer.option(question, it)));
  }

  private static String usual(Tables tables, String row) {
    return tables.defaults().row(row).word();
  }
}
