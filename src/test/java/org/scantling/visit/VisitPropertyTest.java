package org.scantling.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import org.scantling.intake.DesignReader;
import org.scantling.intake.KeyReader;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;

/** Whoever answers at random, with whatever would be taken, finds just that in the file. */
class VisitPropertyTest {
  private static final Path FILE = Path.of("scenarios/random.yaml").toAbsolutePath();
  private static final Vocabulary VOCABULARY = Vocabulary.of(Asking.TABLES);
  private static final Visit SITE = Asking.visit(VisitKind.SITE);
  private static final Visit BASE = Asking.visit(VisitKind.BASE);

  private static final List<String> LINES =
      List.of(
          "",
          "",
          "",
          "1",
          "2",
          "3",
          "none",
          "yes",
          "6 ft",
          "5'-8 1/2\"",
          "42 in",
          "1.8 m",
          "450 mm",
          "3 in",
          "12 in",
          "100 in",
          "24 ft",
          "7 1/2 ft",
          "30 psf",
          "1.4 kPa",
          "115 mph",
          "185 km/h",
          "51 m/s",
          "3 %",
          "0.5 %",
          "5",
          "6b",
          "4",
          "1500 F-days",
          "44 F",
          "7 C",
          "crest",
          "two 4x4x10",
          "4x4",
          "ten 2x6x12",
          "2x8",
          "2011",
          "2012-10",
          "2012-10-29",
          "It's 5: \"so\" # or {not}",
          "no",
          "true",
          "1e3",
          "- x",
          "Walk, lower",
          "wheelbarrow",
          "machine, one-person",
          "wisteria and hops",
          "posts, braces",
          "concrete",
          "paired");

  @Property(tries = 12, edgeCases = EdgeCasesMode.NONE)
  void a_site_file_reads_back_to_what_was_answered(@ForAll("seeds") long seed) {
    siteReadsBack(seed);
  }

  @Tag("slow")
  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void many_site_files_read_back_to_what_was_answered(@ForAll("seeds") long seed) {
    siteReadsBack(seed);
  }

  private static void siteReadsBack(long seed) {
    VisitAnswers answers = answered(SITE, new Random(seed));
    SortedMap<String, String> read =
        new SiteReader(VOCABULARY)
            .read(KeyReader.text(FILE, VisitText.of(SITE, answers)), List.of())
            .originalText();

    Map<String, String> site = new LinkedHashMap<>(read);
    site.keySet().removeIf(path -> path.startsWith("base."));
    assertThat(site).isEqualTo(expected(SITE, answers));
  }

  @Property(tries = 12, edgeCases = EdgeCasesMode.NONE)
  void a_design_file_reads_back_to_what_was_answered(@ForAll("seeds") long seed) {
    designReadsBack(seed);
  }

  @Tag("slow")
  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void many_design_files_read_back_to_what_was_answered(@ForAll("seeds") long seed) {
    designReadsBack(seed);
  }

  private static void designReadsBack(long seed) {
    VisitAnswers answers = answered(BASE, new Random(seed));
    String text = VisitText.of(BASE, answers);

    assertThat(
            new LinkedHashMap<>(
                new DesignReader(VOCABULARY).read(KeyReader.text(FILE, text)).originalText()))
        .isEqualTo(expected(BASE, answers));
  }

  @Property(tries = 6, edgeCases = EdgeCasesMode.NONE)
  void kept_answers_are_the_same_when_they_are_taken_up_again(@ForAll("seeds") long seed) {
    takenUpAgain(seed);
  }

  @Tag("slow")
  @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
  void many_kept_answers_are_the_same_when_they_are_taken_up_again(@ForAll("seeds") long seed) {
    takenUpAgain(seed);
  }

  private static void takenUpAgain(long seed) {
    VisitAnswers answers = answered(SITE, new Random(seed));
    VisitAnswers kept = AnswersText.read(AnswersText.of(answers, "kept"));

    assertThat(kept).isEqualTo(answers);
    assertThat(SITE.stillGood(kept).given()).isEqualTo(answers.given());
  }

  /** Lines at random until one is taken, question by question. */
  private static VisitAnswers answered(Visit visit, Random random) {
    VisitAnswers answers = VisitAnswers.none();
    Optional<VisitRow> row = visit.next(answers);
    while (row.isPresent()) {
      List<String> lines = new ArrayList<>(LINES);
      Collections.shuffle(lines, random);
      answers = taken(visit, row.get(), lines, answers);
      row = visit.next(answers);
    }
    return answers;
  }

  private static VisitAnswers taken(
      Visit visit, VisitRow row, List<String> lines, VisitAnswers answers) {
    // Where a stretch ends is told after where it begins.
    String only = Map.of("base", "1", "free-from", "6 in", "free-to", "12 in").get(row.id());
    for (String line : only == null ? lines : List.of(only)) {
      // Only what has been proven can be what the checks are held to, and the base comes last.
      boolean fits = !(row.id().equals("basis") && line.equals("2"));
      if (fits && visit.answer(row, line, answers) instanceof VisitTurn.Taken taken) {
        return taken.answers();
      }
    }
    throw new AssertionError("no line answers " + row.id());
  }

  /** Each written answer at its path. */
  private static Map<String, String> expected(Visit visit, VisitAnswers answers) {
    Map<String, String> expected = new LinkedHashMap<>();
    for (VisitRow row : visit.asked(answers)) {
      answers
          .of(row.id())
          .filter(VisitAnswers.Given::isWritten)
          .filter(given -> row.hasPath())
          .ifPresent(given -> put(row, given.text(), answers, expected));
    }
    putRecord(visit, answers, expected);
    return expected;
  }

  private static void put(
      VisitRow row, String text, VisitAnswers answers, Map<String, String> expected) {
    switch (row.path()) {
      case "walkway.no-post.from", "walkway.no-post.to" ->
          expected.put(row.path().replace("no-post", "no-post[0]"), text);
      case "walkway.users" -> {
        List<String> words = list(text);
        words.remove("machine");
        for (int i = 0; i < words.size(); i++) {
          expected.put("walkway.users[" + i + "]", words.get(i));
        }
        if (list(text).contains("machine")) {
          expected.put(
              "walkway.users[" + words.size() + "].machine-width",
              answers.of("machine-width").orElseThrow().text());
        }
      }
      case "planting.vine" -> {
        List<String> words = list(text);
        for (int i = 0; i < words.size(); i++) {
          expected.put("planting[" + i + "].vine", words.get(i));
        }
      }
      case "walkway.users.machine-width" -> {}
      default -> {
        if (row.asks() == AskedAs.PIECES) {
          TimberPieces.ofKept(text).size().ifPresent(size -> expected.put(row.path(), size));
        } else if (!row.path().startsWith("proven.record")
            && !Set.of("panels", "knee").contains(text)) {
          expected.put(row.path(), text);
        }
      }
    }
  }

  private static void putRecord(Visit visit, VisitAnswers answers, Map<String, String> expected) {
    int place = 0;
    for (String[] each :
        new String[][] {
          {"storm", "storm", "storm-date"},
          {"snow", "snow", "snow-date"},
          {"repair", "mended", "mended-date"},
          {"inspection", "seen", "base-date"}
        }) {
      Optional<String> what = said(visit, answers, each[1]);
      if (what.isPresent()) {
        String path = "proven.record[" + place++ + "].";
        expected.put(path + "kind", each[0]);
        expected.put(path + "what", what.get());
        expected.put(path + "date", said(visit, answers, each[2]).orElseThrow());
        if (each[0].equals("inspection")) {
          said(visit, answers, "photo").ifPresent(name -> expected.put(path + "photo", name));
        }
      }
    }
  }

  private static Optional<String> said(Visit visit, VisitAnswers answers, String question) {
    boolean asked = visit.asked(answers).stream().anyMatch(row -> row.id().equals(question));
    return answers
        .of(question)
        .filter(given -> asked)
        .map(VisitAnswers.Given::text)
        .filter(text -> !text.equals("-"));
  }

  private static List<String> list(String text) {
    return new ArrayList<>(new LinkedHashSet<>(List.of(text.split(", "))));
  }

  @Provide
  Arbitrary<Long> seeds() {
    return Arbitraries.longs();
  }
}
