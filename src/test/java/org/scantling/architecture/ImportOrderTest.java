package org.scantling.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Imports point one way: every package names those below it that it may see. */
class ImportOrderTest {
  private static final Map<String, Set<String>> MAY_SEE = new TreeMap<>();

  static {
    may("sayings");
    may("quantity", "sayings");
    may("design", "quantity");
    may("reasons", "quantity", "design");
    may("mechanics", "quantity");
    may("timber", "quantity");
    may("loads", "quantity");
    may("ground", "quantity");
    may("cutting");
    may("concurrent");
    may("tables", "quantity", "reasons", "sayings");
    may(
        "confirm",
        "quantity",
        "design",
        "reasons",
        "mechanics",
        "timber",
        "loads",
        "ground",
        "tables",
        "concurrent");
    may("intake", "quantity", "design", "reasons", "sayings", "tables");
    may("rulebase", "quantity", "design", "reasons");
    may("rules", "quantity", "reasons", "tables");
    may("answers", "quantity", "design", "reasons", "tables", "confirm", "rulebase");
    may(
        "candidates",
        "quantity",
        "design",
        "reasons",
        "timber",
        "loads",
        "ground",
        "tables",
        "confirm",
        "rulebase",
        "concurrent",
        "answers");
    may("problem", "quantity", "design", "reasons", "sayings", "tables", "answers", "candidates");
    may(
        "facts",
        "quantity",
        "design",
        "reasons",
        "loads",
        "ground",
        "tables",
        "confirm",
        "rulebase",
        "answers",
        "candidates",
        "problem");
    may(
        "causes",
        "quantity",
        "design",
        "reasons",
        "sayings",
        "tables",
        "answers",
        "candidates",
        "problem",
        "facts");
    may(
        "workings",
        "quantity",
        "design",
        "reasons",
        "sayings",
        "mechanics",
        "timber",
        "loads",
        "ground",
        "tables",
        "confirm",
        "answers",
        "candidates",
        "problem",
        "facts");
    may(
        "engine",
        "quantity",
        "design",
        "reasons",
        "tables",
        "rulebase",
        "concurrent",
        "answers",
        "problem",
        "facts",
        "causes",
        "workings");
    may(
        "search",
        "quantity",
        "design",
        "reasons",
        "tables",
        "concurrent",
        "answers",
        "problem",
        "engine");
    may("spans", "quantity", "reasons", "loads", "tables", "confirm");
    may("depths", "quantity", "design", "reasons", "answers", "engine", "search");
    may("words", "quantity", "design", "reasons", "sayings", "tables");
    may("visit", "quantity", "design", "reasons", "sayings", "tables", "intake", "words");
    may("rulebook", "quantity", "reasons", "sayings", "tables", "words");
    may(
        "print",
        "quantity",
        "design",
        "reasons",
        "sayings",
        "tables",
        "words",
        "spans",
        "depths",
        "rulebook");
    may("shop", "quantity", "design", "reasons", "sayings", "tables", "cutting", "words", "print");
    may(
        "options",
        "quantity",
        "design",
        "reasons",
        "tables",
        "concurrent",
        "intake",
        "answers",
        "engine",
        "search",
        "words",
        "shop");
    may("drawing", "quantity", "design", "reasons", "sayings", "tables", "shop");
    may(
        "sheets",
        "quantity",
        "design",
        "reasons",
        "sayings",
        "tables",
        "words",
        "print",
        "shop",
        "drawing");
    may("pdf", "sayings", "print", "drawing", "sheets");
    may("batch", "concurrent", "reasons", "sayings", "tables", "intake", "words", "print");
  }

  @Test
  void every_package_sees_only_those_below_it() {
    Set<String> wrong = new TreeSet<>();
    for (JavaClass from : Imported.CLASSES) {
      String here = folder(from);
      for (Dependency each : from.getDirectDependenciesFromSelf()) {
        String there = folder(each.getTargetClass());
        if (!there.isEmpty() && !there.equals(here) && !maySee(here, there)) {
          wrong.add(here + " sees " + there + ": " + each.getDescription());
        }
      }
    }

    assertThat(wrong).isEmpty();
  }

  @Test
  void every_package_has_its_place_in_the_order() {
    Set<String> known = new TreeSet<>(MAY_SEE.keySet());
    known.add("cli");

    assertThat(known).containsAll(packages());
  }

  @Test
  void no_packages_see_each_other() {
    SlicesRuleDefinition.slices()
        .matching(Imported.ROOT + ".(*)..")
        .should()
        .beFreeOfCycles()
        .check(Imported.CLASSES);
  }

  @Test
  void the_whole_program_was_looked_at() {
    assertThat(Imported.CLASSES).hasSizeGreaterThan(300);
    assertThat(packages())
        .containsAll(List.of("quantity", "design", "reasons", "mechanics", "timber", "loads"))
        .containsAll(List.of("ground", "tables", "confirm", "intake", "rulebase", "engine"))
        .containsAll(List.of("answers", "candidates", "problem", "facts", "causes", "workings"))
        .contains("rules");
  }

  /** The command line sees everything; nothing sees it. */
  private static boolean maySee(String from, String to) {
    return from.equals("cli") || MAY_SEE.getOrDefault(from, Set.of()).contains(to);
  }

  private static Set<String> packages() {
    Set<String> packages = new TreeSet<>();
    Imported.CLASSES.forEach(each -> packages.add(folder(each)));
    return packages;
  }

  /** The part of the package name that follows ours; empty for what is not ours. */
  private static String folder(JavaClass type) {
    String name = type.getPackageName();
    return name.startsWith(Imported.ROOT + ".")
        ? name.substring(Imported.ROOT.length() + 1).split("\\.")[0]
        : "";
  }

  private static void may(String from, String... to) {
    MAY_SEE.put(from, Set.of(to));
  }
}
