package org.scantling.problem;

import java.util.List;
import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.design.Site;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.Answer;
import org.scantling.reasons.AtPostsTrial;
import org.scantling.reasons.DeadEnd;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Question;

/** The answers with which the first pass starts where no design is given. */
final class FirstAnswers {
  private final Site site;
  private final Answers base;

  FirstAnswers(Site site, Answers base) {
    this.site = site;
    this.base = base;
  }

  /**
   * Where the first pass starts: the base. Brackets of the base that are not to be give way at
   * once: their braces would ask for bolts before it is decided how the posts stand.
   */
  Answers of(List<Fact> tried) {
    Answers all =
        doubled(tried)
            ? base.with(Answer.option(Question.CROSSBEAMS_AT_POSTS, WayOfBuilding.DOUBLED_AT_POSTS))
            : base;
    boolean hinged =
        all.has(Question.FOOTING_KIND)
            && all.option(Question.FOOTING_KIND).equals(WayOfBuilding.BRACKET);
    return hinged
        ? otherwise(tried)
            .map(kind -> all.with(Answer.option(Question.FOOTING_KIND, kind)))
            .orElse(all)
        : all;
  }

  /** True where crossbeams are asked doubled at the posts, have to be, or may serve better so. */
  private boolean doubled(List<Fact> tried) {
    return site.preferences().crossbeamsAtPosts().equals(WayOfBuilding.DOUBLED_AT_POSTS)
        || ledNowhere(Question.CROSSBEAMS_AT_POSTS, tried)
        || tried.stream().anyMatch(AtPostsTrial.class::isInstance);
  }

  private static boolean ledNowhere(Question question, List<Fact> tried) {
    return tried.stream()
        .anyMatch(each -> each instanceof DeadEnd end && end.question() == question);
  }

  /**
   * How posts are asked to stand by themselves, or have to since brackets have led nowhere or one
   * row stands lower than the other.
   */
  private Optional<String> otherwise(List<Fact> tried) {
    String asked = site.preferences().footing();
    if (WayOfBuilding.inTheGround(asked)) {
      return Optional.of(WayOfBuilding.EMBEDDED);
    }
    return asked.equals(WayOfBuilding.MOMENT_BASE)
            || ledNowhere(Question.FOOTING_KIND, tried)
            || !site.ground().across().level()
        ? Optional.of(WayOfBuilding.MOMENT_BASE)
        : Optional.empty();
  }
}
