package org.scantling.property;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.tables.SoilRow;
import org.scantling.tables.VineRow;

/** One demand that a site can ask more of, all else equal. */
enum MoreAsked {
  CLEAR_WIDTH {
    @Override
    Optional<Wish> of(Wish wish, double share) {
      double now = wish.clearWidthIn();
      double more = Math.min(120, now + 1 + 36 * share);
      return now > 0 && more > now ? Optional.of(wish.clearWidth(more)) : Optional.empty();
    }
  },
  HEADROOM {
    @Override
    Optional<Wish> of(Wish wish, double share) {
      double now = wish.headroomIn();
      double more = Math.min(108, now + 0.5 + 18 * share);
      return now > 0 && more > now ? Optional.of(wish.headroom(more)) : Optional.empty();
    }
  },
  SNOW {
    @Override
    Optional<Wish> of(Wish wish, double share) {
      Wish.Climate now = wish.climate();
      double more = Math.min(70, now.snowPsf() + 1 + 40 * share);
      return ifMore(
          wish,
          more > now.snowPsf(),
          new Wish.Climate(now.frostIn(), more, now.windMph(), now.exposure()));
    }
  },
  WIND {
    @Override
    Optional<Wish> of(Wish wish, double share) {
      Wish.Climate now = wish.climate();
      double more = Math.min(140, now.windMph() + 1 + 30 * share);
      return ifMore(
          wish,
          more > now.windMph(),
          new Wish.Climate(now.frostIn(), now.snowPsf(), more, now.exposure()));
    }
  },
  FROST {
    @Override
    Optional<Wish> of(Wish wish, double share) {
      Wish.Climate now = wish.climate();
      double more = now.frostIn() + 1 + 30 * share;
      return ifMore(
          wish, true, new Wish.Climate(more, now.snowPsf(), now.windMph(), now.exposure()));
    }
  },
  SOIL {
    @Override
    Optional<Wish> of(Wish wish, double share) {
      if (wish.soil().equals("bedrock") && wish.layout().rockIn() > 0) {
        // Ground that is rock from the top down has none below it: it would be two changes at once.
        return Optional.empty();
      }
      SoilRow now = House.TABLES.soil(wish.soil());
      List<String> weaker =
          House.TABLES.soils().rows().stream()
              .filter(row -> row.verticalBearingPsf() < now.verticalBearingPsf())
              .filter(row -> row.lateralBearingPsfPerFt() < now.lateralBearingPsfPerFt())
              .map(SoilRow::id)
              .toList();
      return pick(weaker, share).map(wish::soil);
    }
  },
  VINE {
    @Override
    Optional<Wish> of(Wish wish, double share) {
      VineRow now = House.TABLES.vine(wish.vine());
      List<String> heavier = new ArrayList<>();
      for (VineRow row : House.TABLES.vines().rows()) {
        if (!row.id().equals(now.id()) && asksMore(row, now)) {
          heavier.add(row.id());
        }
      }
      return pick(heavier, share).map(wish::vine);
    }
  };

  /**
   * The same wish with more of this demand; empty where it cannot ask for more.
   *
   * @param share how much more, from 0 to 1
   */
  abstract Optional<Wish> of(Wish wish, double share);

  /** In every respect at least as much. */
  private static boolean asksMore(VineRow more, VineRow less) {
    return more.wetDesignPsf() >= less.wetDesignPsf()
        && more.hangingIn() >= less.hangingIn()
        && more.canopyFillLeafRatio() >= less.canopyFillLeafRatio()
        && more.canopyFillBareRatio() >= less.canopyFillBareRatio()
        && more.sideFillLeafRatio() * more.dragFactor()
            >= less.sideFillLeafRatio() * less.dragFactor()
        && edge(more) >= edge(less);
  }

  /** What the edge of its mat on the top takes of the wind. */
  private static double edge(VineRow vine) {
    return vine.matIn() * vine.canopyFillLeafRatio() * vine.dragFactor();
  }

  private static Optional<Wish> ifMore(Wish wish, boolean more, Wish.Climate climate) {
    return more ? Optional.of(wish.climate(climate)) : Optional.empty();
  }

  private static Optional<String> pick(List<String> words, double share) {
    return words.isEmpty()
        ? Optional.empty()
        : Optional.of(words.get((int) Math.min(words.size() - 1, share * words.size())));
  }
}
