package org.scantling.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.scantling.quantity.UnitSystem;
import org.scantling.spans.Assumptions;
import org.scantling.spans.Role;
import org.scantling.spans.TimberGrade;
import org.scantling.spans.TimberSize;
import org.scantling.tables.DesignValueRow;
import org.scantling.tables.OtherGrades;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;
import org.scantling.tables.WrittenSize;
import picocli.CommandLine.Option;

/** What timber a span table is about, and how it is used. */
final class SpanTimberOptions {
  private static final Pattern SIZE = Pattern.compile("(?:([1-9])-)?(\\d+x\\d+)");
  private static final String ALL = "all";
  private static final String BOARD = "board";

  @Option(names = "--size", split = ",", defaultValue = ALL, paramLabel = "2x6,2x8|all")
  private List<String> sizes;

  @Option(names = "--species", split = ",", defaultValue = "southern-pine", paramLabel = "KEY")
  private List<String> species;

  @Option(names = "--grade", split = ",", defaultValue = "No.2", paramLabel = "GRADE")
  private List<String> grades;

  @Option(names = "--service", defaultValue = "wet", paramLabel = "dry|wet")
  private String service;

  @Option(names = "--incised")
  private boolean incised;

  @Option(names = "--repetitive")
  private boolean repetitive;

  @Option(names = "--repetitive-factor", paramLabel = "1.15")
  private @Nullable String repetitiveFactor;

  Assumptions.Use use(OptionReader reader, Tables tables) {
    boolean wet = reader.word("--service", service, Set.of("dry", "wet")).equals("wet");
    double shared = repetitive ? tables.factor("repetitive.bending").amount() : 1;
    if (repetitiveFactor != null) {
      shared = reader.bare("--repetitive-factor", repetitiveFactor, 1);
    }
    return new Assumptions.Use(wet, incised, shared);
  }

  /** True where the beams are counted as joined by decking. */
  boolean decked() {
    return repetitive || repetitiveFactor != null;
  }

  List<TimberGrade> timbers(OptionReader reader, Tables tables) {
    List<DesignValueRow> rows = tables.designValues().rows();
    Set<String> kinds = rows.stream().map(DesignValueRow::species).collect(Collectors.toSet());
    Set<String> ranks = rows.stream().map(DesignValueRow::grade).collect(Collectors.toSet());
    List<TimberGrade> timbers = new ArrayList<>();
    for (String kind : species) {
      reader.word("--species", kind, kinds);
      for (String rank : grades) {
        timbers.add(new TimberGrade(kind.strip(), rank.strip()));
      }
    }
    for (String rank : grades) {
      reader.word("--grade", rank, ranks);
      OtherGrades.why(rank).ifPresent(why -> reader.misplaced("--grade", why));
    }
    return timbers;
  }

  /** Sizes that are named by the option. */
  List<String> named() {
    return sizes.stream().map(WrittenSize::plain).filter(size -> !size.equals(ALL)).toList();
  }

  /** True where a role has a size: headers of boards are had in pairs. */
  boolean has(Role role, String size, Tables tables) {
    String plain = WrittenSize.plain(size);
    return size(tables, named(role, plain, tables))
        .filter(found -> found.row().roles().contains(found.plies() > 1 ? BOARD : role.member()))
        .isPresent();
  }

  /** A board by itself is no header, but a pair of it is. */
  private static String named(Role role, String size, Tables tables) {
    boolean board =
        role == Role.HEADERS
            && tables
                .sizes()
                .find(size)
                .filter(row -> row.roles().contains(BOARD))
                .filter(row -> !row.roles().contains(role.member()))
                .isPresent();
    return board ? "2-" + size : size;
  }

  /**
   * @param asked sizes that stand before the options; those of the option where there are none
   */
  List<TimberSize> sizes(
      OptionReader reader, Tables tables, Role role, List<String> asked, UnitSystem units) {
    if (!asked.isEmpty() && !named().isEmpty()) {
      reader.misplaced("--size", CommandWords.say("spans.sizes-twice"));
    }
    List<TimberSize> read = new ArrayList<>();
    for (String written : asked.isEmpty() ? sizes : asked) {
      String size = WrittenSize.plain(written);
      if (size.equals(ALL)) {
        read.addAll(all(tables, role, units));
      } else {
        size(tables, asked.isEmpty() ? size : named(role, size, tables))
            .ifPresentOrElse(
                read::add,
                () -> reader.misplaced("--size", SizeAdvice.of(size, tables, role, units)));
      }
    }
    return read;
  }

  /** Every size the role has; for headers then pairs of boards. */
  private static List<TimberSize> all(Tables tables, Role role, UnitSystem units) {
    List<TimberSize> all = new ArrayList<>();
    String market = SizeAdvice.market(units);
    for (SizeRow row : tables.sizes(role.member(), market)) {
      all.add(new TimberSize(row.id(), 1, row));
    }
    if (role == Role.HEADERS) {
      for (SizeRow row : tables.sizes(BOARD, market)) {
        all.add(new TimberSize("2-" + row.id(), 2, row));
      }
    }
    return all;
  }

  private static Optional<TimberSize> size(Tables tables, String text) {
    Matcher match = SIZE.matcher(text);
    if (!match.matches()) {
      return Optional.empty();
    }
    int plies = match.group(1) == null ? 1 : Integer.parseInt(match.group(1));
    return tables.sizes().find(match.group(2)).map(row -> new TimberSize(text, plies, row));
  }
}
