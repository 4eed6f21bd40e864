package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Proposal.Result;
import org.scantling.reasons.Reason;
import org.scantling.words.Jargon;
import org.scantling.words.Reader;
import org.scantling.words.Voice;

/** Every finding that the scenarios produce has its sentence, for every reader. */
class EveryFindingTest {
  private record Found(String site, Reason reason, Optional<Decision> decision) {
    String sentence(Voice voice) {
      return decision.map(d -> voice.sentence(reason, d)).orElseGet(() -> voice.sentence(reason));
    }
  }

  @Test
  void every_blank_is_filled_for_every_reader_and_system_of_units() {
    SoftAssertions all = new SoftAssertions();
    for (Found found : found()) {
      for (Voice voice : voices()) {
        all.assertThatCode(() -> found.sentence(voice))
            .as(found.site() + ": " + found.reason().note().id() + " for " + voice.reader())
            .doesNotThrowAnyException();
      }
    }
    all.assertAll();
  }

  @Test
  void no_sentence_has_an_open_blank_a_double_space_or_no_end() {
    SoftAssertions all = new SoftAssertions();
    for (Found found : found()) {
      for (Voice voice : voices()) {
        all.assertThat(found.sentence(voice))
            .as(found.reason().note().id())
            .doesNotContain("{", "}", "[", "]", "  ", "..", " ,", "null")
            .endsWith(".");
      }
    }
    all.assertAll();
  }

  @Test
  void the_client_never_meets_a_formula_a_code_or_a_bare_pressure() {
    SoftAssertions all = new SoftAssertions();
    for (Found found : found()) {
      if (!found.reason().note().id().startsWith("cautions.")) {
        for (UnitSystem units : UnitSystem.values()) {
          all.assertThat(found.sentence(Demo.words().voice(Reader.CLIENT, units)))
              .as(found.site() + ": " + found.reason().note().id())
              .doesNotContainPattern(Jargon.PATTERN);
        }
      }
    }
    all.assertAll();
  }

  @Test
  void the_scenarios_reach_findings_of_every_kind() {
    List<String> kinds =
        found().stream()
            .map(each -> each.reason().finding().getClass().getSimpleName())
            .distinct()
            .toList();
    assertThat(kinds)
        .contains(
            "AtLeast", "AtMost", "PreferNumber", "PreferOption", "Reject", "Caution", "Refuse");
  }

  @Test
  void every_source_is_printed_with_its_doubt() {
    assertThatCode(
            () ->
                found()
                    .forEach(
                        each ->
                            assertThat(
                                    Demo.words()
                                        .voice(Reader.BUILDER, UnitSystem.IMPERIAL)
                                        .source(each.reason().source()))
                                .matches(
                                    text ->
                                        text.endsWith(", from memory")
                                            == each.reason().source().fromMemory())))
        .doesNotThrowAnyException();
  }

  private static List<Voice> voices() {
    List<Voice> voices = new ArrayList<>();
    for (Reader reader : Reader.values()) {
      for (UnitSystem units : UnitSystem.values()) {
        voices.add(Demo.words().voice(reader, units));
      }
    }
    return voices;
  }

  private static List<Found> found() {
    List<Found> all = new ArrayList<>();
    for (Map.Entry<String, Proposal> each : Demo.all().entrySet()) {
      Proposal proposal = each.getValue();
      for (Decision decision : proposal.decisions()) {
        decision
            .reasons()
            .forEach(reason -> all.add(new Found(each.getKey(), reason, Optional.of(decision))));
        decision
            .rejected()
            .forEach(reason -> all.add(new Found(each.getKey(), reason, Optional.of(decision))));
      }
      proposal
          .cautions()
          .forEach(reason -> all.add(new Found(each.getKey(), reason, Optional.empty())));
      if (proposal.result() instanceof Result.NeedsEngineer broken) {
        all.add(new Found(each.getKey(), broken.reason(), Optional.empty()));
      }
    }
    return all;
  }
}
