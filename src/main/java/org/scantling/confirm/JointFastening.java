package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.timber.Connection;
import org.scantling.timber.LateralValue;
import org.scantling.timber.Placement;
import org.scantling.timber.Withdrawal;

/**
 * Nails or screws between an upper timber and a lower one, as they were worked.
 *
 * @param reach how they go into the wood
 * @param lateral one of them pushed sideways
 * @param depth how deep they go
 * @param side all of them, pushed sideways
 * @param grip one of them pulled
 * @param pull all of them, pulled
 */
record JointFastening(
    Calculated reach,
    LateralValue lateral,
    Placement depth,
    Connection side,
    Withdrawal grip,
    Connection pull) {

  /** Pushed sideways. */
  List<JointLines> pushed() {
    List<JointLines> parts = new ArrayList<>();
    parts.add(JointLines.of(reach.lines()));
    parts.add(JointLines.of("lower", lateral.main()));
    parts.add(JointLines.of("upper", lateral.side()));
    parts.add(JointLines.of(lateral.lines()));
    parts.add(JointLines.of(depth));
    parts.add(JointLines.of(lateral, side.lines()));
    return parts;
  }

  /** Pulled. */
  List<JointLines> pulled() {
    return List.of(JointLines.of(grip.lines()), JointLines.of(pull.lines()));
  }
}
