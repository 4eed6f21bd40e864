package org.scantling.print;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.design.Structure;
import org.scantling.design.Structure.Member;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.tables.TimberUse;
import org.scantling.words.TimberWords;
import org.scantling.words.Voice;

/** What the timber is, how the headers are cut of it, and what no yard sells as long as it is. */
final class TimberToBuy {
  private static final Sayings SAYINGS = Sayings.of("proposal");

  private final Voice voice;
  private final Structure structure;
  private final Optional<List<String>> splice;

  /**
   * @param splice bays under each piece of a header, where it is cut
   */
  TimberToBuy(Voice voice, Structure structure, Optional<List<String>> splice) {
    this.voice = voice;
    this.structure = structure;
    this.splice = splice;
  }

  String sentences() {
    List<String> said = new ArrayList<>(List.of(Sentence.capital(ofWhat())));
    if (structure.footings().kind().equals(WayOfBuilding.EMBEDDED)) {
      said.add(SAYINGS.say("timber.in-ground", "depth", inches(structure.footings().depthIn())));
    }
    splice.ifPresent(bays -> said.add(structure.top().stepped() ? stepped() : pieced(bays)));
    structure.members().stream()
        .filter(this::longerThanSold)
        .map(this::tooLong)
        .distinct()
        .forEach(said::add);
    return String.join(" ", said);
  }

  /** One timber throughout, or each with the members that are of it. */
  private String ofWhat() {
    Map<String, List<String>> roles = new LinkedHashMap<>();
    for (Member member : structure.members()) {
      String timber =
          voice.option(Question.SPECIES, member.species())
              + " "
              + voice.option(Question.GRADE, member.grade());
      roles.computeIfAbsent(timber, it -> new ArrayList<>()).add(voice.role(member.role()));
    }
    if (roles.size() == 1) {
      return SAYINGS.say("timber.one", "timber", roles.keySet().iterator().next());
    }
    List<String> parts = new ArrayList<>();
    roles.forEach(
        (timber, of) ->
            parts.add(SAYINGS.say("timber.some", "members", Sentence.list(of), "timber", timber)));
    return SAYINGS.say("timber.several", "timbers", String.join("; ", parts));
  }

  /** Steps are as high as the ground falls along their bays. */
  private String stepped() {
    List<Double> stepsIn = structure.top().stepsIn();
    String least = inches(Collections.min(stepsIn));
    String most = inches(Collections.max(stepsIn));
    return SAYINGS.say(
        structure.geometry().headers().paired() ? "headers.stepped.boards" : "headers.stepped.one",
        "step",
        voice.range(least, most));
  }

  private String pieced(List<String> bays) {
    Member header = header();
    String longest =
        ordered(header)
            ? TimberWords.of(voice).noneLongerAnywhere(header.size())
            : TimberWords.of(voice).noneLonger(header.size(), use(header));
    return SAYINGS.say(
        turned(header, bays) ? "headers.pieced.turned" : "headers.pieced",
        "longest",
        longest,
        "bays",
        Sentence.list(bays));
  }

  private static boolean turned(Member member, List<String> bays) {
    List<String> other = new ArrayList<>(bays);
    Collections.reverse(other);
    return member.plies() > 1 && !other.equals(bays);
  }

  /** A piece that no yard, or not this one, sells is not kept quiet about. */
  private String tooLong(Member member) {
    return SAYINGS.say(
        ordered(member) ? "long.ordered" : "long.joined",
        "longest",
        TimberWords.of(voice).noneLonger(member.size(), use(member)),
        "members",
        voice.role(member.role()));
  }

  /** A piece that others sell, but not this yard. */
  private boolean ordered(Member member) {
    return longerThanSold(member)
        && member.lengthIn() <= TimberWords.of(voice).longestAnywhere(member.size()).amount();
  }

  private boolean longerThanSold(Member member) {
    return member.lengthIn() > TimberWords.of(voice).longest(member.size(), use(member)).amount();
  }

  private TimberUse use(Member member) {
    boolean inTheGround =
        member.role().equals("post") && structure.footings().kind().equals(WayOfBuilding.EMBEDDED);
    return new TimberUse(member.species(), member.grade(), inTheGround);
  }

  private Member header() {
    return structure.members().stream()
        .filter(each -> each.role().equals("header"))
        .findFirst()
        .orElseThrow();
  }

  private String inches(double amount) {
    return voice.say(Measure.inches(amount));
  }
}
