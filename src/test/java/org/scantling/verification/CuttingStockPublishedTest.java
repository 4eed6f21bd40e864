package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Scanner;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.cutting.Allowance;
import org.scantling.cutting.CuttingPlan;
import org.scantling.cutting.CuttingProblem;
import org.scantling.cutting.CuttingStock;
import org.scantling.cutting.PieceDemand;
import org.scantling.cutting.Stick;

/** Published cutting-stock and bin-packing instances: the optimum, proven, on every one. */
class CuttingStockPublishedTest {
  private static final Path BIN_PACKING =
      Path.of("src/test/resources/verification/cutting-u120.txt");

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/verification/cutting-cases.csv", numLinesToSkip = 1)
  void the_published_optimum_is_found_and_proven(
      String id, String source, String status, int stock, String pieces, int optimum) {
    List<PieceDemand> demands =
        Arrays.stream(pieces.split(";"))
            .map(each -> each.split(":"))
            .map(each -> new PieceDemand(Integer.parseInt(each[0]), Integer.parseInt(each[1])))
            .toList();
    proven(new Instance(id, stock, demands, optimum));
  }

  /** OR-Library, file binpack1: Falkenauer's u120, best known values. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("binPacking")
  void the_best_known_number_of_bins_is_found_and_proven(Instance instance) {
    proven(instance);
  }

  @Test
  void there_are_ten_of_them_with_120_items_each() {
    assertThat(binPacking()).hasSize(10);
    assertThat(binPacking())
        .allMatch(each -> each.demands().stream().mapToInt(PieceDemand::count).sum() == 120);
  }

  record Instance(String id, int stock, List<PieceDemand> demands, int optimum) {
    @Override
    public String toString() {
      return id;
    }
  }

  private static void proven(Instance instance) {
    CuttingPlan plan =
        CuttingStock.solve(
            new CuttingProblem(
                instance.demands(), List.of(new Stick(instance.stock(), 1)), Allowance.none()));
    assertThat(plan.cost()).isEqualTo(instance.optimum());
    assertThat(plan.proven()).isTrue();
  }

  static Stream<Instance> binPacking() {
    List<Instance> instances = new ArrayList<>();
    try (Scanner in = new Scanner(Files.readString(BIN_PACKING))) {
      int count = in.nextInt();
      for (int i = 0; i < count; i++) {
        instances.add(instance(in));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return instances.stream();
  }

  private static Instance instance(Scanner in) {
    String id = in.next();
    int capacity = in.nextInt();
    int items = in.nextInt();
    int best = in.nextInt();
    TreeMap<Integer, Integer> sizes = new TreeMap<>(Comparator.reverseOrder());
    for (int i = 0; i < items; i++) {
      sizes.merge(in.nextInt(), 1, Integer::sum);
    }
    List<PieceDemand> demands = new ArrayList<>();
    sizes.forEach((size, times) -> demands.add(new PieceDemand(size, times)));
    return new Instance(id, capacity, demands, best);
  }
}
