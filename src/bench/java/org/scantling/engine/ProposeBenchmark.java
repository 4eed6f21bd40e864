package org.scantling.engine;

import java.nio.file.Path;
import java.util.List;
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
import org.scantling.intake.Intake;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.Proposal;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/** One proposal, everything warm: what each step of a search for thresholds costs at most. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 3, time = 5)
@Fork(1)
public class ProposeBenchmark {
  @Param({"long-walk", "mower-lane", "windy-hill", "everything-at-once", "stone-terrace"})
  public String scenario;

  private Engine engine;
  private Intake intake;

  @Setup
  public void read() {
    Tables tables = Tables.load();
    engine = new Engine(RuleBase.load(), tables);
    intake = new SiteReader(Vocabulary.of(tables)).read(Path.of("scenarios", scenario + ".yaml"));
  }

  @Benchmark
  public Proposal propose() {
    return engine.propose(intake.site(), intake.defaulted());
  }
}
