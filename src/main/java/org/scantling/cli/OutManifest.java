package org.scantling.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What this program has written into a folder: for every file the digest of its content, or of the
 * two contents it may have while a newer one takes its place.
 */
final class OutManifest {
  static final String NAME = ".scantling";

  private final TreeMap<String, Set<String>> digests = new TreeMap<>();

  static OutManifest read(Path folder) throws IOException {
    OutManifest manifest = new OutManifest();
    Path file = folder.resolve(NAME);
    if (Files.isRegularFile(file)) {
      for (String line : Files.readAllLines(file)) {
        int gap = line.indexOf("  ");
        if (!line.startsWith("#") && gap > 0) {
          manifest.add(line.substring(gap + 2), line.substring(0, gap));
        }
      }
    }
    return manifest;
  }

  void add(String name, String digest) {
    digests.computeIfAbsent(name, each -> new TreeSet<>()).add(digest);
  }

  /** True when the file is one of ours and still as it was written. */
  boolean holds(Path folder, String name) throws IOException {
    Path file = folder.resolve(name);
    return digests.containsKey(name)
        && Files.isRegularFile(file, java.nio.file.LinkOption.NOFOLLOW_LINKS)
        && digests.get(name).contains(digest(Files.readAllBytes(file)));
  }

  String text() {
    StringBuilder text = new StringBuilder(CommandWords.say("out.manifest")).append('\n');
    digests.forEach(
        (name, all) ->
            all.forEach(each -> text.append(each).append("  ").append(name).append('\n')));
    return text.toString();
  }

  static String digest(String text) {
    return digest(text.getBytes(StandardCharsets.UTF_8));
  }

  static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }
}
