package org.scantling.search;

import java.nio.file.Path;
import java.util.Set;
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
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.Question;
import org.scantling.reasons.Thresholds;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;
import org.scantling.words.Words;

/** All thresholds of one site, everything warm; the aim is a second for a typical site. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 6, time = 10)
@Measurement(iterations = 3, time = 10)
@Fork(1)
public class ThresholdBenchmark {
  @Param({"long-walk", "mower-lane", "windy-hill", "everything-at-once"})
  public String scenario;

  private ThresholdSearch search;
  private Intake intake;
  private Set<Question> questions;

  @Setup
  public void read() {
    Tables tables = Tables.load();
    search = new ThresholdSearch(new Engine(RuleBase.load(), tables), tables);
    intake = new SiteReader(Vocabulary.of(tables)).read(Path.of("scenarios", scenario + ".yaml"));
    questions = Words.load(tables).choices().questions();
  }

  @Benchmark
  public Thresholds all() {
    return search.of(intake.site(), intake.defaulted(), questions);
  }
}
