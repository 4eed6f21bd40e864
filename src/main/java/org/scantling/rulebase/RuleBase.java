package org.scantling.rulebase;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.drools.model.Model;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Phase;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;

/**
 * The rules as they were compiled, one knowledge base a phase, built when the phase is first run;
 * safe to share between threads.
 *
 * <p>Built straight from the generated models: no parser, no compiler and no XML at run time.
 */
public final class RuleBase {
  private static final String MODELS = "/META-INF/kie/org.scantling/scantling/drools-model";
  private static final String PACKAGE = "org.scantling.rules.";

  private final Map<Phase, PhaseRules> phases;
  private final SortedMap<String, RuleNote> notes;

  private RuleBase(Map<Phase, PhaseRules> phases, SortedMap<String, RuleNote> notes) {
    this.phases = phases;
    this.notes = notes;
  }

  /**
   * @throws RuleBaseFault when the compiled rules are not those that {@code
   *     rules/words/findings.csv} lists
   */
  public static RuleBase load() {
    Map<Phase, PhaseRules> phases = new EnumMap<>(Phase.class);
    SortedMap<String, RuleNote> notes = new TreeMap<>();
    for (String name : modelNames()) {
      Model model = instantiate(name);
      Phase phase = phaseOf(model.getPackageName());
      phases.put(phase, new PhaseRules(model));
      model.getRules().forEach(rule -> add(notes, note(phase, rule)));
    }
    WordedRules.compare(WordedRules.read(), new TreeSet<>(notes.keySet()));
    return new RuleBase(phases, notes);
  }

  /** Every rule, by id. */
  public SortedMap<String, RuleNote> notes() {
    return java.util.Collections.unmodifiableSortedMap(notes);
  }

  /**
   * Runs the rules of one phase over the facts.
   *
   * @return every finding with its rule and what it read, in a stable order
   * @throws RuleBaseFault when rules loop or name themselves wrongly
   */
  public List<Fired> run(Phase phase, Collection<? extends Fact> facts) {
    return run(phase, facts, id -> true);
  }

  /**
   * The same, with only the rules whose id {@code allowed} accepts; for tests that switch rules
   * off.
   */
  public List<Fired> run(Phase phase, Collection<? extends Fact> facts, Predicate<String> allowed) {
    return runInOrder(phase, RuleSession.sorted(facts), allowed);
  }

  /**
   * Of these facts, those that some rule of the phase can match: the findings of a run depend on
   * them and on no others.
   *
   * @return in the order given
   */
  public <T extends Fact> List<T> read(Phase phase, Collection<? extends T> facts) {
    PhaseReads reads = phase(phase).reads();
    List<T> read = new ArrayList<>();
    for (T fact : facts) {
      if (reads.reads(fact)) {
        read.add(fact);
      }
    }
    return read;
  }

  /** The same with the facts inserted as they come; for tests that shuffle them. */
  List<Fired> runInOrder(Phase phase, List<? extends Fact> facts, Predicate<String> allowed) {
    return RuleSession.run(phase(phase).base(), notes, facts, allowed);
  }

  /**
   * Makes every phase ready now, in the order of work, for a thread that has nothing else to do.
   */
  public void makeReady() {
    phases.values().forEach(PhaseRules::makeReady);
  }

  private PhaseRules phase(Phase phase) {
    PhaseRules rules = phases.get(phase);
    if (rules == null) {
      throw new RuleBaseFault("phase " + phase.folder() + " has no rules");
    }
    return rules;
  }

  private static List<String> modelNames() {
    try (InputStream in = RuleBase.class.getResourceAsStream(MODELS)) {
      if (in == null) {
        throw new RuleBaseFault("no compiled rules on the class path (" + MODELS + ")");
      }
      BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      // The first line is the version of the model format.
      return lines.lines().skip(1).filter(line -> !line.isBlank()).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Model instantiate(String className) {
    try {
      return Class.forName(className)
          .asSubclass(Model.class)
          .getDeclaredConstructor()
          .newInstance();
    } catch (ReflectiveOperationException e) {
      throw new RuleBaseFault("compiled rules " + className + " cannot be loaded", e);
    }
  }

  private static Phase phaseOf(String packageName) {
    String folder = packageName.startsWith(PACKAGE) ? packageName.substring(PACKAGE.length()) : "";
    for (Phase phase : Phase.values()) {
      if (phase.folder().equals(folder)) {
        return phase;
      }
    }
    throw new RuleBaseFault("rule package " + packageName + " belongs to no phase");
  }

  private static RuleNote note(Phase phase, org.drools.model.Rule rule) {
    String where = "rule '" + rule.getName() + "'";
    String id = text(rule, "id", where);
    SourceKind kind = SourceKind.of(text(rule, "kind", where).toLowerCase(Locale.ROOT));
    Source source = new Source(kind, text(rule, "source", where), false);
    return new RuleNote(id, phase, rule.getName(), source);
  }

  private static String text(org.drools.model.Rule rule, String key, String where) {
    Object value = rule.getMetaData(key);
    if (value == null) {
      throw new RuleBaseFault(where + " has no @" + key);
    }
    String text = value.toString();
    boolean quoted = text.length() > 1 && text.startsWith("\"") && text.endsWith("\"");
    return quoted ? text.substring(1, text.length() - 1) : text;
  }

  private static void add(SortedMap<String, RuleNote> notes, RuleNote note) {
    RuleNote other = notes.put(note.id(), note);
    if (other != null) {
      throw new RuleBaseFault("two rules have the id " + note.id());
    }
  }
}
