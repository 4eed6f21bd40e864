package org.scantling.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.scantling.design.BaseDesign;
import org.scantling.design.ValidationError;

/**
 * Reads a site file and the base design it names.
 *
 * <p>All problems of both files are reported together. The base design is looked up from the site
 * file and may not lie outside the site file's folder, or outside the folder given to {@link
 * #within}.
 */
public final class SiteReader {
  private static final String PLANTING = "planting";
  private static final String HOURLY_PRESSURE = "site.climate.wind-pressure";
  private static final String SNOW_AND_RAIN = "site.climate.snow";

  private final Vocabulary vocabulary;
  private final Optional<Path> root;
  private final Function<BaseDesign, List<ValidationError>> validationErrors;

  public SiteReader(Vocabulary vocabulary) {
    this(vocabulary, Optional.empty(), base -> List.of());
  }

  private SiteReader(
      Vocabulary vocabulary,
      Optional<Path> root,
      Function<BaseDesign, List<ValidationError>> validationErrors) {
    this.vocabulary = vocabulary;
    this.root = root;
    this.validationErrors = validationErrors;
  }

  /** The same reader for files of strangers, whose {@code base:} may not leave a folder. */
  public SiteReader within(Path folder) {
    return new SiteReader(vocabulary, Optional.of(folder), validationErrors);
  }

  /** The same reader, which holds every base against what somebody else knows to be impossible. */
  public SiteReader refusing(Function<BaseDesign, List<ValidationError>> impossible) {
    return new SiteReader(vocabulary, root, impossible);
  }

  /** Reads a site file as it stands. */
  public Intake read(Path file) {
    return read(file, List.of());
  }

  /**
   * Reads a site file with some of its values overridden.
   *
   * @param file a YAML or JSON file
   * @param settings values that replace those of the file, in this order
   * @return the site and what the files left out
   * @throws IntakeException with all problems of the site file, the settings and the base file
   */
  public Intake read(Path file, List<Setting> settings) {
    return read(SourceFile.read(file, file.toString(), new Problems()), settings);
  }

  /**
   * Reads a site from a text that is in memory already, such as one line of a batch.
   *
   * @param source the text, the name that problems show, and the folder to look up the base from
   * @param settings values that replace those of the text, in this order
   * @return the site and what was left out
   * @throws IntakeException with all problems of the text, the settings and the base file
   */
  public Intake read(SourceText source, List<Setting> settings) {
    Problems problems = new Problems();
    ShapeReader shapes = new ShapeReader(vocabulary, problems);
    Node.Group written =
        SettingPatch.apply(TreeReader.readGroup(source, problems), settings, problems);
    Node.Group file = ListedBays.OF_SITE.filled(shapes.repaired(SiteFile.class, written));
    Readings said = shapes.read(SiteFile.class, file);
    said.maybeWord("title")
        .flatMap(vocabulary.trade().edges()::ofTitle)
        .ifPresent(hint -> said.putReadAs("title", hint));
    ClimateRule.check(file, said, problems);
    ListedBays.OF_SITE.check(file, said, problems);
    StretchRule.check(file, said, problems);
    Optional<DesignIntake> base = base(source, file, said, problems);
    base.ifPresent(read -> RecordRule.check(file, said, read.design(), problems));
    problems.throwIfAny();
    return intake(said, base.orElseThrow());
  }

  private Optional<DesignIntake> base(
      SourceText source, Node.Group file, Readings said, Problems problems) {
    BaseFinder finder = new BaseFinder(source, root, problems);
    return said.maybeWord("base")
        .flatMap(written -> finder.find(written, file.originOf("base")))
        .flatMap(
            found ->
                new DesignReader(vocabulary)
                    .read(found.file(), found.name(), validationErrors, problems));
  }

  /** What is said in another way is not left out, and the other way is none that was left out. */
  private static void otherwiseSaid(Readings said, List<String> defaulted) {
    if (said.maybeNumber(HOURLY_PRESSURE).isPresent()) {
      defaulted.removeAll(List.of("site.climate.wind-speed", "site.climate.wind-basis"));
    }
    if (said.hasGroup(SNOW_AND_RAIN)) {
      defaulted.remove("site.climate.ground-snow");
    }
    defaulted.removeAll(List.of(HOURLY_PRESSURE, SNOW_AND_RAIN));
  }

  private static Intake intake(Readings said, DesignIntake base) {
    List<String> defaulted = new ArrayList<>(said.absent());
    if (said.size(PLANTING) == 0 && !defaulted.contains(PLANTING)) {
      // An empty list names no climber either.
      defaulted.add(PLANTING);
    }
    otherwiseSaid(said, defaulted);
    base.defaulted().forEach(path -> defaulted.add("base." + path));
    SortedMap<String, String> originals = new TreeMap<>(said.originals());
    base.originalText().forEach((path, text) -> originals.put("base." + path, text));
    return new Intake(new SiteAssembly(said, base.design()).site(), defaulted, originals);
  }
}
