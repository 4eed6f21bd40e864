package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.scantling.design.BaseDesign;
import org.scantling.design.Site;

class DesignWriterPropertyTest {
  private static final DesignReader READER = new DesignReader(Example.VOCABULARY);

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void a_written_design_is_read_back_the_same(@ForAll("designs") BaseDesign design) {
    assertThat(read("design.yaml", DesignWriter.yaml(design))).isEqualTo(design);
    assertThat(read("design.json", DesignWriter.json(design))).isEqualTo(design);
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void writing_what_was_read_gives_the_same_text(@ForAll("designs") BaseDesign design) {
    String yaml = DesignWriter.yaml(design);
    assertThat(DesignWriter.yaml(read("design.yaml", yaml))).isEqualTo(yaml);
  }

  private static BaseDesign read(String name, String text) {
    return READER.read(new SourceText(name, 1, text, Path.of(""))).design();
  }

  @Provide
  Arbitrary<BaseDesign> designs() {
    return Combinators.combine(
            titles(),
            proven().optional(),
            posts(),
            Combinators.combine(words("on-top", "paired"), sizes(), inches(0, 120), inches(0, 12))
                .as(BaseDesign.Headers::new),
            crossbeams(),
            Combinators.combine(sizes(), inches(2, 180), Arbitraries.integers().between(0, 100))
                .as(BaseDesign.SidePanels::new)
                .optional(),
            Combinators.combine(sizes(), inches(4, 96)).as(BaseDesign.Braces::new).optional())
        .as(BaseDesign::new);
  }

  /** Titles that YAML would take for something else, among ordinary ones. */
  private Arbitrary<String> titles() {
    Arbitrary<String> ordinary =
        Arbitraries.strings()
            .withCharRange(' ', '~')
            .withChars("äéü′°½")
            .ofMinLength(1)
            .ofMaxLength(90);
    Arbitrary<String> awkward =
        words(
            "true", "no", "null", "~", "2011", "1e3", "0x10", "- a", "a: b", "# x", "&a", "*a",
            "!t", "%x", "@x", "`x", "'", "\"", "{", "[x]", "---", "...", ".inf", ".nan", "<<", "=",
            "6:30", "?", "a #b", "a:", "0o17", "1_000", "+1", "-", "|", ">", "yes", "Off");
    return Arbitraries.oneOf(ordinary, awkward)
        .map(String::strip)
        .filter(title -> !title.isBlank());
  }

  private Arbitrary<BaseDesign.Proven> proven() {
    Arbitrary<OptionalDouble> zone =
        Arbitraries.integers().between(2, 26).optional().map(half -> halves(half));
    Arbitrary<Site.Climate> climate =
        Combinators.combine(
                maybe(0, 120),
                maybe(0, 300),
                maybe(50, 250),
                words("B", "C", "D").optional(),
                zone,
                maybe(0, 10_000),
                maybe(-20, 90))
            .as(Site.Climate::new);
    return Combinators.combine(
            Arbitraries.integers().between(1800, 2200),
            climate,
            words("sand", "clay").optional(),
            words("grape", "none").optional(),
            inches(0, 50),
            events().list().ofMaxSize(3))
        .as(BaseDesign.Proven::new);
  }

  private Arbitrary<BaseDesign.Event> events() {
    return Combinators.combine(
            words("2012", "2012-10", "2012-10-29"),
            words("storm", "snow", "inspection", "repair"),
            titles(),
            titles().optional())
        .as(BaseDesign.Event::new);
  }

  private Arbitrary<BaseDesign.Posts> posts() {
    return Combinators.combine(
            Combinators.combine(sizes(), words("embedded", "concrete", "bracket"))
                .as((size, footing) -> new String[] {size, footing}),
            inches(20, 300),
            inches(12, 300),
            Arbitraries.integers().between(1, 400),
            inches(36, 240),
            inches(0, 180),
            words("gravel", "concrete", "tamped-soil").optional(),
            maybe(4, 72))
        .as(
            (words, row, bay, bays, height, depth, backfill, hole) ->
                new BaseDesign.Posts(
                    words[0], row, bay, bays, height, depth, words[1], backfill, hole));
  }

  private Arbitrary<BaseDesign.Crossbeams> crossbeams() {
    Arbitrary<Optional<BaseDesign.EndCut>> cut =
        Combinators.combine(words("slant", "plumb", "curve"), inches(0, 16), inches(0, 48))
            .as(BaseDesign.EndCut::new)
            .optional();
    return Combinators.combine(
            sizes(),
            Arbitraries.integers().between(2, 2000),
            inches(0, 120),
            inches(0, 12),
            cut,
            words("single", "doubled"))
        .as(BaseDesign.Crossbeams::new);
  }

  private static OptionalDouble halves(Optional<Integer> half) {
    return half.isPresent() ? OptionalDouble.of(half.get() / 2.0) : OptionalDouble.empty();
  }

  private static Arbitrary<String> sizes() {
    return words("2x4", "2x6", "4x4", "6x6");
  }

  private static Arbitrary<String> words(String... words) {
    return Arbitraries.of(words);
  }

  private static Arbitrary<Double> inches(int low, int high) {
    return Arbitraries.doubles().between(low, high).ofScale(6);
  }

  private static Arbitrary<OptionalDouble> maybe(int low, int high) {
    return inches(low, high)
        .optional()
        .map(x -> x.isPresent() ? OptionalDouble.of(x.get()) : OptionalDouble.empty());
  }
}
