package org.scantling.rulebase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.drools.model.Condition;
import org.drools.model.Constraint;
import org.drools.model.Model;
import org.drools.model.Pattern;
import org.drools.model.Rule;
import org.drools.model.SingleConstraint;
import org.drools.model.Variable;
import org.drools.model.functions.Predicate1;
import org.scantling.reasons.Fact;

/**
 * Which facts the rules of one phase can match at all. Asked of the compiled rules themselves, so
 * that it cannot be forgotten when a rule is added: a fact that no pattern of any rule would take
 * by its own conditions is part of no match, and undoes no {@code not}.
 *
 * <p>Conditions that look at other facts too are left to the session.
 */
final class PhaseReads {
  private final List<Reading> readings = new ArrayList<>();
  private final Map<Class<?>, List<Reading>> byKind = new ConcurrentHashMap<>();

  /** One pattern: the kind of fact it takes, and what it asks of that fact alone. */
  private record Reading(Class<?> type, List<Predicate1<Object>> alone) {
    /** Of a fact of its kind. */
    boolean takes(Fact fact) {
      for (Predicate1<Object> condition : alone) {
        if (!holds(condition, fact)) {
          return false;
        }
      }
      return true;
    }

    private static boolean holds(Predicate1<Object> condition, Fact fact) {
      try {
        return condition.test(fact);
      } catch (Exception e) {
        throw new RuleBaseFault("a condition of a rule fails on " + fact, e);
      }
    }
  }

  /**
   * @throws RuleBaseFault when a rule has a condition of which it is not known what it reads
   */
  PhaseReads(Model model) {
    for (Rule rule : model.getRules()) {
      read(rule.getView(), rule);
    }
  }

  boolean reads(Fact fact) {
    for (Reading reading : byKind.computeIfAbsent(fact.getClass(), this::ofKind)) {
      if (reading.takes(fact)) {
        return true;
      }
    }
    return false;
  }

  private List<Reading> ofKind(Class<?> kind) {
    return readings.stream().filter(each -> each.type().isAssignableFrom(kind)).toList();
  }

  private void read(Condition condition, Rule rule) {
    switch (condition.getType()) {
      case PATTERN -> readings.add(reading((Pattern<?>) condition));
      case AND, OR, NOT, EXISTS -> condition.getSubConditions().forEach(each -> read(each, rule));
      case CONSEQUENCE -> {
        // Only acts.
      }
      default ->
          throw new RuleBaseFault(
              "rule '"
                  + rule.getName()
                  + "' has a condition of kind "
                  + condition.getType()
                  + ", of which nobody has said which facts it reads");
    }
  }

  private static Reading reading(Pattern<?> pattern) {
    List<Predicate1<Object>> alone = new ArrayList<>();
    addAlone(pattern.getConstraint(), pattern.getPatternVariable(), alone);
    return new Reading(pattern.getPatternVariable().getType(), List.copyOf(alone));
  }

  private static void addAlone(
      Constraint constraint, Variable<?> fact, List<Predicate1<Object>> alone) {
    if (constraint.getType() == Constraint.Type.MULTIPLE) {
      constraint.getChildren().forEach(each -> addAlone(each, fact, alone));
    } else if (constraint instanceof SingleConstraint single && onlyOn(fact, single)) {
      alone.add(predicate(single));
    }
  }

  private static boolean onlyOn(Variable<?> fact, SingleConstraint constraint) {
    Variable<?>[] variables = constraint.getVariables();
    return variables.length == 1 && variables[0].equals(fact);
  }

  @SuppressWarnings("unchecked") // it tests the fact of its own pattern, whose type was checked
  private static Predicate1<Object> predicate(SingleConstraint constraint) {
    return constraint.getPredicate1();
  }
}
