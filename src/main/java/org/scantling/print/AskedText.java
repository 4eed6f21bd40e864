package org.scantling.print;

import java.util.List;
import java.util.stream.Collectors;
import org.scantling.tables.Shown;

/** Lines of a conversation: each wrapped at the width of a terminal, set in as it begins. */
public final class AskedText {
  private static final int WIDTH = 80;

  private AskedText() {}

  /**
   * @param hanging by how much what goes on is set in further
   */
  public static String of(String line, int hanging) {
    String text = line.stripLeading();
    String indent = line.substring(0, line.length() - text.length());
    List<String> lines = Wrap.lines(Shown.of(text), indent, indent + " ".repeat(hanging), WIDTH);
    return lines.stream().collect(Collectors.joining("\n"));
  }
}
