package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.scantling.design.BaseDesign;
import org.scantling.intake.DesignWriter;

class ProposedDesignTest {
  @Test
  void a_structure_that_did_not_change_is_the_base_again() {
    BaseDesign base = Demo.intake("same-place").site().base();
    BaseDesign design = ProposedDesign.of(Demo.proposal("same-place"), base);
    assertThat(design.posts()).isEqualTo(base.posts());
    assertThat(design.headers()).isEqualTo(base.headers());
    assertThat(design.crossbeams()).isEqualTo(base.crossbeams());
    assertThat(design.sidePanels()).isEqualTo(base.sidePanels());
    assertThat(design.proven()).isEqualTo(Optional.empty());
  }

  @Test
  void paired_headers_are_written_by_the_size_of_one_board() {
    BaseDesign design = design("wisteria-court");
    assertThat(design.headers().style()).isEqualTo("paired");
    assertThat(design.headers().size()).isEqualTo("2x10");
    assertThat(DesignWriter.yaml(design)).contains("style: paired", "size: 2x10", "size: 8x8");
  }

  @Test
  void braces_come_with_brackets() {
    assertThat(design(Demo.braced()).braces()).isPresent();
    assertThat(design(Demo.braced()).posts().footing()).isEqualTo("bracket");
  }

  @Test
  void a_site_that_needs_an_engineer_has_no_design() {
    assertThatThrownBy(() -> design("too-much-snow"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("'Court at Storm Saddle' needs an engineer, so there is no design to write");
  }

  private static BaseDesign design(String name) {
    return ProposedDesign.of(Demo.proposal(name), Demo.intake(name).site().base());
  }
}
