package org.scantling.options;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.scantling.engine.Engine;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.WholeOptions;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/** The ways to build one site, everything warm, on both cores. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 3, time = 5)
@Fork(1)
public class OptionsBenchmark {
  @Param({"long-walk", "mower-lane", "same-place"})
  public String scenario;

  private OptionSearch search;
  private Intake intake;
  private Proposal today;

  @Setup
  public void read() {
    Tables tables = Tables.load();
    Engine engine = new Engine(RuleBase.load(), tables);
    intake = read(tables, List.of());
    today = engine.propose(intake.site(), intake.defaulted());
    search = new OptionSearch(engine, tables, set -> read(tables, set), Optional.empty(), Optional.empty());
  }

  private Intake read(Tables tables, List<String> set) {
    List<Setting> settings = set.stream().map(Setting::parse).toList();
    Path site = Path.of("scenarios", scenario + ".yaml");
    return new SiteReader(Vocabulary.of(tables)).read(site, settings);
  }

  @Benchmark
  public WholeOptions options() {
    return search.of(intake, today);
  }
}
