package org.scantling.cli;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.scantling.tables.Market;
import org.scantling.tables.Tables;
import org.scantling.tables.WrittenSize;
import picocli.CommandLine.Option;

/** What a table of hole depths goes over: one value each, or several with commas. */
final class DepthLists {
  @Option(names = "--post", split = ",", paramLabel = "4x4,6x6")
  private @Nullable List<String> posts;

  @Option(names = "--height", split = ",", paramLabel = "LENGTHS")
  private @Nullable List<String> heights;

  @Option(names = "--bay", split = ",", paramLabel = "LENGTHS")
  private @Nullable List<String> bays;

  @Option(names = "--soil", split = ",", paramLabel = "sand,clay")
  private @Nullable List<String> soils;

  @Option(names = "--fill", split = ",", paramLabel = "tamped-soil|gravel|concrete")
  private @Nullable List<String> fills;

  @Option(names = "--wind", split = ",", paramLabel = "SPEEDS")
  private @Nullable List<String> winds;

  @Option(names = "--frost", split = ",", paramLabel = "LENGTHS")
  private @Nullable List<String> frosts;

  Optional<List<String>> posts() {
    return Optional.ofNullable(posts).map(each -> each.stream().map(WrittenSize::plain).toList());
  }

  /** True where posts are named and all of them are metric sizes. */
  boolean metricPosts(Tables tables) {
    return posts()
        .filter(
            each ->
                each.stream()
                    .allMatch(
                        size ->
                            tables
                                .sizes()
                                .find(size)
                                .filter(row -> Market.isMetric(row.market()))
                                .isPresent()))
        .isPresent();
  }

  Optional<List<String>> heights() {
    return Optional.ofNullable(heights);
  }

  Optional<List<String>> bays() {
    return Optional.ofNullable(bays);
  }

  Optional<List<String>> soils() {
    return Optional.ofNullable(soils);
  }

  Optional<List<String>> fills() {
    return Optional.ofNullable(fills);
  }

  Optional<List<String>> winds() {
    return Optional.ofNullable(winds);
  }

  Optional<List<String>> frosts() {
    return Optional.ofNullable(frosts);
  }
}
