package org.scantling.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.scantling.engine.Engine;
import org.scantling.engine.NamedBase;
import org.scantling.engine.Scenarios;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;
import org.scantling.words.Words;

/** The scenarios, and some of them with a wish more, as proposals; worked once. */
final class Demo {
  private static final Path FOLDER = Path.of("scenarios");
  private static final Path CALMER = Path.of("src/test/resources/print/calmer.yaml");
  private static final Path RARE_FOLDER = Path.of("src/test/resources/rulecases/sites");
  private static final List<Proposal> RARE = new ArrayList<>();
  private static final Tables TABLES = Tables.load();
  private static final Words WORDS = Words.load(TABLES);
  private static final Engine ENGINE = new Engine(RuleBase.load(), TABLES);
  private static final Map<String, Proposal> WORKED = new LinkedHashMap<>();
  private static final Map<String, Intake> READ = new LinkedHashMap<>();

  private Demo() {}

  static Words words() {
    return WORDS;
  }

  static Tables tables() {
    return TABLES;
  }

  /** Every scenario as it stands, then the ones with wishes. */
  static synchronized Map<String, Proposal> all() {
    if (WORKED.isEmpty()) {
      names().forEach(name -> work(name, name));
      work("on brackets", "stone-terrace");
      work("stepped", "sloping-path", "site.slope=12 %", "walkway.headroom=102 in");
      work("in concrete", "windy-hill", "preferences.footing=concrete");
      work("paired headers", "same-place", "preferences.header=paired");
      work("by experience", "deep-frost", "preferences.embedment-basis=experience");
      work("by freezing index", "sloping-path", "site.climate.air-freezing-index=1500 F-days");
      work(
          "hard winter",
          "sloping-path",
          "site.climate.air-freezing-index=3500 F-days",
          "site.climate.wind-speed=90 mph",
          "planting[0].vine=clematis");
      work("poor timber", "long-walk", "materials.species=western-cedars", "materials.grade=No.3");
      work(
          "no header joint serves",
          "mower-lane",
          "site.climate.ground-snow=70 psf",
          "preferences.snow-share=full");
      work("calmer", CALMER);
      work(
          "metric yard",
          "same-place",
          "materials.market=metric",
          "materials.species=spruce-pine-fir");
      work("too windy", "windy-hill", "site.climate.wind-speed=150 mph");
      work("too steep", "sloping-path", "site.slope=30 %");
      work("too wide", "step-free", "walkway.clear-width=16 ft");
      work("too high", "step-free", "walkway.headroom=13 ft");
    }
    return WORKED;
  }

  /** All of them, and the sites that bring rare arrangements. */
  static synchronized List<Proposal> withRare() {
    if (RARE.isEmpty()) {
      RARE.addAll(all().values());
      SiteReader reader = new SiteReader(Vocabulary.of(TABLES));
      for (Path file : sites(RARE_FOLDER)) {
        Intake intake = reader.read(file);
        RARE.add(Scenarios.proposal(intake));
      }
    }
    return RARE;
  }

  private static List<Path> sites(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The name of a site whose posts need braces, which the base has not. */
  static String braced() {
    return all().entrySet().stream()
        .filter(each -> each.getValue().proposed())
        .filter(each -> each.getValue().decision(Question.BRACE_SIZE).isPresent())
        .filter(each -> each.getValue().decision(Question.BRACE_SIZE).get().base().isEmpty())
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow();
  }

  static Proposal proposal(String name) {
    return all().get(name);
  }

  static Intake intake(String name) {
    all();
    return READ.get(name);
  }

  static Decision decision(String name, Question question) {
    return proposal(name).decision(question).orElseThrow();
  }

  private static void work(String name, String scenario, String... wishes) {
    work(name, FOLDER.resolve(scenario + ".yaml"), wishes);
  }

  private static void work(String name, Path file, String... wishes) {
    List<Setting> settings = new ArrayList<>();
    for (String wish : wishes) {
      settings.add(
          new Setting(wish.substring(0, wish.indexOf('=')), wish.substring(wish.indexOf('=') + 1)));
    }
    List<Intake> each = new SiteReader(Vocabulary.of(TABLES)).readEach(file, settings);
    Intake intake = each.size() == 1 ? each.get(0) : chosen(each);
    Proposal proposal = Scenarios.proposal(intake);
    READ.put(name, intake);
    WORKED.put(name, intake.choice().map(proposal::choosing).orElse(proposal));
  }

  private static Intake chosen(List<Intake> overEachBase) {
    BaseChoice choice =
        ENGINE.choose(
            overEachBase.stream()
                .map(each -> new NamedBase(each.baseFile(), each.site(), each.defaulted()))
                .toList());
    return overEachBase.get(choice.place()).chosen(choice);
  }

  private static List<String> names() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(".yaml"))
          .map(file -> file.substring(0, file.length() - ".yaml".length()))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
