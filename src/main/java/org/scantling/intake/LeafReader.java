package org.scantling.intake;

import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scantling.design.Site;
import org.scantling.quantity.CountWord;
import org.scantling.quantity.QuantityException;
import org.scantling.quantity.QuantityKind;
import org.scantling.reasons.Demand;
import org.scantling.tables.Shown;

/** Reads one single value: checks its form, its unit, its word and its bounds. */
final class LeafReader {
  private static final Pattern WHOLE = Pattern.compile("-?\\d{1,9}");
  private static final Pattern ZONE = Pattern.compile("(-?\\d{1,4})([abAB]?)");
  private static final Pattern ONE_COUNT =
      Pattern.compile("\\D*?\\b(\\d{1,4})(?:\\.0+)?\\b[^\\d.,/]*");
  private static final int LONGEST_TEXT = 200;

  private final Vocabulary vocabulary;
  private final Bounds bounds;
  private final Problems problems;
  private final Readings readings;
  private final WordReader wordReader;
  private String windBasis = Site.Weather.STRENGTH_GUST;

  LeafReader(Vocabulary vocabulary, Problems problems, Readings readings) {
    this.vocabulary = vocabulary;
    this.bounds = Bounds.ofTheProgram();
    this.problems = problems;
    this.readings = readings;
    this.wordReader = new WordReader(vocabulary.trade(), problems, readings);
  }

  /** The kind of number that the wind speed of the file is. */
  void windIs(String basis) {
    this.windBasis = basis;
  }

  /** Reads the value of a key that holds no group and no list. */
  void read(ShapeKeys.Key key, Node node, String path) {
    if (!(node instanceof Node.Scalar value) || value.form() == Node.Form.EMPTY) {
      problems.add(
          node.origin().problem(path, node.words(), accepted(key)).withAdvice(hidden(node)));
      return;
    }
    switch (key.entry().kind()) {
      case TEXT, PATHS -> text(value, path);
      case WORD -> word(key, value, path);
      case COUNT, BAYS, YEAR -> whole(key, value, path);
      case DATE -> date(key, value, path);
      case ZONE -> zone(key, value, path);
      case PLACE -> WrittenPlace.read(value, path, problems, readings);
      case PLACE_ON_HILL -> placeOnHill(value, path);
      case CROSS_FALL -> crossFall(value, path);
      default -> quantity(key.entry().kind(), value, path);
    }
  }

  /** A number sign begins a remark, unless it stands in quotes. */
  private static String hidden(Node node) {
    return node instanceof Node.Scalar value && value.text().startsWith("#")
        ? ProblemPhrases.maybe('"' + value.text() + '"')
        : "";
  }

  /** Whether a key would take a value as it stands; nothing is told. */
  boolean takes(ShapeKeys.Key key, Node.Scalar value, String path) {
    Problems found = new Problems();
    new LeafReader(vocabulary, found, new Readings()).read(key, value, path);
    return found.none();
  }

  /** What a key accepts, as it follows "must be". */
  String accepted(ShapeKeys.Key key) {
    Collection<String> words = words(key);
    return words.isEmpty() ? key.entry().kind().accepted() : ProblemPhrases.oneOf(words);
  }

  /** The words that a key accepts; none where it is not about words. */
  Collection<String> words(ShapeKeys.Key key) {
    List<String> fixed = key.fixedWords();
    return fixed.isEmpty() ? vocabulary.of(key.entry().table()) : fixed;
  }

  void word(ShapeKeys.Key key, Node.Scalar value, String path) {
    word(key, value, path, () -> ProblemPhrases.oneOf(words(key)));
  }

  /** Reads a word where more than words may stand. */
  void word(ShapeKeys.Key key, Node.Scalar value, String path, Supplier<String> accepted) {
    TableWords table = key.entry().table();
    String list = table == TableWords.NONE ? key.key() : table.list();
    wordReader.read(list, words(key), value, path, accepted);
  }

  private void text(Node.Scalar value, String path) {
    boolean plain = value.text().codePoints().noneMatch(Shown::drives);
    if (value.form() != Node.Form.TEXT) {
      problems.add(
          value
              .origin()
              .problem(path, value.words(), EntryKind.TEXT.accepted())
              .withAdvice(ProblemPhrases.say("maybe.quotes")));
    } else if (value.text().isBlank() || !plain || value.text().length() > LONGEST_TEXT) {
      problems.add(
          value
              .origin()
              .problem(
                  path,
                  value.words(),
                  ProblemPhrases.say("accepted.line", "most", String.valueOf(LONGEST_TEXT))));
    } else {
      readings.putWord(path, value.text().strip());
    }
  }

  private void whole(ShapeKeys.Key key, Node.Scalar value, String path) {
    boolean whole = WHOLE.matcher(value.text()).matches();
    if (whole && value.form() == Node.Form.NUMBER) {
      bounded(Integer.parseInt(value.text()), value, path);
      return;
    }
    String found = whole ? "\"" + value.text() + "\"" : ProblemPhrases.shortened(value.text());
    problems.add(
        value
            .origin()
            .problem(path, found, key.entry().kind().accepted())
            .withAdvice(count(value.text())));
  }

  /** One bay of a list of them. */
  void bay(Node node, String path) {
    if (node instanceof Node.Scalar value && value.form() != Node.Form.EMPTY) {
      quantity(EntryKind.LENGTH, value, path);
    } else {
      problems.add(node.origin().problem(path, node.words(), EntryKind.LENGTH.accepted()));
    }
  }

  /** The one whole number that a text names, in figures or in a word. */
  private static String count(String text) {
    Matcher number = ONE_COUNT.matcher(text);
    if (number.matches()) {
      return ProblemPhrases.maybe(number.group(1));
    }
    int word = CountWord.of(text).orElse(0);
    return word > 0 ? ProblemPhrases.maybe(String.valueOf(word)) : "";
  }

  /** A year alone may stand without quotes, as a number. */
  private void date(ShapeKeys.Key key, Node.Scalar value, String path) {
    String text = value.text().strip();
    if (value.form() != Node.Form.TRUTH && WrittenDate.is(text)) {
      readings.putWord(path, text);
    } else {
      problems.add(value.origin().problem(path, value.words(), key.entry().kind().accepted()));
    }
  }

  /** Half zones count half a zone: 6a is 6.0 and 6b is 6.5. */
  private void zone(ShapeKeys.Key key, Node.Scalar value, String path) {
    Matcher match = ZONE.matcher(value.text());
    if (!match.matches()) {
      problems.add(value.origin().problem(path, value.words(), key.entry().kind().accepted()));
      return;
    }
    int whole = Integer.parseInt(match.group(1));
    double half = match.group(2).equalsIgnoreCase("b") ? 0.5 : 0;
    if (bounded(whole, value, path)) {
      readings.putNumber(path, whole + half, value.text().strip());
    }
  }

  /** On the crest, or so far from it. */
  private void placeOnHill(Node.Scalar value, String path) {
    if (value.form() == Node.Form.TEXT && value.text().strip().equals("crest")) {
      readings.putNumber(path, 0, value.text().strip());
      return;
    }
    try {
      bounded(QuantityKind.LENGTH.parse(value.text()), value, path);
    } catch (QuantityException refused) {
      problems.add(
          value.origin().problem(path, refused.found(), EntryKind.PLACE_ON_HILL.accepted()));
    }
  }

  /** A share of the distance between the rows, or so much from row to row. */
  private void crossFall(Node.Scalar value, String path) {
    try {
      bounded(QuantityKind.PERCENT.parse(value.text()), value, path);
    } catch (QuantityException noShare) {
      try {
        double fallIn = QuantityKind.LENGTH.parse(value.text());
        Bounds.Range range = bounds.range(path + UnitAdvice.AS_LENGTH);
        bounded(fallIn, value, path, range, Demand.CROSS_FALL.path());
      } catch (QuantityException refused) {
        problems.add(
            value
                .origin()
                .problem(path, refused.found(), EntryKind.CROSS_FALL.accepted())
                .withAdvice(UnitAdvice.ofFall(value.text().strip(), path, bounds)));
      }
    }
  }

  private void quantity(EntryKind kind, Node.Scalar value, String path) {
    QuantityKind quantity = kind.quantity().orElseThrow();
    try {
      boolean none = quantity == QuantityKind.LENGTH && bounds.range(path).isNone(value.text());
      bounded(none ? 0 : quantity.parse(value.text()), value, path);
    } catch (QuantityException refused) {
      String advice = UnitAdvice.of(refused, quantity, value.text(), meant(path));
      problems.add(
          value.origin().problem(path, refused.found(), refused.accepted()).withAdvice(advice));
    }
  }

  /** What is offered has to be one of the kind that the file says the wind is. */
  private Bounds.Range meant(String path) {
    return path.equals(ClimateRule.SPEED)
        ? bounds.range(ClimateRule.SPEED + " as " + windBasis)
        : bounds.range(path);
  }

  private boolean bounded(double amount, Node.Scalar value, String path) {
    return bounded(amount, value, path, bounds.range(path), path);
  }

  /**
   * @param as where the number is kept, which may be one of several kinds of the same key
   */
  private boolean bounded(
      double amount, Node.Scalar value, String path, Bounds.Range range, String as) {
    boolean holds = range.holds(amount);
    if (holds) {
      readings.putNumber(as, amount);
      readings.putOriginal(path, value.text().strip());
    } else {
      String found = ProblemPhrases.shortened(value.text());
      problems.add(value.origin().problem(path, found, range.words(found)));
    }
    return holds;
  }
}
