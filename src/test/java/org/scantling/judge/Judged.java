package org.scantling.judge;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;

/**
 * A proposal with the judge's own account of it.
 *
 * @param design the proposal
 * @param tags what kind of structure it is
 * @param findings the judge's worst of each check
 */
record Judged(Design design, Set<String> tags, Map<String, Findings.Worst> findings) {
  private static final double SLACK_RATIO = 0.3;

  static Judged of(JsonNode proposal, Asked asked) {
    Design design = new Design(proposal);
    Findings findings = new Findings();
    Climate climate = new Climate(design, asked);
    Wind wind = new Wind(design, climate);
    CrossbeamJudge crossbeam = new CrossbeamJudge(design, climate);
    crossbeam.judge(findings);
    HeaderJudge header = new HeaderJudge(design, climate, crossbeam.leverRatio());
    Rows rows = new Rows(design, wind);
    JointJudge joints = new JointJudge(design, wind, rows, crossbeam, header);
    header.judge(findings, joints.sunkHeadIn());
    if (!design.bracket()) {
      PostJudge.lower(design, rows, header).judge(findings);
      if (rows.apart()) {
        PostJudge.higher(design, rows, header).judge(findings);
      }
      joints.judge(findings);
    } else if (!design.stepped()) {
      new BracedJudge(design, wind, header).judge(findings);
    }
    findings.add(
        "criteria.snow", Combination.DEAD, climate.snowPsf() + 1, design.criterion("snowPsf") + 1);
    findings.add(
        "criteria.wind-pressure",
        Combination.DEAD,
        climate.pressurePsf(),
        design.criterion("windPressurePsf"));
    return new Judged(design, tags(design), findings.all());
  }

  private static Set<String> tags(Design design) {
    Set<String> tags = new TreeSet<>();
    tags.add(design.paired() ? "paired" : "on-top");
    tags.add(
        design.bracket()
            ? "bracket"
            : design.momentBase() ? "moment-base" : design.concrete() ? "concrete" : "tamped");
    tags.add(design.pieces().size() > 1 ? "cut" : "uncut");
    tags.add(design.bays() == 1 ? "one-bay" : "many-bays");
    tags.add(design.metric() ? "metric" : "imperial");
    tags.add(design.stepped() ? "stepped" : "unstepped");
    tags.add(design.dropIn() > 0 ? "rows-apart" : "rows-level");
    tags.add("doubled-" + design.doubled());
    tags.add(design.pliesAtPosts() > 1 ? "pairs" : "singles");
    return tags;
  }

  /**
   * What kind of structure it is, whether live load, lift or snow governs what is printed, and
   * whether it is far from its limit.
   */
  Set<String> tags(String check) {
    Set<String> all = new TreeSet<>(tags);
    for (JsonNode each : design.json().path("checks")) {
      String combination = each.path("combination").asString();
      if (each.path("id").asString().equals(check)) {
        all.add(
            combination.contains("Lr")
                ? "printed-live"
                : combination.startsWith("0.6D")
                    ? "printed-lift"
                    : combination.endsWith("S") ? "printed-snow" : "printed-other");
      }
    }
    if (printed(check) < SLACK_RATIO) {
      all.add("slack");
    }
    return all;
  }

  /** What the proposal itself prints for a check; not a number where it has none. */
  double printed(String check) {
    double most = Double.NaN;
    for (JsonNode each : design.json().path("checks")) {
      if (each.path("id").asString().equals(check)) {
        double ratio = each.path("ratio").asDouble();
        most = Double.isNaN(most) ? ratio : Math.max(most, ratio);
      }
    }
    return most;
  }
}
