package org.scantling.verification;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/** Reads the pack: every file of rows there is, the sources, and what is not reproduced. */
final class Pack {
  private static final Path HOME = Path.of("src", "test", "resources", "verification");

  private Pack() {}

  /**
   * A document or a person that a row is from.
   *
   * @param kind what sort of source; see the file
   * @param published yes for what was issued to the public as a document of record: a standard, a
   *     code, a guide, a book, a university's or an authority's paper
   */
  record Source(String name, String kind, boolean published) {}

  /** A published value that we cannot compute, or that we compute otherwise, and why. */
  record Left(String source, String edition, String table, String cells, String why) {}

  static List<PackRow> rows() {
    List<PackRow> rows = new ArrayList<>();
    try (Stream<Path> files = Files.list(HOME.resolve("rows"))) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        cells(file).forEach(cells -> rows.add(PackRow.of(name, cells)));
      }
    } catch (IOException e) {
      throw new IllegalStateException("the rows of the pack cannot be read", e);
    }
    return rows;
  }

  static List<Source> sources() {
    return cells(HOME.resolve("sources.csv")).stream()
        .map(
            cells ->
                new Source(
                    cells.get("source"), cells.get("kind"), cells.get("published").equals("yes")))
        .toList();
  }

  static List<Left> notReproduced() {
    return cells(HOME.resolve("not-reproduced.csv")).stream()
        .map(
            cells ->
                new Left(
                    cells.get("source"),
                    cells.get("edition"),
                    cells.get("table"),
                    cells.get("cells"),
                    cells.get("why")))
        .toList();
  }

  static Path file(String name) {
    return HOME.resolve(name);
  }

  private static List<Map<String, String>> cells(Path file) {
    CsvSchema schema = CsvSchema.emptySchema().withHeader();
    try (MappingIterator<Map<String, String>> rows =
        new CsvMapper().readerForMapOf(String.class).with(schema).readValues(file.toFile())) {
      return rows.readAll();
    }
  }
}
