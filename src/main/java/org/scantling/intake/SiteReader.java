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
 * Reads a site file and the base designs it names.
 *
 * <p>All problems of all these files are reported together. A base design is looked up from the
 * site file on and may not lie outside the folder given to {@link #within}.
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
   * Reads a site file with some of its values overridden; where it names several bases, over the
   * first of them.
   *
   * @param file a YAML or JSON file
   * @param settings values that replace those of the file, in this order
   * @return the site and what the files left out
   * @throws IntakeException with all problems of the site file, the settings and the base files
   */
  public Intake read(Path file, List<Setting> settings) {
    return readEach(file, settings).get(0);
  }

  /**
   * Reads a site from a text that is in memory already, such as one line of a batch; where it names
   * several bases, over the first of them.
   *
   * @param source the text, the name that problems show, and the folder to look up the bases from
   * @param settings values that replace those of the text, in this order
   * @return the site and what was left out
   * @throws IntakeException with all problems of the text, the settings and the base files
   */
  public Intake read(SourceText source, List<Setting> settings) {
    return readEach(source, settings).get(0);
  }

  /** The same site over each of the bases that its file names, in their order. */
  public List<Intake> readEach(Path file, List<Setting> settings) {
    return readEach(SourceFile.read(file, file.toString(), new Problems()), settings);
  }

  /** The same of a text that is in memory already. */
  public List<Intake> readEach(SourceText source, List<Setting> settings) {
    Problems problems = new Problems();
    return readEach(source, TreeReader.readGroup(source, problems), settings, problems);
  }

  /** The same of one site of many. */
  public List<Intake> readEach(SiteLine line, List<Setting> settings) {
    Problems problems = new Problems();
    problems.addAll(line.problems());
    if (line.keys().members().isEmpty()) {
      problems.throwIfAny();
    }
    return readEach(line.source(), line.keys(), settings, problems);
  }

  private List<Intake> readEach(
      SourceText source, Node.Group keys, List<Setting> settings, Problems problems) {
    ShapeReader shapes = new ShapeReader(vocabulary, problems);
    Node.Group written = SettingPatch.apply(keys, settings, problems);
    Node.Group file = ListedBays.OF_SITE.filled(shapes.repaired(SiteFile.class, written));
    Readings said = shapes.read(SiteFile.class, file);
    said.maybeWord("title")
        .flatMap(vocabulary.trade().edges()::ofTitle)
        .ifPresent(hint -> said.putReadAs("title", hint));
    ClimateRule.check(file, said, problems);
    ListedBays.OF_SITE.check(file, said, problems);
    StretchRule.check(file, said, problems);
    RockRule.check(file, said, problems);
    List<NamedBases.Read> bases = bases(source, file, said, problems);
    bases.forEach(each -> RecordRule.check(file, said, each.intake().design(), problems));
    problems.throwIfAny();
    return bases.stream().map(each -> intake(said, each)).toList();
  }

  private List<NamedBases.Read> bases(
      SourceText source, Node.Group file, Readings said, Problems problems) {
    DesignReader reader = new DesignReader(vocabulary);
    return new NamedBases(new BaseFinder(source, root, problems), problems)
        .read(
            file,
            said,
            found -> reader.read(found.file(), found.name(), validationErrors, problems));
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

  private static Intake intake(Readings said, NamedBases.Read named) {
    DesignIntake base = named.intake();
    List<String> defaulted = new ArrayList<>(said.absent());
    if (said.size(PLANTING) == 0 && !defaulted.contains(PLANTING)) {
      // An empty list names no climber either.
      defaulted.add(PLANTING);
    }
    otherwiseSaid(said, defaulted);
    base.defaulted().forEach(path -> defaulted.add("base." + path));
    SortedMap<String, String> originals = new TreeMap<>(said.originals());
    base.originalText().forEach((path, text) -> originals.put("base." + path, text));
    return new Intake(
        new SiteAssembly(said, base.design()).site(),
        defaulted,
        originals,
        named.written(),
        Optional.empty());
  }
}
