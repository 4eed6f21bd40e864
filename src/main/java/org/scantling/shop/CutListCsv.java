package org.scantling.shop;

/** The cut list as CSV: a line a piece, and one for each of its notches and holes. */
final class CutListCsv {
  private final Lists lists;
  private final Said said;

  CutListCsv(Lists lists, Said said) {
    this.lists = lists;
    this.said = said;
  }

  String text() {
    CsvTable table =
        new CsvTable(
            "mark",
            "count",
            "role",
            "size",
            "species",
            "grade",
            "thickness_in",
            "depth_in",
            "item",
            "length_in",
            "length",
            "spare_in",
            "face",
            "from",
            "at_in",
            "at",
            "along_in",
            "deep_in",
            "across_in",
            "off_in",
            "note");
    for (Piece piece : lists.pieces().all()) {
      piece(table, piece, "piece")
          .set("length_in", piece.shape().lengthIn())
          .set("length", said.length(piece.shape().lengthIn()))
          .set("spare_in", piece.shape().spareIn())
          .set("note", new EndWords(said).both(piece.shape()));
      piece.shape().recesses().forEach(each -> recess(table, piece, each));
      piece.shape().bores().forEach(each -> bore(table, piece, each));
    }
    return table.in(said.units()).text();
  }

  private CsvTable.Row piece(CsvTable table, Piece piece, String item) {
    Shape shape = piece.shape();
    PieceTimber timber = lists.timber(shape.role());
    return table
        .row()
        .set("mark", piece.mark())
        .set("count", piece.count())
        .set("role", shape.role())
        .set("size", shape.size())
        .set("species", timber.species())
        .set("grade", timber.grade())
        .set("thickness_in", shape.breadthIn())
        .set("depth_in", shape.depthIn())
        .set("item", item);
  }

  private void recess(CsvTable table, Piece piece, Recess recess) {
    piece(table, piece, recess.seat().role().equals("rail") ? "housing" : "notch")
        .set("face", recess.face())
        .set("from", piece.shape().ends().first())
        .set("at_in", recess.fromIn())
        .set("at", said.length(recess.fromIn()))
        .set("along_in", recess.widthIn())
        .set("deep_in", recess.depthIn())
        .set("across_in", recess.acrossIn())
        .set("note", new SeatWords(said, lists.postIn()).note(recess.seat()));
  }

  private void bore(CsvTable table, Piece piece, Bore bore) {
    piece(table, piece, "hole")
        .set("face", bore.face())
        .set("from", piece.shape().ends().first())
        .set("at_in", bore.atIn())
        .set("at", said.length(bore.atIn()))
        .set("along_in", bore.diameterIn())
        .set("off_in", bore.offIn())
        .set("note", bore.what());
  }
}
