package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The pages as a browser shows them, on a telephone and on a desk. Where no browser is found these
 * tests are skipped and say so; the build of the project installs one.
 */
class SheetBrowserTest {
  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome", "chrome");
  private static final int PATIENCE_S = 60;
  private static final Pattern FOUND =
      Pattern.compile("<pre id=\"found\">(.*?)</pre>", Pattern.DOTALL);

  @TempDir private static Path yard;
  private static Path job;

  @BeforeAll
  static void sheets() {
    if (browser().isEmpty()) {
      abort("skipped: no browser is installed (looked for " + String.join(", ", NAMES) + ")");
    }
    job = yard.resolve("job");
    Run.of("propose", "scenarios/mower-lane.yaml", "--out", job.toString())
        .endedWith(ExitStatus.ANSWERED);
  }

  private static Optional<Path> browser() {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return Stream.of(path.split(File.pathSeparator))
        .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  @ParameterizedTest
  @CsvSource({
    "index, 390", "index, 1280", "client, 390", "client, 1280",
    "builder, 390", "builder, 1280", "engineer, 390", "engineer, 1280"
  })
  void a_page_complains_of_nothing_is_no_wider_than_the_screen_and_no_words_lie_on_others(
      String page, int widePx) throws Exception {
    assertThat(seen(Files.readString(job.resolve(page + ".html")), widePx)).isEmpty();
  }

  @Test
  void what_is_wrong_with_a_page_is_seen() throws Exception {
    String wrong =
        "<!doctype html><html lang=\"en\"><head><title>x</title></head><body>"
            + "<p style=\"width:900px\">wide</p><p style=\"position:absolute;top:5px;left:5px\">one"
            + "</p><p style=\"position:absolute;top:7px;left:7px\">other</p>"
            + "<img src=\"http://127.0.0.1:9/x.png\"><script>console.error('no')</script>"
            + "</body></html>";

    assertThat(seen(wrong, 390).toString())
        .contains("wider than the screen", "'one' lies on 'other'", "CONSOLE");
  }

  /** What the browser complains of, and what the measuring finds, in a frame of that width. */
  private static List<String> seen(String page, int widePx) throws Exception {
    Path measured = Files.createTempFile(yard, "page", ".html");
    String script = Files.readString(Path.of("src/test/resources/sheets/measure.js"));
    Files.writeString(
        measured,
        page.replaceAll("<meta http-equiv=\"Content-Security-Policy\"\\s+content=\"[^\"]*\">", "")
            .replace("</body>", "<script>\n" + script + "\n</script></body>"));
    Path frame = Files.createTempFile(yard, "frame", ".html");
    Files.writeString(
        frame,
        "<!doctype html><title>frame</title><pre id=\"found\"></pre><iframe width=\""
            + widePx
            + "\" height=\"900\" style=\"border:0\" src=\""
            + measured.getFileName()
            + "\"></iframe><script>addEventListener('message',"
            + "e=>{document.getElementById('found').textContent=e.data})</script>");
    return findings(run(frame));
  }

  private static List<String> findings(String told) {
    List<String> findings = new ArrayList<>();
    told.lines().filter(line -> line.contains("CONSOLE")).forEach(findings::add);
    Matcher found = FOUND.matcher(told);
    if (!found.find() || !found.group(1).startsWith("measured")) {
      findings.add("nothing was measured: " + told.substring(0, Math.min(600, told.length())));
      return findings;
    }
    found.group(1).lines().skip(1).forEach(findings::add);
    return findings;
  }

  private static String run(Path page) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                browser().orElseThrow().toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--user-data-dir=" + yard.resolve("profile"),
                "--proxy-server=127.0.0.1:9",
                "--enable-logging=stderr",
                "--window-size=1400,1000",
                "--virtual-time-budget=4000",
                "--dump-dom",
                page.toUri().toString())
            .redirectErrorStream(true)
            .start();
    try (InputStream out = process.getInputStream()) {
      String told = new String(out.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(process.waitFor(PATIENCE_S, TimeUnit.SECONDS)).as("the browser ended").isTrue();
      return told;
    }
  }
}
