package org.scantling.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.RandomGenerator;
import org.scantling.engine.NamedBase;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.TriedBase;

/**
 * On sites drawn by lot, over three of the bases that ship: what is proposed from the one that is
 * taken is what is proposed where it is named alone, to the last number, and the order in which
 * they are named matters only where nothing else tells them apart. {@code -DbasesSites=200} takes
 * that many, {@code -DbasesSeed=} others.
 */
class BaseChoicePropertyTest {
  private static final int SITES = Integer.getInteger("basesSites", 4);
  private static final long SEED = Long.getLong("basesSeed", 20041130);
  private static final int NAMED = 3;
  private static final String BY_ORDER = "base.choice.named";

  @Example
  void the_taken_one_is_answered_as_if_it_were_named_alone_and_whatever_the_order() {
    RandomGenerator<Wish> wishes = RandomWish.any().generator(1000);
    Random random = new Random(SEED);
    for (int i = 0; i < SITES; i++) {
      Wish wish = wishes.next(random).value();
      List<String> names = new ArrayList<>(House.BASES);
      Collections.shuffle(names, random);
      List<NamedBase> bases = names.stream().limit(NAMED).map(name -> named(name, wish)).toList();
      try {
        holds(bases, wish);
      } catch (AssertionError wrong) {
        throw new AssertionError("site " + i + ": " + wish, wrong);
      }
    }
  }

  private static NamedBase named(String name, Wish wish) {
    return new NamedBase(name, wish.over(House.base(name)), List.of());
  }

  private static void holds(List<NamedBase> bases, Wish wish) {
    BaseChoice choice = House.engine().choose(bases);
    TriedBase taken = choice.taken();
    Proposal alone = House.propose(wish, House.base(taken.file()));

    assertThat(taken.proposal().result()).isEqualTo(alone.result());
    assertThat(answers(taken.proposal())).isEqualTo(answers(alone));
    assertThat(choice.tried()).extracting(TriedBase::file).isEqualTo(files(bases));

    List<NamedBase> backwards = new ArrayList<>(bases);
    Collections.reverse(backwards);
    BaseChoice turned = House.engine().choose(backwards);
    boolean tied =
        choice.others().stream()
            .anyMatch(each -> each.reason().orElseThrow().note().id().equals(BY_ORDER));
    if (!tied) {
      assertThat(turned.taken().file()).isEqualTo(taken.file());
    }
  }

  /** Every answer beside how the base has it. */
  private static List<List<Object>> answers(Proposal proposal) {
    List<List<Object>> answers = new ArrayList<>();
    for (Decision each : proposal.decisions()) {
      answers.add(List.of(each.question(), each.base(), each.proposed(), each.changed()));
    }
    return answers;
  }

  private static List<String> files(List<NamedBase> bases) {
    return bases.stream().map(NamedBase::file).toList();
  }
}
