package org.scantling.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.scantling.design.BaseDesign;
import org.scantling.intake.DesignReader;
import org.scantling.intake.IntakeException;
import org.scantling.intake.OutsideException;
import org.scantling.intake.SourceText;
import org.scantling.sayings.Sayings;
import org.scantling.tables.FileTrouble;
import org.scantling.visit.Choosable;

/**
 * The base designs that lie about: beside the site file, in base/, and in folders that are named.
 */
final class BaseOffers {
  private static final String FOLDER = "base";
  private static final int MOST = 200;

  private final Path beside;
  private final DesignReader reader;
  private final Sayings sayings;

  /**
   * @param target the site file, from which bases are named
   */
  BaseOffers(Path target, DesignReader reader, Sayings sayings) {
    this.beside = SourceText.folderOf(target);
    this.reader = reader;
    this.sayings = sayings;
  }

  /** Each design that can be read, by the path that the site file would give. */
  List<Choosable> in(List<Path> named) {
    Set<Path> folders = new LinkedHashSet<>();
    for (Path folder : named) {
      folders.add(checked(folder).toAbsolutePath().normalize());
    }
    folders.add(beside.resolve(FOLDER));
    folders.add(beside);
    List<Choosable> offers = new ArrayList<>();
    folders.forEach(folder -> files(folder).forEach(file -> offer(file).ifPresent(offers::add)));
    return offers;
  }

  private static Path checked(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new WrongOption(CommandWords.say("from.folder", "folder", folder.toString()));
    }
    return folder;
  }

  private static List<Path> files(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.getFileName().toString().matches(".+\\.(?:ya?ml|json)"))
          .filter(Files::isRegularFile)
          .sorted()
          .limit(MOST)
          .toList();
    } catch (IOException unreadable) {
      throw new WrongOption(
          CommandWords.say(
              "folder.unreadable",
              "folder",
              folder.toString(),
              "why",
              FileTrouble.words(unreadable)));
    }
  }

  /** What is no design file is none to offer. */
  private Optional<Choosable> offer(Path file) {
    try {
      BaseDesign design = reader.read(file).design();
      return Optional.of(new Choosable(written(file), says(design)));
    } catch (IntakeException | OutsideException other) {
      return Optional.empty();
    }
  }

  private String written(Path file) {
    return beside.relativize(file).toString().replace('\\', '/');
  }

  private String says(BaseDesign design) {
    String bays = String.valueOf(design.posts().bays());
    return design
        .proven()
        .map(
            proven ->
                sayings.say(
                    "offer-proven",
                    "title",
                    design.title(),
                    "bays",
                    bays,
                    "year",
                    String.valueOf(proven.builtYear())))
        .orElseGet(() -> sayings.say("offer-drawn", "title", design.title(), "bays", bays));
  }
}
