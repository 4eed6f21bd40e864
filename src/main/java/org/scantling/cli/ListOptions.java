package org.scantling.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
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
      paramLabel = "cut-list|buying|set-out|order|climbers",
      converter = Kind.class)
  private @Nullable ListKind list;

  @Option(names = "--yard", paramLabel = "FILE")
  private @Nullable Path yard;

  @Option(names = "--out", paramLabel = "DIR")
  private @Nullable Path out;

  Optional<ListKind> list() {
    return Optional.ofNullable(list);
  }

  Optional<Path> yard() {
    return Optional.ofNullable(yard);
  }

  Optional<Path> out() {
    return Optional.ofNullable(out);
  }

  /** True where something is asked for that goes beyond the proposal. */
  boolean asked() {
    return list != null || out != null;
  }
}
