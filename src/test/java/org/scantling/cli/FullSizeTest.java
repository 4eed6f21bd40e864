package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The tail of the crossbeams on paper is as large as on the timber: read back from the strokes of
 * the file, 72 points to the inch (ISO 32000-1, 8.3.2.3).
 */
class FullSizeTest {
  private static final double PT_PER_IN = 72;
  private static final double SIXTY_FOURTH_IN = 1 / 64.0;
  private static final String SITES = "src/test/resources/rulecases/sites/";

  @TempDir private Path yard;

  /** A stroke through points of a page, from its left lower corner. */
  private record Stroke(List<double[]> points) {
    double inches(int from, int to, int axis) {
      return (points.get(to)[axis] - points.get(from)[axis]) / PT_PER_IN;
    }
  }

  private record FullPage(double wideIn, List<Stroke> strokes, List<double[]> boxes) {}

  @ParameterizedTest
  @CsvSource({
    "steep-ramp, 1, 8.5, 4",
    "metric-brackets, 1, 8.27, 3.937",
    "deep-crossbeams, 2, 8.5, 4",
  })
  void the_drawn_profile_is_that_of_the_piece(String site, int count, double wideIn, double checkIn)
      throws IOException {
    Path out = yard.resolve(site);
    Run.of("propose", SITES + site + ".yaml", "--out", out.toString())
        .endedWith(ExitStatus.ANSWERED);
    List<double[]> tail = tail(out.resolve("cut-list.json"));
    List<FullPage> pages = pages(out.resolve("builder.pdf"));

    assertThat(tail).hasSizeGreaterThan(2);
    assertThat(pages).hasSize(count);
    for (FullPage page : pages) {
      assertThat(page.wideIn()).isCloseTo(wideIn, within(0.005));
      assertThat(page.strokes())
          .as("a line of the length that is to be measured")
          .anyMatch(
              each ->
                  each.points().size() == 2
                      && Math.abs(each.inches(0, 1, 0) - checkIn) < 0.001
                      && each.inches(0, 1, 1) == 0);
      Stroke profile = profile(page);
      int between = (profile.points().size() - 4) / (tail.size() - 2);
      assertThat(profile.points()).hasSize(between * (tail.size() - 2) + 4);
      for (int i = 0; i < tail.size(); i++) {
        // From the upper corner of the tip: back from it to the right, down from it downwards.
        int drawn = i < 2 ? i + 1 : 2 + between * (i - 1);
        assertThat(profile.inches(1, drawn, 0)).isCloseTo(tail.get(i)[0], within(SIXTY_FOURTH_IN));
        assertThat(-profile.inches(1, drawn, 1)).isCloseTo(tail.get(i)[1], within(SIXTY_FOURTH_IN));
      }
    }
    whole(pages);
  }

  /** The longest of the strokes: it is drawn from point to point of the list, fair between them. */
  private static Stroke profile(FullPage page) {
    return page.strokes().stream()
        .max(Comparator.comparingInt(each -> each.points().size()))
        .orElseThrow();
  }

  /** Every corner lies in the part that one of the pages shows. */
  private static void whole(List<FullPage> pages) {
    int corners = profile(pages.get(0)).points().size() - 2;
    for (int i = 1; i <= corners; i++) {
      int corner = i;
      assertThat(pages)
          .anyMatch(
              page -> {
                double[] at = profile(page).points().get(corner);
                return page.boxes().stream()
                    .anyMatch(
                        box ->
                            at[0] >= box[0]
                                && at[0] <= box[0] + box[2]
                                && at[1] >= box[1]
                                && at[1] <= box[1] + box[3]);
              });
    }
  }

  @Test
  void a_square_end_needs_no_template() throws IOException {
    Path out = yard.resolve("square");
    Run.of("propose", "scenarios/mower-lane.yaml", "--out", out.toString())
        .endedWith(ExitStatus.ANSWERED);

    assertThat(pages(out.resolve("builder.pdf"))).isEmpty();
  }

  /** Back from the tip and down from the top edge, in inches, as the list has it. */
  private static List<double[]> tail(Path cutList) {
    JsonNode lists = JsonMapper.shared().readTree(cutList);
    List<double[]> tail = new ArrayList<>();
    for (JsonNode corner : lists.findValue("outline")) {
      tail.add(new double[] {corner.get("backIn").asDouble(), corner.get("downIn").asDouble()});
    }
    return tail;
  }

  private static List<FullPage> pages(Path file) throws IOException {
    List<FullPage> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      for (int i = 1; i <= document.getNumberOfPages(); i++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(i);
        stripper.setEndPage(i);
        if (stripper.getText(document).contains("at 100 percent")) {
          pages.add(page(document.getPage(i - 1)));
        }
      }
    }
    return pages;
  }

  private static FullPage page(PDPage page) throws IOException {
    FullPage read =
        new FullPage(
            page.getMediaBox().getWidth() / PT_PER_IN, new ArrayList<>(), new ArrayList<>());
    List<Double> numbers = new ArrayList<>();
    for (Object token : new PDFStreamParser(page).parse()) {
      if (token instanceof COSNumber number) {
        numbers.add((double) number.floatValue());
      } else if (token instanceof Operator operator) {
        int last = numbers.size();
        switch (operator.getName()) {
          case "m" -> read.strokes().add(new Stroke(new ArrayList<>()));
          case "re" ->
              read.boxes()
                  .add(
                      numbers.subList(last - 4, last).stream().mapToDouble(each -> each).toArray());
          default -> {}
        }
        if (operator.getName().equals("m") || operator.getName().equals("l")) {
          read.strokes()
              .get(read.strokes().size() - 1)
              .points()
              .add(new double[] {numbers.get(last - 2), numbers.get(last - 1)});
        }
        numbers.clear();
      } else if (token instanceof COSBase) {
        numbers.clear();
      }
    }
    return read;
  }
}
