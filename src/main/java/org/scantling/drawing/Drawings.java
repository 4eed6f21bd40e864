package org.scantling.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.BeamDiagram;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.shop.Lists;
import org.scantling.shop.Piece;
import org.scantling.tables.Tables;

/** Every drawing of a proposal, as files and as parts of a page. */
public final class Drawings {
  private final Subject subject;
  private final BaseFrame base;
  private final Map<Layout, Sheet> laidOut = new ConcurrentHashMap<>();

  private final Map<Near, Sheet> details = new ConcurrentHashMap<>();

  private record Layout(View view, Room room) {}

  private record Near(DetailDrawing detail, Room room) {}

  private Drawings(Subject subject, BaseFrame base) {
    this.subject = subject;
    this.base = base;
  }

  /**
   * The drawings of a proposal.
   *
   * @param lists what is drawn: pieces and set-out
   * @param site the site that it was made for
   * @param base where everything stands in the base design
   * @param tables the sizes that the base is made of
   * @param units feet and inches, or millimeters
   * @throws IllegalArgumentException when the proposal holds no structure
   */
  public static Drawings of(
      Lists lists, Proposal proposal, Site site, Geometry base, Tables tables, UnitSystem units) {
    if (!(proposal.result() instanceof Proposal.Result.Proposed done)) {
      throw new IllegalArgumentException("'" + proposal.title() + "' has nothing to draw");
    }
    Subject subject =
        new Subject(
            proposal.title(),
            lists.pieces(),
            lists.setOut(),
            done.structure(),
            number(proposal, Question.FROST_DEPTH),
            site.ground().rockAtIn(),
            machine(site),
            new DrawnLengths(units));
    return new Drawings(subject, new BaseFrame(site.base(), base, tables));
  }

  /**
   * The drawings as files.
   *
   * @return text by the name of its file, each a picture that works by itself
   */
  public Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    for (View view : View.values()) {
      files.put(view.word() + ".svg", SvgWriter.write(sheet(view, Room.WIDE)));
    }
    for (DetailDrawing detail : details()) {
      files.put(detail.word() + ".svg", SvgWriter.write(sheet(detail, Room.WIDE)));
    }
    return files;
  }

  /**
   * Set-out plan and elevations in real size, for programs for drawing.
   *
   * @return text by the name of its file
   */
  public Map<String, String> models() {
    return new DxfModels(subject).files();
  }

  /** One of the drawings, laid out for some room. */
  public Sheet sheet(View view, Room room) {
    return laidOut.computeIfAbsent(new Layout(view, room), key -> laidOut(view, room));
  }

  /** What of the structure is drawn larger. */
  public List<DetailDrawing> details() {
    return new DetailSheets(subject).there();
  }

  /** One of them, laid out for some room. */
  public Sheet sheet(DetailDrawing detail, Room room) {
    return details.computeIfAbsent(
        new Near(detail, room), key -> new DetailSheets(subject).sheet(detail, room));
  }

  /**
   * The cross-sections of the timbers of a role, the base's beside those of the proposal.
   *
   * @param role post, header or crossbeam
   * @return empty where the base has none of them
   */
  public Optional<Sheet> sections(String role) {
    return new SectionPair(subject, base).of(role);
  }

  /** The tail of the crossbeams at full size, 96 px to the inch; empty where it is square. */
  public Optional<Sheet> template() {
    return new TailSheet(subject).sheet();
  }

  /** Shear or moment of a beam. */
  public Sheet diagram(BeamDiagram diagram, DiagramWords words, Room room) {
    return new BeamDiagramSheet(diagram, words, subject.lengths(), room).sheet();
  }

  /** The kinds of pieces to which more is done than to saw them square. */
  public List<Piece> worked() {
    return subject.pieces().all().stream().filter(PieceSheet::shows).toList();
  }

  /** One of them lying on the sawhorse, with the marks on the tape. */
  public Sheet piece(Piece piece, Room room) {
    return new PieceSheet(subject, piece, room).sheet();
  }

  private Sheet laidOut(View view, Room room) {
    return switch (view) {
      case SET_OUT -> new SetOutSheet(subject, room).sheet();
      case SIDE -> new SideSheet(subject, room).sheet();
      case END -> new EndSheet(subject, room).sheet();
      case CANOPY -> new CanopySheet(subject, room).sheet();
      case THEN_AND_NOW -> new ThenAndNowSheet(subject, base, room).sheet();
    };
  }

  private static OptionalDouble machine(Site site) {
    return site.walkway().users().stream()
        .filter(Site.User.Machine.class::isInstance)
        .mapToDouble(each -> ((Site.User.Machine) each).machineWidthIn())
        .max();
  }

  static OptionalDouble number(Proposal proposal, Question question) {
    Optional<Outcome> outcome = proposal.decision(question).map(Decision::proposed);
    return outcome.isPresent() && outcome.get() instanceof Outcome.Amount amount
        ? OptionalDouble.of(amount.measure().amount())
        : OptionalDouble.empty();
  }
}
