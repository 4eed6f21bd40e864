package org.scantling.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.tables.FileTrouble;

/**
 * Writes a folder of files whole or not at all, each under a temporary name first, and never over
 * anything that this program did not write or that was changed since.
 */
final class OutFolder {
  private static final String TEMPORARY = ".scantling-new-";

  private final Path folder;
  private final Map<String, String> files;

  private OutFolder(Path folder, Map<String, String> files) {
    this.folder = folder;
    this.files = files;
  }

  /**
   * @param files text by name
   * @throws OutException when the folder cannot be used; nothing is changed then
   */
  static void write(Path folder, Map<String, String> files) {
    OutFolder out = new OutFolder(folder, files);
    try {
      if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
        out.replace();
      } else {
        out.create();
      }
    } catch (FileAlreadyExistsException | java.nio.file.DirectoryNotEmptyException taken) {
      throw new OutException(folder + ": found something that appeared meanwhile; try again");
    } catch (IOException cannot) {
      throw new OutException(
          folder
              + ": cannot be written there ("
              + FileTrouble.words(cannot)
              + "), so nothing was. Maybe name another folder.");
    }
  }

  /** A new folder appears with everything in it. */
  private void create() throws IOException {
    Path whole = folder.toAbsolutePath().normalize();
    Path parent = whole.getParent();
    if (parent == null || !Files.isDirectory(parent)) {
      throw new OutException(folder + ": the folder it is to stand in must exist");
    }
    Path fresh = Files.createTempDirectory(parent, TEMPORARY);
    try {
      OutManifest manifest = new OutManifest();
      for (Map.Entry<String, String> file : files.entrySet()) {
        Files.writeString(fresh.resolve(file.getKey()), file.getValue());
        manifest.add(file.getKey(), OutManifest.digest(file.getValue()));
      }
      Files.writeString(fresh.resolve(OutManifest.NAME), manifest.text());
      openToAll(fresh);
      Files.move(fresh, whole, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      remove(fresh);
    }
  }

  /** Temporary folders are for their owner alone; this one is to be like any other. */
  private static void openToAll(Path fresh) throws IOException {
    if (Files.getFileStore(fresh).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(
          fresh, java.nio.file.attribute.PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  private void replace() throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new OutException(folder + ": found a file, accepted is a folder or a new name");
    }
    OutManifest before = OutManifest.read(folder);
    refuseForeign(before);
    Map<Path, Path> moves = new LinkedHashMap<>();
    try {
      for (Map.Entry<String, String> file : files.entrySet()) {
        moves.put(fresh(file.getValue()), folder.resolve(file.getKey()));
        before.add(file.getKey(), OutManifest.digest(file.getValue()));
      }
      // While files take their places both contents are ours; a break-off locks nobody out.
      move(fresh(before.text()), folder.resolve(OutManifest.NAME));
      for (Map.Entry<Path, Path> move : moves.entrySet()) {
        move(move.getKey(), move.getValue());
      }
      move(fresh(after().text()), folder.resolve(OutManifest.NAME));
    } finally {
      for (Path left : moves.keySet()) {
        Files.deleteIfExists(left);
      }
    }
  }

  private OutManifest after() {
    OutManifest manifest = new OutManifest();
    files.forEach((name, text) -> manifest.add(name, OutManifest.digest(text)));
    return manifest;
  }

  private Path fresh(String text) throws IOException {
    Path fresh = Files.createTempFile(folder, TEMPORARY, "");
    Files.writeString(fresh, text);
    if (Files.getFileStore(fresh).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(
          fresh, java.nio.file.attribute.PosixFilePermissions.fromString("rw-r--r--"));
    }
    return fresh;
  }

  private static void move(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  private void refuseForeign(OutManifest before) throws IOException {
    List<String> foreign = new ArrayList<>();
    List<String> names = new ArrayList<>(files.keySet());
    for (String name : names) {
      boolean there = Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS);
      if (there && !before.holds(folder, name)) {
        foreign.add(
            folder.resolve(name)
                + ": was not written by scantling, or was changed since. Maybe move it away or name"
                + " another folder.");
      }
    }
    if (!foreign.isEmpty()) {
      throw new OutException(String.join("\n", foreign));
    }
  }

  private static void remove(Path fresh) throws IOException {
    if (Files.isDirectory(fresh)) {
      try (var left = Files.list(fresh)) {
        for (Path each : left.toList()) {
          Files.delete(each);
        }
      }
      Files.delete(fresh);
    }
  }
}
