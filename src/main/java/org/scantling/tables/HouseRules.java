package org.scantling.tables;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A folder of tables that lay their rows over ours: data only, never code. */
record HouseRules(Map<TableFile, CsvFile> tables, Optional<CsvFile> sources) {
  private static final long LARGEST_BYTES = 1 << 20;

  static HouseRules none() {
    return new HouseRules(Map.of(), Optional.empty());
  }

  /**
   * @throws TableException when the folder is none, or holds anything but tables of known names
   */
  static HouseRules read(Path folder) {
    Map<String, CsvFile> files = new TreeMap<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
      for (Path entry : entries) {
        String name = String.valueOf(entry.getFileName());
        files.put(name, known(entry, name));
      }
    } catch (NotDirectoryException | NoSuchFileException e) {
      throw new TableException(
          folder.toString(),
          0,
          "",
          RefusalWords.say("found.no-folder"),
          RefusalWords.say("house.folder"));
    } catch (IOException | DirectoryIteratorException e) {
      throw unreadable(folder.toString(), e, "house.readable-folder");
    }
    Optional<CsvFile> sources = Optional.ofNullable(files.remove(TableFile.SOURCES));
    Map<TableFile, CsvFile> tables = new EnumMap<>(TableFile.class);
    for (TableFile table : TableFile.values()) {
      CsvFile file = files.get(table.fileName());
      if (file != null) {
        tables.put(table, file);
      }
    }
    return new HouseRules(tables, sources);
  }

  private static TableException unreadable(String file, Exception why, String accepted) {
    String found = RefusalWords.say("found.unreadable", "why", FileTrouble.words(why));
    return new TableException(file, 0, "", found, RefusalWords.say(accepted));
  }

  private static CsvFile known(Path entry, String name) {
    if (!Files.isRegularFile(entry) || !names().contains(name)) {
      throw new TableException(
          name, 0, "", name, RefusalWords.say("house.names", "names", String.join(", ", names())));
    }
    try {
      if (Files.size(entry) > LARGEST_BYTES) {
        throw new TableException(
            name, 0, "", RefusalWords.say("found.large"), RefusalWords.say("house.size"));
      }
      return CsvFile.theirs(name, Files.readAllBytes(entry));
    } catch (IOException e) {
      throw unreadable(entry.toString(), e, "house.readable");
    }
  }

  private static List<String> names() {
    List<String> names = new ArrayList<>();
    for (TableFile table : TableFile.values()) {
      names.add(table.fileName());
    }
    names.add(TableFile.SOURCES);
    return names;
  }
}
