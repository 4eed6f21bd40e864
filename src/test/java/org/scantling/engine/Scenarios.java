package org.scantling.engine;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.scantling.intake.Intake;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.Proposal;
import org.scantling.rulebase.RuleBase;
import org.scantling.rulebase.RuleBaseFault;
import org.scantling.tables.Tables;

/**
 * Every site of the demo and some that show what it does not, and what it comes to when rules or
 * numbers are not as they are.
 */
public final class Scenarios {
  private static final List<Path> FOLDERS =
      List.of(Path.of("scenarios"), Path.of("src/test/resources/rulecases/sites"));

  private static final RuleBase RULES = RuleBase.load();
  private static final Engine ENGINE = new Engine(RULES, Tables.load());
  private static final Map<Intake, Proposal> PROPOSED = new ConcurrentHashMap<>();

  private final RuleBase rules = RULES;
  private final List<Intake> sites = new ArrayList<>();
  private final List<Intake> demo;

  public Scenarios() {
    SiteReader reader = new SiteReader(Vocabulary.of(Tables.load()));
    read(FOLDERS.get(0), reader);
    demo = List.copyOf(sites);
    FOLDERS.stream().skip(1).forEach(folder -> read(folder, reader));
  }

  private void read(Path folder, SiteReader reader) {
    try (Stream<Path> files = Files.list(folder)) {
      files
          .filter(file -> file.toString().endsWith(".yaml"))
          .sorted(Comparator.comparing(Path::toString))
          .forEach(file -> sites.add(reader.read(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public List<Intake> sites() {
    return sites;
  }

  /** Some of all, for what takes long. */
  List<Intake> everyThird() {
    return IntStream.range(0, sites.size())
        .filter(each -> each % 3 == 0)
        .mapToObj(sites::get)
        .toList();
  }

  /** The sites of the demo alone. */
  public List<Intake> demo() {
    return demo;
  }

  /**
   * What a site comes to with all rules and numbers as they are; each is worked once for all tests.
   */
  public static Proposal proposal(Intake site) {
    return PROPOSED.computeIfAbsent(site, each -> ENGINE.propose(each.site(), each.defaulted()));
  }

  Set<String> rules() {
    return rules.notes().keySet();
  }

  /** What a site comes to with all rules. */
  public Object outcome(Intake site, Tables tables) {
    return outcome(site, tables, rule -> true);
  }

  /** What a site comes to, or the fault that it ends in. */
  Object outcome(Intake site, Tables tables, Predicate<String> allowed) {
    try {
      return new Engine(rules, tables, allowed).propose(site.site(), site.defaulted());
    } catch (RuleBaseFault fault) {
      return fault.getMessage();
    }
  }

  /** The words that site and design files may use. */
  Vocabulary vocabulary() {
    return Vocabulary.of(Tables.load());
  }
}
