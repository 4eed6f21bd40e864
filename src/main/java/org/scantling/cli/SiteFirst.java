package org.scantling.cli;

import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;

/** A subject and a site file that were typed the wrong way round. */
final class SiteFirst {
  private SiteFirst() {}

  /**
   * @throws WrongOption where the subject is a file
   */
  static void check(CommandSpec command, Path site, String subject) {
    if (subject.matches(".*[.](ya?ml|json)")) {
      throw new WrongOption(
          CommandWords.say(
              "site-first",
              "command",
              command.name(),
              "file",
              subject,
              "subject",
              site.toString()));
    }
  }
}
