package org.scantling.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.AutoComplete;

/** Writes what a shell needs to complete commands and options; the build runs it. */
final class CompletionScript {
  private CompletionScript() {}

  /**
   * @param args the file that is written
   */
  public static void main(String[] args) throws IOException {
    Files.writeString(Path.of(args[0]), text());
  }

  /** For bash, and for zsh with its bashcompinit. */
  static String text() {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    return AutoComplete.bash("scantling", Main.commandLine(nowhere, nowhere)).replace("\r\n", "\n");
  }
}
