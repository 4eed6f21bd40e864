package org.scantling.shop;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scantling.quantity.Inches;
import org.scantling.sayings.Sayings;

/** Which metric bolt stands in for an inch one: the thinnest sold that is no thinner. */
final class MetricBolts {
  private static final Sayings SAYINGS = Sayings.of("buying");

  private final Built built;
  private final List<Double> boltsIn;

  /**
   * @param boltsIn thickness of the bolts of the job, each once
   */
  MetricBolts(Built built, List<Double> boltsIn) {
    this.built = built;
    this.boltsIn = List.copyOf(boltsIn);
  }

  /** Bolt by bolt; empty where the job has none. */
  String told() {
    return boltsIn.stream()
        .map(this::told)
        .flatMap(Optional::stream)
        .collect(Collectors.joining("; "));
  }

  private Optional<String> told(double boltIn) {
    double boltMm = boltIn * Inches.IN_MILLIMETRES;
    String named = new InchSizes(built).told(boltIn);
    return Arrays.stream(built.tables().defaults().row("bolt.metric-sizes").word().split(" "))
        .filter(sold -> Integer.parseInt(sold) >= boltMm)
        .findFirst()
        .map(sold -> told(sold, named, Integer.parseInt(sold) / boltMm));
  }

  /** Distances to edges, ends and the next bolt are so many thicknesses of the bolt. */
  private String told(String sold, String named, double ratio) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("metric", sold);
    blanks.put("class", built.tables().defaults().row("bolt.metric-class").word());
    blanks.put("inch", named);
    if (ratio >= 1.01) {
      blanks.put("times", String.format(Locale.ROOT, "%.2f", ratio));
    }
    return SAYINGS.say("metric-bolt", blanks);
  }
}
