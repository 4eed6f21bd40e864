package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** The sheets on paper: what is printed can be read by eye, by machine and by ear. */
class SheetPaperTest {
  private static final List<String> SHEETS = List.of("client", "builder", "engineer");
  private static final String HOSTILE =
      "<b>&amp; \\\"'(\\\\) \u4e16\u754c \ud83c\udf39 \u00bd \u2264";

  @TempDir private Path yard;

  @BeforeAll
  static void foundry() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private Path written(String site) {
    Path out = yard.resolve("job");
    Run.of("propose", site, "--out", out.toString()).endedWith(ExitStatus.ANSWERED);
    return out;
  }

  @ParameterizedTest
  @ValueSource(strings = {"windy-hill", "metric-country"})
  void a_validator_of_pdf_ua_finds_no_failure(String scenario) throws Exception {
    Path out = written("scenarios/" + scenario + ".yaml");

    for (String sheet : SHEETS) {
      assertThat(failures(out.resolve(sheet + ".pdf"))).as(sheet).isEmpty();
    }
  }

  private static List<String> failures(Path file) throws Exception {
    try (InputStream in = Files.newInputStream(file);
        PDFAParser parser = Foundries.defaultInstance().createParser(in, PDFAFlavour.PDFUA_1)) {
      PDFAValidator validator =
          Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false);
      ValidationResult result = validator.validate(parser);
      List<String> failures =
          result.getTestAssertions().stream()
              .filter(each -> each.getStatus() == TestAssertion.Status.FAILED)
              .map(each -> each.getRuleId().getClause() + ": " + each.getMessage())
              .distinct()
              .collect(Collectors.toCollection(ArrayList::new));
      if (!result.isCompliant() && failures.isEmpty()) {
        failures.add("not compliant");
      }
      return failures;
    }
  }

  @Test
  void the_validator_finds_what_is_not_tagged() throws Exception {
    Path file = yard.resolve("blank.pdf");
    try (PDDocument document = new PDDocument()) {
      document.addPage(new PDPage());
      document.save(file.toFile());
    }

    assertThat(failures(file)).isNotEmpty();
  }

  /** Every figure of a drawing of the page is on paper, too. */
  @Test
  void every_dimension_of_the_drawings_and_every_length_of_the_lists_can_be_read_back()
      throws IOException {
    Path out = written("scenarios/windy-hill.yaml");
    String paper = text(out.resolve("builder.pdf"));

    Matcher figures =
        Pattern.compile(
                "<g class=\"measure\"[^>]*>.*?<text class=\"figure\"[^>]*>([^<]*)<", Pattern.DOTALL)
            .matcher(Files.readString(out.resolve("drawings/set-out.svg")));
    TreeSet<String> told = new TreeSet<>();
    while (figures.find()) {
      told.add(plain(figures.group(1)));
    }
    assertThat(told).hasSizeGreaterThan(5).allMatch(paper::contains);
    List<String> lengths =
        Files.readAllLines(out.resolve("cut-list.csv")).stream()
            .flatMap(line -> Pattern.compile("\\d+'-\\d+(?: \\d+/\\d+)?").matcher(line).results())
            .map(found -> found.group() + "\"")
            .toList();
    assertThat(lengths).isNotEmpty();
    assertThat(lengths).allMatch(paper::contains);
  }

  private static String plain(String text) {
    return text.replace("&#39;", "'").replace("&quot;", "\"").replace("\"\"", "\"").strip();
  }

  private static String text(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return PageWords.plain(new PDFTextStripper().getText(document));
    }
  }

  @Test
  void pages_are_numbered_named_and_set_in_fonts_that_are_within() throws IOException {
    Path out = written("scenarios/same-place.yaml");

    for (String sheet : SHEETS) {
      try (PDDocument document = Loader.loadPDF(out.resolve(sheet + ".pdf").toFile())) {
        int pages = document.getNumberOfPages();
        for (int i = 0; i < pages; i++) {
          PDPage page = document.getPage(i);
          PDFTextStripper stripper = new PDFTextStripper();
          stripper.setStartPage(i + 1);
          stripper.setEndPage(i + 1);
          assertThat(stripper.getText(document)).contains((i + 1) + " / " + pages, "of 3");
          for (COSName name : page.getResources().getFontNames()) {
            assertThat(page.getResources().getFont(name).isEmbedded()).as(name.getName()).isTrue();
          }
        }
        assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
      }
    }
  }

  @Test
  void the_same_job_gives_the_same_file_to_the_byte() throws IOException {
    byte[] first = Files.readAllBytes(written("scenarios/same-place.yaml").resolve("client.pdf"));
    byte[] second = Files.readAllBytes(written("scenarios/same-place.yaml").resolve("client.pdf"));

    assertThat(second).isEqualTo(first);
  }

  @Test
  void a_title_with_signs_that_no_font_has_is_printed_with_a_mark_in_their_place()
      throws Exception {
    String text = Files.readString(Path.of("scenarios/same-place.yaml"));
    Path base = Path.of("scenarios/base/rose-gate.yaml").toAbsolutePath();
    Path site = yard.resolve("hostile.yaml");
    Files.writeString(
        site,
        text.replaceAll("(?m)^title:.*$", Matcher.quoteReplacement("title: \"" + HOSTILE + "\""))
            .replaceAll("(?m)^base:.*$", Matcher.quoteReplacement("base: " + base)));

    Path client = written(site.toString()).resolve("client.pdf");

    assertThat(text(client)).contains("<b>&amp; \"'(\\) \ufffd\ufffd \ufffd \u00bd \u2264");
    assertThat(failures(client)).isEmpty();
  }
}
