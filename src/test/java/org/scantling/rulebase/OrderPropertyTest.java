package org.scantling.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Phase;
import org.scantling.rulecases.CaseFacts;

/** Findings do not depend on the order in which facts come. */
class OrderPropertyTest {
  private static final RuleBase RULES = RuleBase.load();
  private static final Map<Phase, List<Fact>> FACTS = new EnumMap<>(Phase.class);
  private static final Map<Phase, List<Fired>> FINDINGS = new EnumMap<>(Phase.class);

  static {
    for (Phase phase : Phase.values()) {
      FACTS.put(phase, CaseFacts.of(phase));
      FINDINGS.put(phase, RULES.run(phase, FACTS.get(phase)));
    }
  }

  @Property(tries = 300)
  void shuffled_facts_lead_to_the_same_findings(@ForAll Phase phase, @ForAll long seed) {
    List<Fact> shuffled = new ArrayList<>(FACTS.get(phase));
    Collections.shuffle(shuffled, new Random(seed));

    assertThat(RULES.runInOrder(phase, shuffled, id -> true))
        .isEqualTo(FINDINGS.get(phase))
        .isNotEmpty();
  }
}
