package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.design.Structure;
import org.scantling.sayings.Sayings;
import org.scantling.tables.SizeRow;

/** A timber of the base and the one proposed in its place, both sawn across, at one scale. */
final class SectionPair {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double PX_PER_IN = 9;
  private static final double COLUMN_PX = 96;
  private static final double WORDS_PX = 17;

  private final Subject subject;
  private final BaseFrame base;
  private final Crowd crowd = new Crowd();

  SectionPair(Subject subject, BaseFrame base) {
    this.subject = subject;
    this.base = base;
  }

  /** So many timbers side by side. */
  private record Section(String size, int plies, double breadthIn, double depthIn) {
    double areaIn2() {
      return plies * breadthIn * depthIn;
    }
  }

  Optional<Sheet> of(String role) {
    Optional<Section> now =
        subject.structure().members().stream()
            .filter(each -> each.role().equals(role))
            .findFirst()
            .map(SectionPair::section);
    Optional<Section> before = base.before(role).map(this::section);
    return now.isPresent() && before.isPresent()
        ? Optional.of(sheet(role, before.get(), now.get()))
        : Optional.empty();
  }

  /** Two crossbeams at a post are more of them, no larger ones. */
  private static Section section(Structure.Member member) {
    int plies = member.role().equals("header") ? member.plies() : 1;
    return new Section(member.size(), plies, member.breadthIn(), member.depthIn());
  }

  private Section section(BaseFrame.Before before) {
    SizeRow row = base.tables().size(before.size());
    return new Section(before.size(), before.plies(), row.thicknessIn(), row.widthIn());
  }

  private Sheet sheet(String role, Section before, Section now) {
    boolean grown = now.areaIn2() > before.areaIn2() + 1e-6;
    draw(before, 0, SAYINGS.say("sections.then"), false);
    draw(now, COLUMN_PX, SAYINGS.say("sections.now"), grown);
    String says =
        SAYINGS.say(
            "sections.says",
            "role",
            SAYINGS.say("role." + role),
            "now",
            Larger.size(now.size(), now.plies()),
            "before",
            Larger.size(before.size(), before.plies()));
    return new Sheet(
        "section-" + role,
        SAYINGS.say("sections.title", "role", SAYINGS.say("role." + role)),
        says,
        PX_PER_IN,
        List.of(),
        crowd.inks(),
        crowd.inks());
  }

  /** Standing on one line, two with the room of a post between them drawn close. */
  private void draw(Section section, double leftPx, String when, boolean grown) {
    double gapPx = section.plies() > 1 ? PX_PER_IN : 0;
    double wideIn = section.plies() * section.breadthIn();
    double startPx = leftPx + (COLUMN_PX - wideIn * PX_PER_IN - gapPx) / 2;
    Tone tone = grown ? Tone.GROWN : Tone.TIMBER;
    LineClass line = grown ? LineClass.GROWN : LineClass.VISIBLE;
    for (int ply = 0; ply < section.plies(); ply++) {
      double x = startPx + ply * (section.breadthIn() * PX_PER_IN + gapPx);
      ply(x, section, tone, line);
    }
    double middlePx = leftPx + COLUMN_PX / 2;
    words(Larger.size(section.size(), section.plies()), Lettering.MARK, middlePx, WORDS_PX);
    words(when, Lettering.FIGURE, middlePx, 2 * WORDS_PX);
  }

  private void ply(double x, Section section, Tone tone, LineClass line) {
    double wide = section.breadthIn() * PX_PER_IN;
    double high = section.depthIn() * PX_PER_IN;
    PaperPoint low = new PaperPoint(x, 0);
    List<PaperPoint> corners =
        new ArrayList<>(List.of(low, low.plus(wide, 0), low.plus(wide, -high), low.plus(0, -high)));
    crowd.add(new Ink.Path(corners, true, tone, line, ""));
    crowd.add(Ink.Path.stroke(corners.get(0), corners.get(2), LineClass.THIN));
    crowd.add(Ink.Path.stroke(corners.get(1), corners.get(3), LineClass.THIN));
  }

  private void words(String said, Lettering lettering, double middlePx, double downPx) {
    crowd.add(
        new Ink.Letters(said, lettering, new PaperPoint(middlePx, downPx), Anchor.MIDDLE, false));
  }
}
