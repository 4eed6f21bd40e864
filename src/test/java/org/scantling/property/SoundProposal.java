package org.scantling.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.design.Structure;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.tables.SizeRow;

/** What must hold of every proposal, whatever the site. */
public final class SoundProposal {
  private static final double HAIR = 1e-6;

  /** Lengths of members are told to so much. */
  private static final double TOLD = 1e-3;

  private static final List<Question> SIZES =
      List.of(Question.CROSSBEAM_SIZE, Question.HEADER_SIZE, Question.POST_SIZE);

  private static final String[] OF_ANY_WALK = {
    "crossbeam.bending", "header.bending", "post.bending", "post.drift", "footing.uplift"
  };

  private static final String[] OF_BRACES = {
    "brace.axial", "brace.joint", "brace.sway", "footing.sliding"
  };

  private static final String[] OF_POSTS_IN_THE_GROUND = {"footing.embedment"};

  private final Wish wish;
  private final Proposal proposal;

  private SoundProposal(Wish wish, Proposal proposal) {
    this.wish = wish;
    this.proposal = proposal;
  }

  public static void check(Wish wish, Proposal proposal) {
    new SoundProposal(wish, proposal).check();
  }

  private void check() {
    proposal.decisions().forEach(SoundProposal::hasReasons);
    if (proposal.result() instanceof Proposal.Result.Proposed proposed) {
      checksPass();
      everyPartIsChecked();
      SIZES.forEach(this::smallerWasRejected);
      fits(proposed.structure());
      stopsAreOfWhatIsBuilt(proposed.structure().geometry());
      asked(proposed.structure().geometry());
    } else if (proposal.result() instanceof Proposal.Result.NeedsEngineer refused) {
      refused(refused);
    }
  }

  private void refused(Proposal.Result.NeedsEngineer refused) {
    assertThat(Arrays.stream(Demand.values()).map(Demand::path))
        .as("the demand that breaks it is a path of the site file")
        .contains(refused.demand());
    assertThat(refused.reason().note().source().citation()).isNotBlank();
    assertThat(proposal.checks()).isEmpty();
    if (refused.broken().isEmpty()) {
      assertThat(refused.reason().finding()).isInstanceOf(Finding.Refuse.class);
    }
  }

  private static void hasReasons(Decision decision) {
    assertThat(decision.reasons()).as(decision.question().id()).isNotEmpty();
    for (Reason reason : decision.reasons()) {
      assertThat(reason.note().source().citation()).as(reason.note().id()).isNotBlank();
    }
    assertThat(decision.governing().governing()).isTrue();
    assertThat(decision.reasons().stream().filter(Reason::governing)).hasSize(1);
  }

  private void checksPass() {
    assertThat(proposal.checks()).isNotEmpty();
    for (Checked checked : proposal.checks()) {
      assertThat(checked.check().ratio()).as(checked.id()).isBetween(0.0, 1 + 1e-9);
      assertThat(checked.source().citation()).as(checked.id()).isNotBlank();
    }
  }

  /** A structure passes its checks only if what holds it up was checked at all. */
  private void everyPartIsChecked() {
    boolean hinged =
        word(proposal.decision(Question.FOOTING_KIND).orElseThrow().proposed()).equals("bracket");
    List<String> checked = proposal.checks().stream().map(Checked::id).toList();
    assertThat(checked).contains(OF_ANY_WALK);
    assertThat(checked).contains(hinged ? OF_BRACES : OF_POSTS_IN_THE_GROUND);
  }

  /** A size that has grown says what stopped the one below it. */
  private void smallerWasRejected(Question question) {
    Decision decision = proposal.decision(question).orElseThrow();
    List<String> sold = sold(question);
    int now = sold.indexOf(word(decision.proposed()));
    int before = decision.base().map(base -> sold.indexOf(word(base))).orElse(-1);
    if (decision.changed() && before >= 0 && now > before) {
      assertThat(decision.rejected().stream().map(SoundProposal::rejectedOption))
          .as("%s: %s, options %s", question.id(), decision.proposed(), sold)
          .contains(sold.get(now - 1));
      decision.rejected().forEach(SoundProposal::saysWhat);
    }
  }

  private static void saysWhat(Reason rejected) {
    Finding.Reject reject = (Finding.Reject) rejected.finding();
    assertThat(reject.check()).isNotBlank();
    assertThat(reject.ratio()).as(reject.check()).isGreaterThanOrEqualTo(1);
  }

  /** What stopped a header is what stands and lies there, not a size that was tried in between. */
  private void stopsAreOfWhatIsBuilt(Geometry geometry) {
    for (Reason stop : proposal.decision(Question.HEADER_SIZE).orElseThrow().rejected()) {
      seen(stop, "crossbeam")
          .ifPresent(in -> assertThat(in).isEqualTo(geometry.crossbeams().depthIn()));
      seen(stop, "post").ifPresent(in -> assertThat(in).isEqualTo(geometry.posts().breadthIn()));
    }
  }

  private static Optional<Double> seen(Reason reason, String name) {
    return ((Finding.Reject) reason.finding())
        .evidence().seen().stream()
            .filter(
                each -> each instanceof Evidence.Seen.Amount amount && amount.name().equals(name))
            .map(each -> ((Evidence.Seen.Amount) each).measure().amount())
            .findFirst();
  }

  private static String rejectedOption(Reason reason) {
    return ((Finding.Reject) reason.finding()).option();
  }

  static String word(Outcome outcome) {
    return ((Outcome.Word) outcome).text();
  }

  /** The options of a size question that the yard sells in that grade, smallest first. */
  private List<String> sold(Question question) {
    boolean paired =
        word(proposal.decision(Question.HEADER_STYLE).orElseThrow().proposed()).equals("paired");
    String role =
        switch (question) {
          case CROSSBEAM_SIZE -> "crossbeam";
          case HEADER_SIZE -> paired ? "board" : "header";
          default -> "post";
        };
    String prefix = question == Question.HEADER_SIZE && paired ? "2-" : "";
    return House.TABLES.sizes(role, "north-america").stream()
        .filter(this::inGrade)
        .map(row -> prefix + row.id())
        .toList();
  }

  private boolean inGrade(SizeRow size) {
    return House.TABLES.designValues().rows().stream()
        .anyMatch(
            row ->
                row.species().equals(wish.timber().species())
                    && row.grade().equals(wish.timber().grade())
                    && row.memberClass() == size.memberClass()
                    && row.nominalWidth().holds(size.nominalWidthIn()));
  }

  private void fits(Structure structure) {
    Geometry geometry = structure.geometry();
    assertThat(geometry.lengthIn()).isCloseTo(wish.lengthIn(), within(HAIR));
    List<Double> places = geometry.crossbeamsAtIn();
    assertThat(places).hasSize(geometry.crossbeamCount());
    assertThat(places.get(0)).isGreaterThanOrEqualTo(-geometry.headerTailIn());
    assertThat(places.get(places.size() - 1))
        .isLessThanOrEqualTo(geometry.lengthIn() + geometry.headerTailIn());
    assertThat(amount(Question.CROSSBEAM_COUNT)).isEqualTo(geometry.crossbeamCount());
    assertThat(count(structure, "post")).isEqualTo(geometry.postCount());
    assertThat(count(structure, "crossbeam")).isEqualTo(geometry.crossbeamPieceCount());
    assertThat(count(structure, "header")).isEqualTo(structure.headers().all().size());
    assertThat(headerTimberIn(structure))
        .as("all header timber, tip to tip, each row, each board")
        .isGreaterThan(2 * geometry.headers().plies() * geometry.headerLengthIn() - TOLD);
    assertThat(structure.footings().count()).isEqualTo(geometry.postCount());
    structure.members().forEach(SoundProposal::notchesFit);
  }

  private static double headerTimberIn(Structure structure) {
    return structure.members().stream()
        .filter(each -> each.role().equals("header"))
        .mapToDouble(each -> each.count() * each.lengthIn())
        .sum();
  }

  private static int count(Structure structure, String role) {
    return structure.members().stream()
        .filter(each -> each.role().equals(role))
        .mapToInt(Structure.Member::count)
        .sum();
  }

  private static void notchesFit(Structure.Member member) {
    for (Structure.Notch notch : member.notches()) {
      assertThat(notch.depthIn()).as(member.role()).isBetween(0.0, member.depthIn() / 2);
      // Where a header is cut over a post, its seat ends with the piece.
      double besideIn = member.role().equals("header") ? -TOLD : HAIR;
      assertThat(notch.atIn() - notch.widthIn() / 2).as(member.role()).isGreaterThan(besideIn);
      assertThat(notch.atIn() + notch.widthIn() / 2)
          .as(member.role())
          .isLessThan(member.lengthIn() - besideIn);
    }
  }

  private void asked(Geometry geometry) {
    assertThat(geometry.clearWidthIn()).isGreaterThanOrEqualTo(wish.clearWidthIn() - HAIR);
    double hangingIn = House.TABLES.vine(wish.vine()).hangingIn();
    double leastIn = House.TABLES.thumb("headroom.least").amount();
    double dropIn = Math.abs(wish.layout().across().fallIn(geometry.plan().rowSpacingIn()));
    assertThat(geometry.headroomIn() - dropIn)
        .isGreaterThanOrEqualTo(Math.max(wish.headroomIn(), leastIn + hangingIn) - HAIR);
    for (Site.User user : wish.users()) {
      assertThat(geometry.clearWidthIn()).isGreaterThanOrEqualTo(needs(user) - HAIR);
    }
    double depthIn = amount(Question.FOOTING_DEPTH);
    double rockIn = wish.layout().rockIn();
    boolean allRock = wish.soil().equals("bedrock");
    if (rockIn > 0 && !allRock) {
      assertThat(depthIn).isLessThanOrEqualTo(rockIn + HAIR);
      if (depthIn > rockIn - HAIR) {
        return;
      }
    }
    assertThat(depthIn).isGreaterThanOrEqualTo(House.TABLES.thumb("footing.least-depth").amount());
    // IBC 1809.5 excepts footings on solid rock.
    boolean freezes = !wish.soil().equals("bedrock");
    if (freezes && wish.choices().embedmentBasis().equals("code")) {
      assertThat(amount(Question.FOOTING_DEPTH))
          .isGreaterThanOrEqualTo(wish.climate().frostIn() - HAIR);
    }
  }

  private static double needs(Site.User user) {
    return user instanceof Site.User.Known known
        ? House.TABLES.user(known.kind()).clearWidthIn()
        : ((Site.User.Machine) user).machineWidthIn()
            + 2 * House.TABLES.thumb("machine.side-clearance").amount();
  }

  private double amount(Question question) {
    Outcome outcome = proposal.decision(question).orElseThrow().proposed();
    return ((Outcome.Amount) outcome).measure().amount();
  }
}
