package org.scantling.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.tables.FileTrouble;

/**
 * Writes a folder of files whole or not at all, and never over anything that this program did not
 * write or that was changed since.
 *
 * <p>The new folder is made beside the old one and takes its place by its name alone, so that
 * whatever breaks off, a folder never holds files of two proposals. Other people's files go over
 * into the new folder; where that broke off, the next run finishes it.
 */
final class OutFolder {
  private static final String SUCH_AS = "job";

  private final Path folder;
  private final Path whole;
  private final Beside beside;
  private final Map<String, byte[]> files;

  private OutFolder(Path folder, Beside beside, Map<String, byte[]> files) {
    this.folder = folder;
    this.whole = beside.whole();
    this.beside = beside;
    this.files = files;
  }

  /** Files of text as they are written. */
  static Map<String, byte[]> texts(Map<String, String> files) {
    Map<String, byte[]> bytes = new LinkedHashMap<>();
    files.forEach((name, text) -> bytes.put(name, text.getBytes(StandardCharsets.UTF_8)));
    return bytes;
  }

  /**
   * @param files what each holds, by name
   * @throws OutException when the folder cannot be used; nothing is changed then
   */
  static void write(Path folder, Map<String, byte[]> files) {
    try {
      new OutFolder(folder, place(folder), files).write();
    } catch (FileAlreadyExistsException | java.nio.file.DirectoryNotEmptyException taken) {
      throw refused("out.taken", folder);
    } catch (IOException cannot) {
      throw new OutException(
          CommandWords.say(
              "out.unwritten", "folder", folder.toString(), "why", FileTrouble.words(cannot)));
    }
  }

  /** True where the folder holds what an earlier run has written. */
  static boolean holdsOurs(Path folder) {
    return Files.isRegularFile(folder.resolve(OutManifest.NAME));
  }

  private static Beside place(Path folder) throws IOException {
    if (folder.toString().isBlank()) {
      throw new OutException(CommandWords.say("out.unnamed"));
    }
    Path whole = Files.isDirectory(folder) ? folder.toRealPath() : folder.toAbsolutePath();
    whole = whole.normalize();
    Path parent = whole.getParent();
    if (parent == null || Path.of("").toAbsolutePath().startsWith(whole)) {
      throw new OutException(
          CommandWords.say("out.root", "folder", folder.toString(), "such", SUCH_AS));
    }
    if (!Files.isDirectory(parent)) {
      throw refused("out.parent", folder);
    }
    return new Beside(parent, whole.getFileName().toString());
  }

  private static OutException refused(String saying, Path folder) {
    return new OutException(CommandWords.say(saying, "folder", folder.toString()));
  }

  private void write() throws IOException {
    beside.finishEarlier();
    boolean there = Files.exists(whole, LinkOption.NOFOLLOW_LINKS);
    if (there && !Files.isDirectory(whole)) {
      throw refused("out.file", folder);
    }
    if (there) {
      refuseForeign(OutManifest.read(whole));
    }
    Path fresh = beside.fresh();
    try {
      fill(fresh);
      if (there) {
        beside.switchTo(fresh);
      } else {
        Files.move(fresh, whole, StandardCopyOption.ATOMIC_MOVE);
      }
    } finally {
      Beside.remove(fresh);
    }
  }

  private void fill(Path fresh) throws IOException {
    OutManifest manifest = new OutManifest();
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path there = fresh.resolve(file.getKey());
      Files.createDirectories(there.getParent());
      Files.write(there, file.getValue());
      manifest.add(file.getKey(), OutManifest.digest(file.getValue()));
    }
    Files.writeString(fresh.resolve(OutManifest.NAME), manifest.text());
    openToAll(fresh);
  }

  /** Temporary folders are for their owner alone; this one is to be like any other. */
  private static void openToAll(Path fresh) throws IOException {
    if (Files.getFileStore(fresh).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(fresh, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  private void refuseForeign(OutManifest before) throws IOException {
    List<String> foreign = new ArrayList<>();
    for (String name : files.keySet()) {
      boolean there = Files.exists(whole.resolve(name), LinkOption.NOFOLLOW_LINKS);
      if (there && !before.holds(whole, name)) {
        foreign.add(foreign(name));
      }
    }
    files.keySet().stream()
        .filter(name -> name.contains("/"))
        .map(name -> name.substring(0, name.lastIndexOf('/')))
        .distinct()
        .filter(this::taken)
        .forEach(name -> foreign.add(foreign(name)));
    if (!foreign.isEmpty()) {
      throw new OutException(String.join("\n", foreign));
    }
  }

  private String foreign(String name) {
    return CommandWords.say("out.foreign", "file", folder.resolve(name).toString());
  }

  /** True where something stands that is no folder. */
  private boolean taken(String name) {
    Path there = whole.resolve(name);
    return Files.exists(there, LinkOption.NOFOLLOW_LINKS)
        && !Files.isDirectory(there, LinkOption.NOFOLLOW_LINKS);
  }
}
