package org.scantling.verification;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The pack's report as Markdown: what was compared with what, and how near it came. */
final class VerificationReport {
  private static final double WIDE_RATIO = 0.02;

  private final List<Outcome> outcomes;
  private final Map<String, Pack.Source> sources;
  private final List<Pack.Left> left;
  private final StringBuilder text = new StringBuilder();

  VerificationReport(List<Outcome> outcomes, List<Pack.Source> sources, List<Pack.Left> left) {
    this.outcomes = outcomes;
    this.sources = new TreeMap<>();
    sources.forEach(source -> this.sources.put(source.name(), source));
    this.left = left;
  }

  String markdown() {
    text.append("# Verification report\n\n");
    totals();
    sources();
    wideTolerances();
    failures();
    notReproduced();
    return text.toString();
  }

  private void totals() {
    long printed = count(row -> row.printed());
    long memory = count(PackRow::fromMemory);
    line("| | |");
    line("| --- | ---: |");
    line("| rows computed | %d |", outcomes.size());
    line("| of them values from print | %d |", printed);
    line("| seen in print | %d |", count(PackRow::seen));
    line("| seen in a copy | %d |", count(PackRow::secondHand));
    line(
        "| recalled, not seen again | %d (%s of those from print) |",
        memory, share(memory, printed));
    line("| second computations, not print | %d |", outcomes.size() - printed);
    line("| published sources | %d |", publishedSources());
    line("| rows that fail | %d |", outcomes.stream().filter(o -> !o.met()).count());
    line("");
    line("`seen`: read in the document or a copy of it. `second-hand`: read in a copy, the");
    line("page itself not seen. `memory`: recalled; right as far as we know, and said so.");
    line("`computed`: another program's or our own second calculation of the same equations; it");
    line("guards against slips, not against a misread standard.");
    line(
        "Differences are parts of the expected value; in frames, of the largest value of the same");
    line("kind in the case.");
    line("");
  }

  long publishedSources() {
    return outcomes.stream()
        .map(Outcome::row)
        .filter(PackRow::printed)
        .map(PackRow::source)
        .distinct()
        .filter(name -> sources.containsKey(name) && sources.get(name).published())
        .count();
  }

  private long count(Predicate<PackRow> which) {
    return outcomes.stream().map(Outcome::row).filter(which).count();
  }

  private void sources() {
    line("## By source");
    line("");
    line(
        "| source | edition | table | seen | second hand | memory | computed | from memory "
            + "| largest difference |");
    line("| --- | --- | --- | ---: | ---: | ---: | ---: | ---: | --- |");
    Map<String, List<Outcome>> groups =
        outcomes.stream()
            .collect(
                Collectors.groupingBy(
                    o -> "| %s | %s | %s".formatted(named(o), o.row().edition(), o.row().table()),
                    TreeMap::new,
                    Collectors.toList()));
    groups.forEach(this::group);
    line("");
  }

  private String named(Outcome outcome) {
    Pack.Source source = sources.get(outcome.row().source());
    return outcome.row().source() + (source == null ? "" : " (" + source.kind() + ")");
  }

  private void group(String head, List<Outcome> group) {
    long seen = group.stream().filter(o -> o.row().seen()).count();
    long secondHand = group.stream().filter(o -> o.row().secondHand()).count();
    long memory = group.stream().filter(o -> o.row().fromMemory()).count();
    Outcome worst =
        group.stream().max(Comparator.comparingDouble(Outcome::differenceRatio)).orElseThrow();
    line(
        "%s | %d | %d | %d | %d | %s | %s in %s: %s%s, ours %s |",
        head,
        seen,
        secondHand,
        memory,
        group.size() - seen - secondHand - memory,
        share(memory, seen + secondHand + memory),
        percent(worst.differenceRatio()),
        worst.row().id(),
        number(worst.row().expected()),
        unit(worst.row()),
        number(worst.ours()));
  }

  private static String unit(PackRow row) {
    return row.unit().equals("-") ? "" : " " + row.unit();
  }

  private void wideTolerances() {
    line("## Tolerances over %s", percent(WIDE_RATIO));
    line("");
    line("| source | table | rows | widest | reason |");
    line("| --- | --- | ---: | ---: | --- |");
    Map<List<String>, List<PackRow>> groups =
        outcomes.stream()
            .map(Outcome::row)
            .filter(VerificationReport::wide)
            .collect(
                Collectors.groupingBy(
                    row -> List.of(row.source(), row.table(), row.reason()),
                    LinkedHashMap::new,
                    Collectors.toList()));
    groups.forEach(
        (head, rows) ->
            line(
                "| %s | %s | %d | %s | %s |",
                head.get(0),
                head.get(1),
                rows.size(),
                percent(rows.stream().mapToDouble(PackRow::toleranceRatio).max().orElseThrow()),
                head.get(2)));
    line("");
  }

  static boolean wide(PackRow row) {
    return row.toleranceRatio() > WIDE_RATIO;
  }

  private void failures() {
    List<Outcome> failed = outcomes.stream().filter(o -> !o.met()).toList();
    if (failed.isEmpty()) {
      return;
    }
    line("## Rows that fail");
    line("");
    for (Outcome one : failed) {
      line(
          "- %s: %s %s expected, ours %s%s",
          one.row(),
          number(one.row().expected()),
          one.row().unit(),
          number(one.ours()),
          one.fault().map(fault -> " (" + fault.getMessage() + ")").orElse(""));
    }
    line("");
  }

  private void notReproduced() {
    line("## Not reproduced");
    line("");
    line("Published values that the kernels do not give, and why; none of them is counted above.");
    line("");
    line("| source | edition | table | cells | why |");
    line("| --- | --- | --- | --- | --- |");
    for (Pack.Left one : left) {
      line(
          "| %s | %s | %s | %s | %s |",
          one.source(), one.edition(), one.table(), one.cells(), one.why());
    }
  }

  private void line(String format, Object... values) {
    text.append(values.length == 0 ? format : String.format(Locale.ROOT, format, values));
    text.append('\n');
  }

  private static String share(long part, long whole) {
    return whole == 0 ? "-" : percent((double) part / whole);
  }

  private static String percent(double ratio) {
    if (ratio == 0) {
      return "0 %";
    }
    return String.format(Locale.ROOT, ratio < 1e-5 ? "%.0e %%" : "%.3g %%", 100 * ratio);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.6g", value);
  }
}
