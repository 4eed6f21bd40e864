package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.timber.AxialStiffness;
import org.scantling.timber.Connection;
import org.scantling.timber.GeometryFactor;
import org.scantling.timber.GroupAction;
import org.scantling.timber.LateralValue;

/**
 * The bolts of a joint under one force, as they were worked.
 *
 * @param main the piece in the middle, or the one that a brace laps
 * @param side what is bolted to it
 * @param lateral one bolt pushed sideways
 * @param group how evenly those of a row share
 * @param geometry what distances leave
 * @param all the bolts together
 */
record JointBolts(
    Piece main,
    Piece side,
    LateralValue lateral,
    GroupAction group,
    GeometryFactor geometry,
    Connection all) {

  /**
   * One of the pieces.
   *
   * @param section a name for what of it a row of bolts stretches
   */
  record Piece(String name, String section, AxialStiffness stretch) {
    Piece(String name, AxialStiffness stretch) {
      this(name, name, stretch);
    }
  }

  List<JointLines> told() {
    List<JointLines> parts = new ArrayList<>();
    parts.add(JointLines.of("main-".concat(main.name()), lateral.main()));
    parts.add(JointLines.of("side-".concat(side.name()), lateral.side()));
    parts.add(JointLines.of(lateral.lines()));
    // One bolt shares with nobody, so that nothing needs to stretch.
    if (group.row().fastenerCount() > 1) {
      parts.add(JointLines.of(main.section(), main.stretch()));
      parts.add(JointLines.of(side.section(), side.stretch()));
    }
    parts.add(JointLines.of(group.lines()));
    parts.add(JointLines.of(geometry));
    parts.add(JointLines.of(lateral, all.lines()));
    return parts;
  }
}
