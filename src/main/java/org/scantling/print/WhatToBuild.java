package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.scantling.design.Bays;
import org.scantling.design.Geometry;
import org.scantling.design.Structure;
import org.scantling.design.Structure.Footings;
import org.scantling.design.Structure.Member;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.words.TimberWords;
import org.scantling.words.Voice;

/** The pieces with their sizes and lengths, the holes, and what holds it together. */
final class WhatToBuild {
  private static final Sayings SAYINGS = Sayings.of("proposal");

  private final Told told;
  private final Proposal proposal;
  private final Voice voice;
  private final Structure structure;

  WhatToBuild(Told told, Structure structure) {
    this.told = told;
    this.proposal = told.proposal();
    this.voice = told.voice();
    this.structure = structure;
  }

  void write(Page page) {
    page.heading(SAYINGS.say("build.heading"));
    page.add(new MemberTable(voice).of(structure));
    page.paragraph(new TimberToBuy(voice, structure, splice()).sentences());
    List<Block.Item> items = new ArrayList<>();
    items.add(item("crossbeams.lead", crossbeams(structure.geometry())));
    blocking().ifPresent(said -> items.add(item("blocks.lead", said)));
    braces().ifPresent(said -> items.add(item("braces.lead", said)));
    items.add(footings(structure.footings()));
    pickets().ifPresent(said -> items.add(item("pickets.lead", said)));
    items.addAll(new JointItems(told, structure, splice().isPresent()).items());
    page.items(items);
  }

  private static Block.Item item(String lead, String said) {
    return new Block.Item(SAYINGS.say(lead), said);
  }

  /** Bays under each piece of a header, where it is cut. */
  private Optional<List<String>> splice() {
    return proposal
        .decision(Question.HEADER_SPLICE)
        .map(each -> List.of(((Outcome.Word) each.proposed()).text().split("\\+")))
        .filter(each -> each.size() > 1);
  }

  private String crossbeams(Geometry geometry) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put(
        "spacing",
        voice.range(inches(geometry.narrowestSpacingIn()), inches(geometry.crossbeamSpacingIn())));
    blanks.put("tail", inches(geometry.crossbeams().overhangIn()));
    if (geometry.crossbeamsOnTail() > 0) {
      blanks.put("past", Integer.toString(geometry.crossbeamsOnTail()));
    }
    if (geometry.crossbeams().doubled()) {
      blanks.put("doubled", "");
    }
    if (geometry.crossbeams().notchIn() > 0) {
      blanks.put("seat", inches(geometry.crossbeams().notchIn()));
    }
    return SAYINGS.say("crossbeams", blanks);
  }

  private Optional<String> blocking() {
    return members("blocking").stream()
        .findFirst()
        .map(each -> SAYINGS.say("blocks", "depth", inches(each.depthIn())));
  }

  /** One across the walk at every post; the others along it. */
  private Optional<String> braces() {
    int across = structure.geometry().postCount();
    int all = members("brace").stream().mapToInt(Member::count).sum();
    return amount(Question.BRACE_LEG)
        .map(
            leg ->
                SAYINGS.say(
                    "braces",
                    "across",
                    Integer.toString(across),
                    "along",
                    Integer.toString(all - across),
                    "leg",
                    inches(leg)));
  }

  private List<Member> members(String role) {
    return structure.members().stream().filter(each -> each.role().equals(role)).toList();
  }

  private Optional<String> pickets() {
    Bays bays = structure.geometry().plan().along();
    return amount(Question.PICKETS)
        .map(Double::intValue)
        .filter(each -> each > 0)
        .map(
            each ->
                SAYINGS.say(
                    "pickets",
                    "each",
                    voice.range(fewest(bays, each), Integer.toString(each)),
                    "all",
                    Integer.toString(2 * (bays.spaces(each + 1) - bays.count()))));
  }

  private static String fewest(Bays bays, int inLongest) {
    return IntStream.range(0, bays.count())
        .map(bay -> bays.spacesIn(bay, inLongest + 1) - 1)
        .min()
        .stream()
        .mapToObj(Integer::toString)
        .findFirst()
        .orElseThrow();
  }

  private Optional<Double> amount(Question question) {
    return proposal
        .decision(question)
        .map(decision -> ((Outcome.Amount) decision.proposed()).measure().amount());
  }

  private Block.Item footings(Footings footings) {
    Map<String, String> blanks =
        new HashMap<>(
            Map.of(
                "count", Integer.toString(footings.count()),
                "depth", inches(footings.depthIn()),
                "width", inches(footings.diameterIn()),
                "fill", voice.option(Question.FOOTING_BACKFILL, footings.backfill())));
    blanks.put(footings.onRock() ? "rock" : "bed", voice.say(TimberWords.of(voice).bed(footings)));
    return switch (footings.kind()) {
      case WayOfBuilding.EMBEDDED -> item("holes.lead", SAYINGS.say("holes", blanks));
      case WayOfBuilding.BRACKET -> item("piers.lead", SAYINGS.say("piers.bracket", blanks));
      default -> item("piers.lead", SAYINGS.say("piers.base", blanks));
    };
  }

  private String inches(double amount) {
    return voice.say(Measure.inches(amount));
  }
}
