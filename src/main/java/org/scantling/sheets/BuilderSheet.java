package org.scantling.sheets;

import java.util.List;
import org.scantling.drawing.View;
import org.scantling.print.Caveats;
import org.scantling.print.Page;
import org.scantling.sayings.Sayings;
import org.scantling.shop.ListKind;
import org.scantling.shop.ListPages;
import org.scantling.shop.Piece;
import org.scantling.words.Reader;

/** What goes to the site: the lists in the order in which they are needed, with the drawings. */
final class BuilderSheet {
  private static final Sayings SAYINGS = Sayings.of("sheets");

  private final SheetSource source;
  private final SheetParts parts = new SheetParts();

  BuilderSheet(SheetSource source) {
    this.source = source;
  }

  List<Part> parts() {
    parts.prose(SAYINGS.say("builder.cautions-first"));
    list(ListKind.SET_OUT, View.SET_OUT);
    list(ListKind.CUT_LIST);
    pieces();
    parts.add(new Part.NewPage()).heading(SAYINGS.say("builder.details"));
    parts.add(source.figure(View.SIDE));
    parts.add(source.figure(View.END));
    parts.add(source.figure(View.CANOPY));
    DetailParts.add(parts, source, Reader.BUILDER);
    list(ListKind.ORDER);
    list(ListKind.BUYING);
    list(ListKind.CLIMBERS);
    list(ListKind.UPKEEP);
    parts.page(source.nearMisses(Reader.BUILDER), 0);
    Page caveats = new Page();
    Caveats.write(caveats, source.proposal(), source.words(), source.how(), Reader.BUILDER);
    parts.add(new Part.NewPage()).caveats(caveats);
    TemplatePart.of(source).ifPresent(parts::add);
    return parts.parts();
  }

  /** Each kind once, for the sawhorse. */
  private void pieces() {
    List<Piece> pieces = source.drawings().worked();
    if (!pieces.isEmpty()) {
      parts.add(new Part.NewPage()).heading(SAYINGS.say("builder.pieces"));
      parts.prose(SAYINGS.say("builder.pieces.marks"));
      pieces.forEach(
          each -> parts.add(new Part.Figure(room -> source.drawings().piece(each, room))));
    }
  }

  private void list(ListKind kind, View... drawn) {
    if (kind != ListKind.SET_OUT) {
      parts.add(new Part.NewPage());
    }
    parts.heading(ListPages.heading(kind));
    for (View view : drawn) {
      parts.add(source.figure(view));
    }
    Page page = ListPages.body(source.lists(), kind, source.how().units());
    if (kind == ListKind.ORDER) {
      parts.steps(page);
    } else {
      parts.page(page);
    }
  }
}
