package org.scantling.answers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.scantling.confirm.Material;
import org.scantling.confirm.Materials;
import org.scantling.confirm.Service;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Candidate;
import org.scantling.reasons.Question;
import org.scantling.reasons.SizeOf;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;

/**
 * The sizes that a market has, by the option names the rules use: {@code 4x4}, or {@code 2-2x6} for
 * a pair of boards.
 */
public final class Stock {
  private static final String PAIR = "2-";

  private final Tables tables;
  private final String market;
  private final Map<List<String>, Optional<Material>> materials = new ConcurrentHashMap<>();

  public Stock(Tables tables, String market) {
    this.tables = tables;
    this.market = market;
  }

  /** Options for a size question, smallest first. */
  public List<String> options(Question question, boolean pairedHeaders) {
    return switch (question) {
      case CROSSBEAM_SIZE -> names("crossbeam", "");
      case HEADER_SIZE -> pairedHeaders ? names("board", PAIR) : names("header", "");
      case POST_SIZE -> names("post", "");
      case RAIL_SIZE -> names("rail", "");
      case BRACE_SIZE -> names("brace", "");
      default -> throw new IllegalArgumentException(question.id() + " is not a size");
    };
  }

  static String pair(String size) {
    return PAIR + size;
  }

  /** Boards side by side. */
  public static int plies(String option) {
    return option.startsWith(PAIR) ? 2 : 1;
  }

  public static String size(String option) {
    return option.startsWith(PAIR) ? option.substring(PAIR.length()) : option;
  }

  /** True where the market has the size, for whatever role. */
  public boolean sells(String option) {
    return row(option).market().equals(market);
  }

  public SizeRow row(String option) {
    return tables.size(size(option));
  }

  /** Seen from the side of the walk: the edge of the timber that pickets are sawn from here. */
  public double picketEdgeIn() {
    return tables.size(tables.defaults().row("picket." + market).word()).thicknessIn();
  }

  public Candidate.Size candidate(Question question, String option) {
    SizeRow row = row(option);
    return new Candidate.Size(question, option, plies(option), row.thicknessIn(), row.widthIn());
  }

  /** The timber behind the answer to a size question; empty for any other. */
  public Optional<SizeOf> behind(Answer answer) {
    return switch (answer.question()) {
      case CROSSBEAM_SIZE, HEADER_SIZE, POST_SIZE, RAIL_SIZE, BRACE_SIZE -> {
        SizeRow row = row(answer.option());
        int plies = plies(answer.option());
        yield Optional.of(new SizeOf(answer.question(), plies, row.thicknessIn(), row.widthIn()));
      }
      default -> Optional.empty();
    };
  }

  /** The option in that species and grade outdoors; empty where the standard has no such grade. */
  public Optional<Material> material(String option, String species, String grade) {
    return materials.computeIfAbsent(
        List.of(option, species, grade), key -> looked(option, species, grade));
  }

  /** The grades from the weakest up. */
  public List<String> grades() {
    return List.of(tables.defaults().row("grades-upward").word().split(";"));
  }

  private Optional<Material> looked(String option, String species, String grade) {
    return new Materials(tables)
        .find(row(option), plies(option), species, grade, outdoors(species));
  }

  /** Wet, treated as this species is sold, and alone under its load. */
  private Service outdoors(String species) {
    boolean incised = tables.defaults().row("incised." + species).word().equals("yes");
    return new Service(true, incised, 1);
  }

  private List<String> names(String role, String prefix) {
    List<String> names = new ArrayList<>();
    for (SizeRow row : tables.sizes(role, market)) {
      names.add(prefix + row.id());
    }
    return names;
  }
}
