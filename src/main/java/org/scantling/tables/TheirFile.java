package org.scantling.tables;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Opens a list that somebody else wrote. */
final class TheirFile {
  private static final long LARGEST_BYTES = 1 << 20;

  private TheirFile() {}

  /**
   * @throws TableException where there is no such file, or none that can be read
   */
  static CsvFile opened(String name, Path file) {
    return CsvFile.theirs(name, bytes(name, file));
  }

  /** The same of one in which lines that begin with # are remarks. */
  static CsvFile commented(String name, Path file) {
    return CsvFile.commented(name, bytes(name, file));
  }

  private static byte[] bytes(String name, Path file) {
    if (!Files.isRegularFile(file)) {
      String found = Files.exists(file) ? "found.device" : "found.no-file";
      throw new TableException(
          name, 0, "", RefusalWords.say(found), RefusalWords.say("yard.readable"));
    }
    try {
      if (Files.size(file) > LARGEST_BYTES) {
        throw new TableException(
            name, 0, "", RefusalWords.say("found.large"), RefusalWords.say("yard.size"));
      }
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new TableException(
          name, 0, "", FileTrouble.words(e), RefusalWords.say("yard.encoding"));
    }
  }
}
