package org.scantling.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.design.Bays;
import org.scantling.design.Geometry;
import org.scantling.design.Structure;
import org.scantling.drawing.View;
import org.scantling.print.Block;
import org.scantling.print.Caveats;
import org.scantling.print.ClientChanges;
import org.scantling.print.OptionsText;
import org.scantling.print.Page;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.reasons.WholeOptions;
import org.scantling.sayings.Sayings;
import org.scantling.shop.EstimateFor;
import org.scantling.shop.EstimateWords;
import org.scantling.shop.ListKind;
import org.scantling.shop.ListPages;
import org.scantling.words.AnswerWords;
import org.scantling.words.Reader;
import org.scantling.words.Voice;

/** What it will look like, what changes and why, what it costs, how it is looked after. */
final class ClientSheet {
  private static final Sayings SAYINGS = Sayings.of("sheets");

  /** The timbers that are drawn beside those of the base. */
  private static final Map<Question, String> DRAWN =
      Map.of(
          Question.POST_SIZE, "post",
          Question.HEADER_SIZE, "header",
          Question.CROSSBEAM_SIZE, "crossbeam");

  private final SheetSource source;
  private final SheetParts parts = new SheetParts();

  ClientSheet(SheetSource source) {
    this.source = source;
  }

  List<Part> parts() {
    parts.add(new Part.Prose(Part.Manner.ANSWER, answer()));
    parts.prose(look());
    parts.add(new Part.Facts(facts()));
    parts.add(source.figure(View.THEN_AND_NOW));
    changes();
    parts.heading(SAYINGS.say("client.end")).add(source.figure(View.END));
    price();
    parts.page(source.nearMisses(Reader.CLIENT), 0);
    source.ways().filter(each -> each.shown().size() > 1).ifPresent(this::choices);
    parts.add(new Part.Heading(2, ListPages.heading(ListKind.UPKEEP)));
    parts.page(ListPages.body(source.lists(), ListKind.UPKEEP, source.how().units()));
    Page caveats = new Page();
    Caveats.write(caveats, source.proposal(), source.words(), source.how(), Reader.CLIENT);
    parts.caveats(caveats);
    return parts.parts();
  }

  private String answer() {
    Geometry geometry = source.structure().geometry();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("design", source.proposal().baseTitle());
    blanks.put("length", inches(geometry.lengthIn()));
    blanks.put("posts", Integer.toString(geometry.postCount()));
    blanks.put("width", inches(geometry.clearWidthIn()));
    blanks.put("headroom", inches(source.structure().top().headroomIn()));
    return SAYINGS.say("client.answer", blanks);
  }

  /** What somebody would see who cannot see the drawings. */
  private String look() {
    Structure structure = source.structure();
    Bays bays = structure.geometry().plan().along();
    Voice voice = source.voice(Reader.CLIENT);
    Map<String, String> blanks = new HashMap<>();
    blanks.put("row", Integer.toString(structure.geometry().postCount() / 2));
    blanks.put("bay", inches(bays.longestIn()));
    blanks.put(
        "headers",
        AnswerWords.of(voice).member(Question.HEADER_STYLE, answer(Question.HEADER_STYLE)));
    blanks.put("crossbeams", Integer.toString(count(structure, Question.CROSSBEAM_SIZE)));
    blanks.put(
        "spacing", voice.say(Question.CROSSBEAM_SPACING, answer(Question.CROSSBEAM_SPACING)));
    blanks.put(
        "tails", voice.say(Question.CROSSBEAM_OVERHANG, answer(Question.CROSSBEAM_OVERHANG)));
    if (!bays.even()) {
      blanks.put("least", inches(bays.shortestIn()));
    }
    if (count(structure, Question.RAIL_SIZE) > 0) {
      blanks.put("sides", "");
    }
    return SAYINGS.say("client.look", blanks);
  }

  private Outcome answer(Question question) {
    return source.proposal().decision(question).orElseThrow().proposed();
  }

  private static int count(Structure structure, Question size) {
    return structure.members().stream()
        .filter(each -> each.role().equals(size.subject()))
        .mapToInt(Structure.Member::count)
        .sum();
  }

  private List<Block.Item> facts() {
    Geometry geometry = source.structure().geometry();
    List<Block.Item> facts = new ArrayList<>();
    fact(facts, "length", inches(geometry.lengthIn()));
    fact(facts, "width", inches(geometry.clearWidthIn()));
    fact(facts, "headroom", inches(source.structure().top().headroomIn()));
    fact(
        facts,
        "price",
        source.estimate().map(EstimateWords::total).orElseGet(() -> SAYINGS.say("unpriced")));
    fact(facts, "hours", EstimateWords.hours(source.lists().work()));
    return facts;
  }

  private static void fact(List<Block.Item> facts, String name, String value) {
    facts.add(new Block.Item(SAYINGS.say("client.fact." + name), value));
  }

  private void changes() {
    ClientChanges changes =
        new ClientChanges(source.proposal(), source.words(), source.how().units());
    List<ClientChanges.Change> chief = changes.chief();
    parts.heading(SAYINGS.say("client.changes"));
    if (chief.isEmpty()) {
      parts.prose(SAYINGS.say("client.no-changes", "design", source.proposal().baseTitle()));
    }
    for (ClientChanges.Change each : chief) {
      parts.add(
          new Part.Change(each.label(), picture(each), List.of(each.answer(), each.because())));
    }
    if (!changes.others().isEmpty()) {
      parts.under(SAYINGS.say("client.others"));
      parts.add(new Part.Bullets(changes.others(), false));
    }
  }

  private Optional<Part.Figure> picture(ClientChanges.Change change) {
    return Optional.ofNullable(DRAWN.get(change.question()))
        .flatMap(role -> source.drawings().sections(role))
        .map(sheet -> new Part.Figure(room -> sheet));
  }

  private void price() {
    parts.heading(SAYINGS.say("client.price"));
    if (source.estimate().isEmpty()) {
      parts.prose(SAYINGS.say("client.no-price"));
      return;
    }
    Page page = EstimateFor.CLIENT.page(source.estimate().get(), source.how().units());
    Page below = new Page();
    page.blocks().stream().skip(1).forEach(below::add);
    parts.page(below);
  }

  /** The way that is proposed is set off from the others. */
  private void choices(WholeOptions ways) {
    List<List<String>> rows =
        OptionsText.clientGrid(ways, source.words(), source.how().units()).rows();
    int proposed = -1;
    for (int i = 0; i < ways.shown().size(); i++) {
      if (ways.shown().get(i).asProposed()) {
        proposed = i;
      }
    }
    parts.heading(SAYINGS.say("client.choices"));
    parts.prose(SAYINGS.say("client.choices.note", "count", Integer.toString(rows.size() - 1)));
    parts.add(
        new Part.Table(
            SAYINGS.say("client.choices"), rows.get(0), rows.subList(1, rows.size()), proposed));
  }

  private String inches(double amountIn) {
    return source.inches(Reader.CLIENT, amountIn);
  }
}
