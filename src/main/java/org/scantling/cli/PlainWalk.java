package org.scantling.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;
import org.scantling.intake.DesignReader;
import org.scantling.intake.IntakeException;
import org.scantling.intake.Problem;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.SourceText;
import org.scantling.intake.Vocabulary;
import org.scantling.tables.Tables;

/**
 * The plain walk that comes with the program, with some of its values set by options: they are read
 * and bounded just as the files of a site are, and what is wrong is told by the option.
 */
final class PlainWalk {

  /** The option that sets a path of either file. */
  private static final Map<String, String> OPTIONS =
      Map.ofEntries(
          Map.entry("posts.size", "--post"),
          Map.entry("posts.height", "--height"),
          Map.entry("posts.bay", "--bay"),
          Map.entry("posts.backfill", "--fill"),
          Map.entry("posts.row-spacing", "--row-spacing"),
          Map.entry("headers.size", "--header"),
          Map.entry("crossbeams.size", "--crossbeam"),
          Map.entry("site.soil", "--soil"),
          Map.entry("site.isolated-posts", "--isolated-posts"),
          Map.entry("site.climate.wind-speed", "--wind"),
          Map.entry("site.climate.frost-depth", "--frost"),
          Map.entry("site.climate.exposure", "--exposure"),
          Map.entry("site.climate.ground-snow", "--snow"),
          Map.entry("planting[0].vine", "--vine"));

  private final String folder;
  private final Vocabulary vocabulary;
  private final OptionReader reader;

  /**
   * @param metric true for the one of metric sizes
   */
  PlainWalk(Tables tables, boolean metric, OptionReader reader) {
    this.folder = metric ? "depths-metric" : "depths";
    this.vocabulary = Vocabulary.of(tables);
    this.reader = reader;
  }

  /** Its place and its base; empty after a complaint. */
  Optional<Site> site(List<Setting> settings) {
    return told(
        () ->
            ShippedFiles.read(
                folder, file -> new SiteReader(vocabulary).read(file, settings).site()));
  }

  /** Its posts and timbers; empty after a complaint. */
  Optional<BaseDesign> design(List<Setting> settings) {
    return told(
        () ->
            ShippedFiles.read(
                folder, file -> new DesignReader(vocabulary).read(base(file), settings).design()));
  }

  private static SourceText base(Path site) {
    Path base = site.resolveSibling("base.yaml");
    try {
      return SourceText.of(base, "base.yaml", Files.readString(base));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private <T> Optional<T> told(Supplier<T> read) {
    try {
      return Optional.of(read.get());
    } catch (IntakeException wrong) {
      wrong.problems().forEach(this::tell);
      return Optional.empty();
    }
  }

  /** The option that sets a path, or the path where none does. */
  static String option(String path) {
    return OPTIONS.getOrDefault(path, path);
  }

  private void tell(Problem problem) {
    reader.complain(option(problem.field()), problem.found(), problem.accepted(), problem.advice());
  }

  /** Each value of a list by itself, as a path of the site. */
  List<Site> sites(String path, List<String> values) {
    return values.stream()
        .flatMap(each -> site(List.of(new Setting(path, each))).stream())
        .toList();
  }

  /** Each value of a list by itself, as a path of the design. */
  List<BaseDesign> designs(String path, List<String> values) {
    List<BaseDesign> designs = new ArrayList<>();
    for (String value : values) {
      design(List.of(new Setting(path, value))).ifPresent(designs::add);
    }
    return designs;
  }
}
