package org.scantling.rulebase;

import org.drools.core.impl.RuleBaseFactory;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;

/** The compiled rules of one phase, made ready when they are first asked for. */
final class PhaseRules {
  private final Model model;
  private @Nullable KieBase base;
  private @Nullable PhaseReads reads;

  PhaseRules(Model model) {
    this.model = model;
  }

  synchronized KieBase base() {
    if (base == null) {
      base =
          KieBaseBuilder.createKieBaseFromModel(
              model, RuleBaseFactory.newKnowledgeBaseConfiguration());
    }
    return base;
  }

  synchronized PhaseReads reads() {
    if (reads == null) {
      reads = new PhaseReads(model);
    }
    return reads;
  }

  void makeReady() {
    reads();
    base();
  }
}
