package org.scantling.shop;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.tables.WorkRow;

/**
 * How long a job takes, by the rows of work.csv.
 *
 * @param tasks in the order of the rows
 */
public record WorkHours(List<Task> tasks) {
  private static final BigDecimal HOUR_MINUTES = BigDecimal.valueOf(60);
  private static final int PLACES = 9;

  public WorkHours {
    tasks = List.copyOf(tasks);
  }

  static WorkHours of(Built built, Pieces pieces, Climbers climbers) {
    Map<String, Double> amounts = WorkAmounts.of(built, pieces, climbers);
    Map<String, List<Task.Part>> parts = new LinkedHashMap<>();
    for (WorkRow row : built.tables().work().rows()) {
      if (amounts.containsKey(row.id())) {
        parts
            .computeIfAbsent(row.task(), task -> new ArrayList<>())
            .add(new Task.Part(row, amounts.get(row.id())));
      }
    }
    BigDecimal step = BigDecimal.valueOf(built.shop("hours.step"));
    List<Task> tasks = new ArrayList<>();
    parts.forEach((task, of) -> tasks.add(task(task, of, step)));
    return new WorkHours(tasks);
  }

  private static Task task(String id, List<Task.Part> parts, BigDecimal step) {
    BigDecimal minutes = BigDecimal.ZERO;
    for (Task.Part part : parts) {
      minutes =
          minutes.add(
              BigDecimal.valueOf(part.amount())
                  .multiply(BigDecimal.valueOf(part.row().eachMinutes())));
    }
    // What floating point adds in the last places makes no further step.
    BigDecimal steps =
        minutes
            .divide(HOUR_MINUTES.multiply(step), PLACES, RoundingMode.HALF_UP)
            .setScale(0, RoundingMode.UP);
    int hands = parts.stream().mapToInt(each -> each.row().hands()).max().orElseThrow();
    return new Task(id, steps.multiply(step), hands, parts);
  }

  /** Of all tasks, as they are rounded. */
  public BigDecimal hours() {
    return tasks.stream().map(Task::hours).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** How many people the task that takes the most of them takes at once. */
  public int hands() {
    return tasks.stream().mapToInt(Task::hands).max().orElse(1);
  }
}
