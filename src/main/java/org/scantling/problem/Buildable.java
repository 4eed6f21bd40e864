package org.scantling.problem;

import java.util.List;
import org.scantling.design.BaseDesign;
import org.scantling.design.ValidationError;
import org.scantling.tables.Tables;

/** Whether a base can be put together at all; what cannot was never built, so nothing scales it. */
public final class Buildable {
  private Buildable() {}

  /** What of a base cannot be, each with what would be right; empty where it can be built. */
  public static List<ValidationError> validationErrors(BaseDesign base, Tables tables) {
    return DesignValidation.ofBase(base, tables);
  }
}
