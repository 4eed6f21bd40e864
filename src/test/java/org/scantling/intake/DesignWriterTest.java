package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.design.BaseDesign;

class DesignWriterTest {
  private static final DesignReader READER = new DesignReader(Example.VOCABULARY);

  @Test
  void a_design_is_written_as_a_person_would_write_it() {
    BaseDesign design = READER.read(Example.good("base/gate-arbour.yaml")).design();
    assertThat(DesignWriter.yaml(design))
        .isEqualTo(
            """
            title: Gate arbour
            proven:
              built: 2011
              climate:
                frost-depth: 40 in
                ground-snow: 25 psf
                wind-speed: 110 mph
                exposure: B
              vine: honeysuckle
            posts:
              size: 4x4
              row-spacing: 74 in
              bay: 46 in
              bays: 1
              height: 90 in
              embedment: 30 in
              footing: embedded
            headers:
              style: on-top
              size: 4x4
              overhang: 13 in
              notch: 0.5 in
            crossbeams:
              size: 2x4
              count: 6
              overhang: 12 in
              notch: 0.5 in
              end-cut:
                kind: curve
                drop: 2 in
                run: 3 in
            side-panels:
              rail: 4x4
              rail-height: 24 in
              pickets: 3
            braces: none
            """);
  }

  @Test
  void the_fall_of_the_ground_where_it_stands_is_read_and_written() {
    String level = DesignWriter.yaml(READER.read(Example.good("base/gate-arbour.yaml")).design());
    String sloped = level.replace("  vine: honeysuckle\n", "  vine: honeysuckle\n  slope: 2.5 %\n");
    BaseDesign design = READER.read(new SourceText("gate.yaml", 1, sloped, Path.of(""))).design();
    assertThat(design.proven().orElseThrow().slopePercent()).isEqualTo(2.5);
    assertThat(DesignWriter.yaml(design)).isEqualTo(sloped.replace("2.5 %", "\"2.5 %\""));
  }

  @Test
  void what_is_whole_millimetres_is_no_long_decimal_of_an_inch() {
    // 1200 mm is 47.244094... in; 1.9 kPa is 39.68... psf.
    String text =
        DesignWriter.yaml(READER.read(Example.good("base/gate-arbour.yaml")).design())
            .replace("bay: 46 in", "bay: 1200 mm")
            .replace("ground-snow: 25 psf", "ground-snow: 1.9 kPa");
    BaseDesign design = READER.read(new SourceText("bower.yaml", 1, text, Path.of(""))).design();
    assertThat(DesignWriter.yaml(design))
        .contains("bay: 1200 mm\n", "ground-snow: 1.9 kPa\n", "row-spacing: 74 in\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"base/gate-arbour.yaml", "base/metric-bower.yaml"})
  void metric_and_inch_designs_come_back_without_loss(String name) {
    BaseDesign design = READER.read(Example.good(name)).design();
    SourceText json = new SourceText("again.json", 1, DesignWriter.json(design), Path.of(""));
    SourceText yaml = new SourceText("again.yaml", 1, DesignWriter.yaml(design), Path.of(""));
    assertThat(READER.read(json).design()).isEqualTo(design);
    assertThat(READER.read(yaml).design()).isEqualTo(design);
  }
}
