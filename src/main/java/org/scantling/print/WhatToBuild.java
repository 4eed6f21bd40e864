package org.scantling.print;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.design.Geometry;
import org.scantling.design.Structure;
import org.scantling.design.Structure.Bolts;
import org.scantling.design.Structure.Footings;
import org.scantling.design.Structure.Member;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.Length;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.tables.TimberUse;
import org.scantling.words.Voice;

/** The pieces with their sizes and lengths, the holes, and what holds it together. */
final class WhatToBuild {
  private static final Map<Question, String> JOINTS = new LinkedHashMap<>();

  static {
    JOINTS.put(Question.CROSSBEAM_JOINT, "crossbeam");
    JOINTS.put(Question.HEADER_JOINT, "header");
    JOINTS.put(Question.RAIL_JOINT, "rail");
    JOINTS.put(Question.BRACE_JOINT, "brace");
    JOINTS.put(Question.HEADER_STEP, "header");
    JOINTS.put(Question.BASE_JOINT, "post");
  }

  private final Proposal proposal;
  private final Voice voice;
  private final Structure structure;

  WhatToBuild(Told told, Structure structure) {
    this.proposal = told.proposal();
    this.voice = told.voice();
    this.structure = structure;
  }

  void write(Page page) {
    page.heading("What to build").add(new Block.Grid(members())).paragraph(timber());
    List<Block.Item> items = new ArrayList<>();
    items.add(new Block.Item("Crossbeams", crossbeams(structure.geometry())));
    blocking().ifPresent(items::add);
    braces().ifPresent(items::add);
    items.add(footings(structure.footings()));
    pickets().ifPresent(items::add);
    joints(items);
    page.items(items);
  }

  private List<List<String>> members() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "pieces", "size", "length of each", "together"));
    Map<List<String>, List<Member>> alike = new LinkedHashMap<>();
    for (Member member : structure.members()) {
      List<String> told = List.of(member.role(), member.size(), inches(member.lengthIn()));
      alike.computeIfAbsent(told, it -> new ArrayList<>()).add(member);
    }
    alike.values().forEach(each -> rows.add(row(each)));
    return rows;
  }

  /** Pieces that read alike, whatever is cut into them. */
  private List<String> row(List<Member> alike) {
    Member first = alike.get(0);
    int count = alike.stream().mapToInt(Member::count).sum();
    String length = inches(first.lengthIn());
    // Of the length as told: the reader's own sum must come to the same.
    String together = inches(count * Length.parse(length));
    return List.of(
        Sentence.capital(voice.role(first.role())),
        Integer.toString(count),
        first.size(),
        length,
        together);
  }

  private String timber() {
    Footings footings = structure.footings();
    return Sentence.capital(ofWhat())
        + "; lengths are as built."
        + (piers() ? "" : " " + inches(footings.depthIn()) + " of each post is in the ground.")
        + headersCut()
        + tooLong();
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
      return roles.keySet().iterator().next() + " throughout";
    }
    List<String> parts = new ArrayList<>();
    roles.forEach((timber, of) -> parts.add(Sentence.list(of) + " of " + timber));
    return String.join("; ", parts);
  }

  private String headersCut() {
    if (structure.top().stepped() && splice().isPresent()) {
      return " Each bay has headers of its own, "
          + inches(structure.top().stepIn())
          + " lower than those of the bay before: "
          + (structure.geometry().headers().paired()
              ? "at a step the boards end at the middle of the post, each bolted to its own half."
              : "at a step the upper header lies on the post, and the lower one hangs on its side.");
    }
    return splice().map(this::pieced).orElse("");
  }

  private String pieced(List<String> bays) {
    String size = header().size();
    return " "
        + (ordered(header())
            ? voice.noneLongerAnywhere(size)
            : voice.noneLonger(size, use(header())))
        + ": each header is in pieces over "
        + Sentence.list(bays)
        + " bays that meet over posts"
        + (turned(header(), bays)
            ? ", its second board turned end for end so that no post carries two joints."
            : ".");
  }

  /** A piece that others sell, but not this yard. */
  private boolean ordered(Member member) {
    return longerThanSold(member)
        && member.lengthIn() <= voice.longestAnywhere(member.size()).amount();
  }

  private boolean longerThanSold(Member member) {
    return member.lengthIn() > voice.longest(member.size(), use(member)).amount();
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

  /** A piece that no yard, or not this one, sells is not kept quiet about. */
  private String tooLong() {
    return structure.members().stream()
        .filter(this::longerThanSold)
        .map(
            each ->
                " "
                    + voice.noneLonger(each.size(), use(each))
                    + (ordered(each)
                        ? ": the " + voice.role(each.role()) + " are a special order."
                        : ": where the "
                            + voice.role(each.role())
                            + " are joined is not worked out here; ask before you cut."))
        .distinct()
        .reduce("", String::concat);
  }

  /** Bays under each piece of a header, where it is cut. */
  private Optional<List<String>> splice() {
    return proposal
        .decision(Question.HEADER_SPLICE)
        .map(each -> List.of(((Outcome.Word) each.proposed()).text().split("\\+")))
        .filter(each -> each.size() > 1);
  }

  private static boolean turned(Member member, List<String> bays) {
    List<String> other = new ArrayList<>(bays);
    Collections.reverse(other);
    return member.plies() > 1 && !other.equals(bays);
  }

  private String crossbeams(Geometry geometry) {
    int past = geometry.crossbeamsOnTail();
    return inches(geometry.crossbeamSpacingIn())
        + " apart, center to center"
        + (past == 0 ? "" : ", " + past + " of them past each end post")
        + (geometry.crossbeams().doubled()
            ? "; at each pair of posts two side by side, fastened to each other"
            : "")
        + "; tails "
        + inches(geometry.crossbeams().overhangIn())
        + " past the headers"
        + (geometry.crossbeams().notchIn() > 0
            ? "; seats cut " + inches(geometry.crossbeams().notchIn()) + " deep."
            : ".");
  }

  private Optional<Block.Item> blocking() {
    return structure.members().stream()
        .filter(each -> each.role().equals("blocking"))
        .findFirst()
        .map(
            each ->
                new Block.Item(
                    "Blocks",
                    "one between every two crossbeams over each header, "
                        + inches(each.depthIn())
                        + " deep, tops flush with the crossbeams."));
  }

  /** One across the walk at every post; the others along it. */
  private Optional<Block.Item> braces() {
    int across = structure.geometry().postCount();
    int along = count("brace") - across;
    return amount(Question.BRACE_LEG)
        .map(
            leg ->
                new Block.Item(
                    "Braces",
                    across
                        + " across the walk and "
                        + along
                        + " along it; each reaches "
                        + inches(leg)
                        + " or more down its post and as far along the timber above."));
  }

  private Optional<Double> amount(Question question) {
    return proposal
        .decision(question)
        .map(decision -> ((Outcome.Amount) decision.proposed()).measure().amount());
  }

  private Optional<Block.Item> pickets() {
    return amount(Question.PICKETS)
        .map(Double::intValue)
        .filter(each -> each > 0)
        .map(
            each ->
                new Block.Item(
                    "Pickets",
                    each
                        + " to a panel, "
                        + each * 2 * structure.geometry().plan().bays()
                        + " in all."));
  }

  private Block.Item footings(Footings footings) {
    String hole =
        inches(footings.depthIn()) + " deep and " + inches(footings.diameterIn()) + " wide";
    String fill = voice.option(Question.FOOTING_BACKFILL, footings.backfill());
    if (piers()) {
      String part =
          footings.kind().equals(WayOfBuilding.BRACKET) ? "a post bracket" : "a post base";
      return new Block.Item(
          "Piers", footings.count() + ", " + hole + ", of " + fill + ", " + part + " on each.");
    }
    String bed = voice.say(voice.bed(footings.backfill().equals(WayOfBuilding.CONCRETE)));
    return new Block.Item(
        "Holes",
        footings.count()
            + ", "
            + hole
            + ", "
            + fill
            + " around the posts; dig "
            + bed
            + " deeper for the bed under them.");
  }

  private boolean piers() {
    return !structure.footings().kind().equals(WayOfBuilding.EMBEDDED);
  }

  private void joints(List<Block.Item> items) {
    JOINTS.forEach(
        (question, role) ->
            proposal
                .decision(question)
                .map(decision -> ((Outcome.Word) decision.proposed()).text())
                .map(way -> fastened(question, way, role))
                .ifPresent(items::add));
  }

  /** Every piece is held at two places; a header, of one timber or two boards, at every post. */
  private Block.Item fastened(Question question, String way, String role) {
    boolean header = question == Question.HEADER_JOINT;
    int joints =
        switch (question) {
          case HEADER_JOINT -> headerJoints();
          case CROSSBEAM_JOINT -> 2 * structure.geometry().crossbeamCount();
          case BASE_JOINT -> structure.geometry().postCount();
          case HEADER_STEP -> 2 * (structure.geometry().plan().bays() - 1);
          default -> 2 * count(role);
        };
    return new Block.Item(
        Sentence.capital(voice.label(question)),
        voice.fastened(way, joints) + (header ? meetings() + bolts() : "") + ".");
  }

  /** At a step the boards of both bays are bolted to the post. */
  private int headerJoints() {
    Geometry geometry = structure.geometry();
    return structure.top().stepped() && geometry.headers().paired()
        ? 2 * 2 * geometry.plan().bays()
        : geometry.postCount();
  }

  /** Each piece that ends over a post has fasteners of its own there. */
  private String meetings() {
    return splice().isPresent() && !structure.top().stepped()
        ? ", and more where pieces meet (see the buying list)"
        : "";
  }

  private String bolts() {
    return structure.bolts().map(this::bolts).orElse("");
  }

  private String bolts(Bolts bolts) {
    return "; the upper "
        + inches(bolts.fromTopIn())
        + (structure.top().stepped()
            ? " below the top of the boards, the lower "
            : " below the top of the post, the lower ")
        + inches(bolts.apartIn())
        + " below the upper"
        + (bolts.rowsApartIn() > 0
            ? ", the two rows " + inches(bolts.rowsApartIn()) + " apart"
            : "");
  }

  private int count(String role) {
    return structure.members().stream()
        .filter(each -> each.role().equals(role))
        .mapToInt(Member::count)
        .sum();
  }

  private String inches(double amount) {
    return voice.say(Measure.inches(amount));
  }
}
