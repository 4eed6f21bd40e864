package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheets as pages: each works by itself, whatever is written in the files they are made of. */
class SheetPageTest {
  private static final Pattern TAG = Pattern.compile("<(/?)([a-z0-9]+)([^>]*)>");
  private static final List<String> VOID = List.of("meta", "path", "circle", "rect");
  private static final String HOSTILE =
      "</title><script>alert(1)</script><img src=x onerror=alert(2)>\\\"'&}</style>*/;";

  @TempDir private Path yard;

  private Path written(String site, String... more) {
    Path out = yard.resolve("job");
    List<String> line =
        Stream.concat(Stream.of("propose", site, "--out", out.toString()), Stream.of(more))
            .toList();
    Run.of(line.toArray(String[]::new)).endedWith(ExitStatus.ANSWERED);
    return out;
  }

  @ParameterizedTest
  @ValueSource(strings = {"mower-lane", "stone-terrace", "metric-country", "long-walk"})
  void a_page_asks_for_nothing_from_elsewhere_and_runs_nothing(String scenario) throws IOException {
    Path out = written("scenarios/" + scenario + ".yaml");

    for (String page : List.of("index", "client", "builder", "engineer")) {
      String html = Files.readString(out.resolve(page + ".html"));
      assertThat(html.replace("xmlns=\"http://www.w3.org/2000/svg\"", ""))
          .as(page)
          .doesNotContain("http:", "https:", "<script", "<link", "<img", "src=", "url(", "@import")
          .contains("default-src 'none'");
      wellFormed(page, html);
      assertThat(html.getBytes(StandardCharsets.UTF_8).length - content(html))
          .as("what " + page + " weighs besides what it says")
          .isLessThan(80_000);
    }
  }

  private static int content(String html) {
    return html.length() - html.indexOf("<main>");
  }

  /** Every tag that is opened is closed, in turn. */
  private static void wellFormed(String page, String html) {
    Deque<String> open = new ArrayDeque<>();
    Matcher tag = TAG.matcher(html.replaceAll("(?s)<style>.*?</style>", ""));
    while (tag.find()) {
      String name = tag.group(2);
      if (tag.group(1).equals("/")) {
        assertThat(open.pop()).as(page + " at " + tag.start()).isEqualTo(name);
      } else if (!VOID.contains(name)) {
        open.push(name);
      }
    }
    assertThat(open).as(page).isEmpty();
  }

  @Test
  void what_the_files_say_is_text_and_never_a_part_of_the_page() throws IOException {
    String text = Files.readString(Path.of("scenarios/mower-lane.yaml"));
    Path base = Path.of("scenarios/base/rose-gate.yaml").toAbsolutePath();
    Path site = yard.resolve("hostile.yaml");
    Files.writeString(
        site,
        text.replaceAll("(?m)^title:.*$", Matcher.quoteReplacement("title: \"" + HOSTILE + "\""))
            .replaceAll("(?m)^base:.*$", Matcher.quoteReplacement("base: " + base)));

    Path out = written(site.toString());

    for (String page : List.of("index", "client", "builder", "engineer")) {
      String html = Files.readString(out.resolve(page + ".html"));
      assertThat(html).as(page).doesNotContain("<script", "<img", "alert(2)>", "}</style>*");
      assertThat(html).contains("&lt;script&gt;alert(1)&lt;/script&gt;");
      wellFormed(page, html);
    }
  }

  @Test
  void every_drawing_and_every_id_of_a_page_is_there_once() throws IOException {
    String html = Files.readString(written("scenarios/windy-hill.yaml").resolve("builder.html"));

    List<String> ids =
        Pattern.compile(" id=\"([^\"]+)\"").matcher(html).results().map(id -> id.group(1)).toList();
    assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
  }

  @Test
  void the_page_that_leads_to_all_files_leads_to_files_that_are_there() throws IOException {
    Path out = written("scenarios/same-place.yaml");
    String html = Files.readString(out.resolve("index.html"));

    List<String> links =
        Pattern.compile("href=\"([^\"]+)\"")
            .matcher(html)
            .results()
            .map(link -> link.group(1))
            .toList();
    assertThat(links).hasSizeGreaterThan(15).contains("client.html", "drawings/side.svg");
    assertThat(links).allMatch(link -> Files.isRegularFile(out.resolve(link)));
  }

  @Test
  void one_sheet_alone_is_written_where_one_is_asked_for() throws IOException {
    Path out = written("scenarios/same-place.yaml", "--only", "client");

    try (Stream<Path> files = Files.list(out)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .contains("client.html")
          .doesNotContain("builder.html", "proposal.json", "index.html");
    }
    assertThat(
            Run.of("propose", "scenarios/same-place.yaml", "--only", "client")
                .endedWith(ExitStatus.WRONG_INPUT)
                .err())
        .contains("--only says which sheet goes into the folder");
  }

  @Test
  void the_client_is_told_what_changed_and_what_to_mind_without_a_number_of_the_trade()
      throws IOException {
    String told = PageWords.of(written("scenarios/windy-hill.yaml").resolve("client.html"));

    assertThat(told)
        .contains("What changes and why", "How thick the posts are", "Take care", "Upkeep")
        .doesNotContain(" psi", "in-lb", "D+S");
  }

  @Test
  void the_engineer_finds_every_check_every_line_of_it_and_what_nobody_has_seen()
      throws IOException {
    Path out = written("scenarios/windy-hill.yaml");
    String told = PageWords.of(out.resolve("engineer.html"));
    String proposal = Files.readString(out.resolve("proposal.json"));

    List<String> ids =
        Pattern.compile("\"id\" : \"([a-z]+\\.[a-z-]+)\",\\s+\"role\"")
            .matcher(proposal)
            .results()
            .map(id -> id.group(1))
            .toList();
    assertThat(ids).hasSizeGreaterThan(20).allMatch(told::contains);
    assertThat(told)
        .contains("Address", "Prepared for", "Revision", "license, date, seal")
        .contains("qh = 0.00256 Kz Kzt Kd Ke V^2", "Symbols", "Documents and their editions")
        .contains("NDS for Wood Construction, 2018 edition", "from memory", "Take care")
        .contains("Smaller sizes that were tried", "4x4 would not pass this check");
  }

  @Test
  void the_client_chooses_from_the_ways_to_build_it_where_they_are_asked_for() throws IOException {
    Path out = written("scenarios/mower-lane.yaml", "--only", "client", "--options");
    String html = Files.readString(out.resolve("client.html"));

    assertThat(PageWords.of(out.resolve("client.html")))
        .contains("What you can choose", "What we propose", "The least timber");
    assertThat(html).containsOnlyOnce("<tr class=\"marked\"><th scope=\"row\">What we propose");
    assertThat(
            Run.of("propose", "scenarios/mower-lane.yaml", "--options")
                .endedWith(ExitStatus.WRONG_INPUT)
                .err())
        .contains("--options puts the ways to build it");
  }

  @Test
  void prices_stand_on_the_sheet_of_the_client() throws IOException {
    Path prices = yard.resolve("prices.csv");
    Files.writeString(
        prices, "item,unit,price,currency,note\nlabor-hour,hour,55,USD,\nmarkup,percent,10,,\n");
    Path out = written("scenarios/same-place.yaml", "--prices", prices.toString());

    assertThat(PageWords.of(out.resolve("client.html")))
        .contains("USD", "What it costs")
        .doesNotContain("not priced");
  }
}
