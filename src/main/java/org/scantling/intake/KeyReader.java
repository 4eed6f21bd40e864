package org.scantling.intake;

import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * Holds single answers against the keys of a site or design file before there is a file, so that
 * whoever asks for them can tell at once what the reader of the file would say.
 */
public final class KeyReader {
  private static final String NAME = "answers.yaml";

  private final Class<?> shape;
  private final Vocabulary vocabulary;
  private final Map<String, ShapeKeys.Key> keys = new LinkedHashMap<>();

  private KeyReader(Class<?> shape, Vocabulary vocabulary) {
    this.shape = shape;
    this.vocabulary = vocabulary;
    collect(shape, "");
  }

  /** For the keys of a site file. */
  public static KeyReader ofSite(Vocabulary vocabulary) {
    return new KeyReader(SiteFile.class, vocabulary);
  }

  /** For the keys of a design file. */
  public static KeyReader ofDesign(Vocabulary vocabulary) {
    return new KeyReader(DesignFile.class, vocabulary);
  }

  private void collect(Class<?> group, String path) {
    for (ShapeKeys.Key key : ShapeKeys.keys(group)) {
      String below = path + key.key();
      if (!key.isGroup() || !words(key).isEmpty()) {
        keys.put(below, key);
      }
      if (key.isGroup()) {
        collect(key.type(), below + ".");
      }
    }
  }

  /** Every path that may hold a value, in the order of the file; places in lists do not show. */
  public List<String> paths() {
    return List.copyOf(keys.keySet());
  }

  /** The words that a path accepts; none where it is not about words. */
  public Collection<String> words(String path) {
    return words(key(path));
  }

  private Collection<String> words(ShapeKeys.Key key) {
    return leaves(new Problems()).words(key);
  }

  /** Whether a path is that of a group of keys. */
  public boolean isGroup(String path) {
    return key(path).isGroup() && !key(path).list();
  }

  /** An answer as it stands behind its key in a file. */
  public String written(String path, String answer) {
    return WrittenWord.of(key(path).entry().kind(), answer);
  }

  /** The amount that a path holds, where it holds one whose unit a person may write in two ways. */
  public Optional<Measure> amount(Map<String, String> written, String path) {
    OptionalDouble amount = readings(written, new Problems()).maybeNumber(path);
    return amount.isPresent()
        ? unit(key(path).entry().kind()).map(unit -> new Measure(amount.getAsDouble(), unit))
        : Optional.empty();
  }

  private static Optional<Unit> unit(EntryKind kind) {
    return switch (kind) {
      case LENGTH, PLACE_ON_HILL -> Optional.of(Unit.INCH);
      case LOAD -> Optional.of(Unit.PSF);
      case WIND_SPEED -> Optional.of(Unit.MPH);
      case PERCENT, CROSS_FALL -> Optional.of(Unit.PERCENT);
      case DEGREE_DAYS -> Optional.of(Unit.F_DAYS);
      default -> Optional.empty();
    };
  }

  /**
   * What the reader of the file says against the value of one path.
   *
   * @param written what stands behind each path so far, this one among them
   * @return what is wrong and what would be right, or empty where it is accepted
   */
  public Optional<String> refusal(Map<String, String> written, String path) {
    Problems problems = new Problems();
    try {
      readings(written, problems);
    } catch (IntakeException unreadable) {
      return Optional.of(sentences(unreadable.problems()));
    }
    return said(problems, path);
  }

  private static Optional<String> said(Problems problems, String path) {
    Stream<String> beyond =
        problems.beyond().stream().filter(each -> isOf(each.field(), path)).map(Outside::sentence);
    List<Problem> own = problems.all().stream().filter(each -> isOf(each.field(), path)).toList();
    String all =
        Stream.concat(beyond, own.isEmpty() ? Stream.empty() : Stream.of(sentences(own)))
            .collect(Collectors.joining(" "));
    return Optional.of(all).filter(text -> !text.isEmpty());
  }

  private static boolean isOf(String field, String path) {
    String plain = field.replaceAll("\\[\\d+]", "");
    return plain.equals(path) || plain.startsWith(path + ".");
  }

  /** The word that the reader of the file takes another one for. */
  public Optional<String> word(String path, String typed) {
    return wordRead(path, typed, new Problems()).maybeWord(path);
  }

  /** What the reader of the file says against a word. */
  public Optional<String> wordRefusal(String path, String typed) {
    Problems problems = new Problems();
    wordRead(path, typed, problems);
    return said(problems, path);
  }

  private Readings wordRead(String path, String typed, Problems problems) {
    Readings read = new Readings();
    new LeafReader(vocabulary, problems, read)
        .word(key(path), new Node.Scalar(Origin.whole(NAME), typed, Node.Form.TEXT), path);
    return read;
  }

  private static String sentences(List<Problem> problems) {
    return problems.stream().map(Problem::ofValue).collect(Collectors.joining(" "));
  }

  private Readings readings(Map<String, String> written, Problems problems) {
    Node.Group nothing = new Node.Group(Origin.whole(NAME), Map.of());
    List<Setting> settings =
        written.entrySet().stream()
            .map(each -> new Setting(each.getKey(), each.getValue()))
            .toList();
    Node.Group file = SettingPatch.apply(nothing, settings, problems);
    Readings said = new ShapeReader(vocabulary, problems).read(shape, file);
    if (shape == SiteFile.class) {
      ClimateRule.check(file, said, problems);
      StretchRule.check(file, said, problems);
    }
    return said;
  }

  private LeafReader leaves(Problems problems) {
    return new LeafReader(vocabulary, problems, new Readings());
  }

  private ShapeKeys.Key key(String path) {
    ShapeKeys.Key key = keys.get(path);
    if (key == null) {
      throw new IllegalArgumentException("no file has a key " + path);
    }
    return key;
  }

  /** A text of a file in memory, as if it stood in that folder under that name. */
  public static SourceText text(Path file, String text) {
    return SourceText.of(file, file.toString(), text);
  }
}
