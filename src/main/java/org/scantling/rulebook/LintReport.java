package org.scantling.rulebook;

import java.util.List;

/**
 * What was proved of the rule base, and what is wrong with it.
 *
 * @param proofs one sentence a thing that was looked at
 * @param complaints one sentence a thing that is wrong
 */
public record LintReport(List<Proof> proofs, List<Complaint> complaints) {
  public LintReport {
    proofs = List.copyOf(proofs);
    complaints = List.copyOf(complaints);
  }

  /**
   * @param sentence what holds
   * @param count how many things were looked at; a proof about nothing is no proof
   */
  public record Proof(String sentence, int count) {}

  /**
   * @param where file, rule or row
   * @param what what is wrong, and what would be right
   */
  public record Complaint(String where, String what) {}

  public boolean clean() {
    return complaints.isEmpty();
  }
}
