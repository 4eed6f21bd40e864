package org.scantling.rulebook;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.scantling.reasons.Question;
import org.scantling.reasons.TimberRole;
import org.scantling.tables.JointRow;
import org.scantling.tables.Tables;

/**
 * The questions of a rule that names none: the fact that it reads does. The row of a fastening
 * names the joint that it is for; what a single role is made of names the role's species or grade.
 */
final class Named {
  private Named() {}

  /** Every question that such a rule finds something about; none for a rule that names its own. */
  static List<Question> by(RuleText rule, Tables tables) {
    if (!rule.questions().isEmpty()) {
      return List.of();
    }
    if (reads(rule, "JointRow")) {
      return tables.joints().rows().stream().map(JointRow::question).distinct().sorted().toList();
    }
    if (reads(rule, "RoleTimber")) {
      return roles().flatMap(role -> Stream.of(role.species(), role.grade())).toList();
    }
    return reads(rule, "GradeByRole") ? roles().map(TimberRole::grade).toList() : List.of();
  }

  private static boolean reads(RuleText rule, String fact) {
    return rule.premises().stream().anyMatch(each -> each.fact().equals(fact));
  }

  private static Stream<TimberRole> roles() {
    return Arrays.stream(TimberRole.values());
  }
}
