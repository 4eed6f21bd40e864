package org.scantling.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.scantling.sheets.SheetKind;
import org.scantling.shop.EstimateFor;
import org.scantling.shop.ListKind;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;

/** The options that take a proposal to yard and ground. */
final class ListOptions {
  /** Reads a list by the name that people type. */
  static final class Kind implements ITypeConverter<ListKind> {
    @Override
    public ListKind convert(String word) {
      return new ChoiceConverter<>(ListKind.values(), ListKind::word).convert(word);
    }
  }

  @Option(
      names = "--list",
      paramLabel = "cut-list|buying|set-out|order|climbers|upkeep",
      converter = Kind.class)
  private @Nullable ListKind list;

  @Option(names = "--yard", paramLabel = "FILE")
  private @Nullable Path yard;

  @Option(names = "--out", paramLabel = "DIR")
  private @Nullable Path out;

  @Option(names = "--only", paramLabel = "client|builder|engineer")
  private @Nullable SheetKind only;

  @Option(names = "--options")
  private boolean options;

  @Option(names = "--prices", paramLabel = "FILE")
  private @Nullable Path prices;

  @Option(names = "--estimate", paramLabel = "client|builder")
  private @Nullable EstimateFor estimate;

  Optional<Path> prices() {
    return Optional.ofNullable(prices);
  }

  /** For whom an estimate is shown. */
  Optional<EstimateFor> estimate() {
    return Optional.ofNullable(estimate);
  }

  /** Where one is written beside the lists: for the client, if nobody else is named. */
  EstimateFor estimateFor() {
    return estimate().orElse(EstimateFor.CLIENT);
  }

  Optional<ListKind> list() {
    return Optional.ofNullable(list);
  }

  Optional<Path> yard() {
    return Optional.ofNullable(yard);
  }

  /** The one sheet that is written, where not all are. */
  Optional<SheetKind> only() {
    return Optional.ofNullable(only);
  }

  /** True where the client is to choose among several ways to build it. */
  boolean options() {
    return options;
  }

  Optional<Path> out() {
    return Optional.ofNullable(out);
  }

  /** True where something is asked for that goes beyond the proposal. */
  boolean asked() {
    return list != null || out != null || estimate != null;
  }

  /** True where something is bought, so that a yard counts. */
  boolean buys() {
    return asked() || prices != null;
  }
}
