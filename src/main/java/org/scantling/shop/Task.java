package org.scantling.shop;

import java.math.BigDecimal;
import java.util.List;
import org.scantling.tables.WorkRow;

/**
 * One of the tasks of a job.
 *
 * @param id what the ids of its rows begin with
 * @param hours of all hands together, rounded up to the step of the shop table
 * @param hands how many people it takes at once
 * @param parts what it is made of
 */
public record Task(String id, BigDecimal hours, int hands, List<Part> parts) {
  public Task {
    parts = List.copyOf(parts);
  }

  /**
   * @param row how long it takes
   * @param amount how many of its unit
   */
  public record Part(WorkRow row, double amount) {}
}
