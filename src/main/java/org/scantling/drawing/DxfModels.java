package org.scantling.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.quantity.Inches;
import org.scantling.shop.Piece;

/** Set-out plan and elevations in real size, whole however long the walk is, for exchange. */
final class DxfModels {
  /** At which the figures of the drawings find their room. */
  private static final double PX_PER_IN = 3;

  private final Subject subject;

  DxfModels(Subject subject) {
    this.subject = subject;
  }

  /** Text by the name of its file. */
  Map<String, String> files() {
    Windows whole = Windows.whole(PX_PER_IN);
    double pxIn = 1 / PX_PER_IN;
    Map<String, String> files = new LinkedHashMap<>();
    files.put("set-out.dxf", written(SetOutScene.of(subject, whole, Room.WIDE)));
    files.put("side.dxf", written(SideScene.of(subject, pxIn, Room.WIDE)));
    files.put("end.dxf", written(EndScene.of(subject, pxIn, Room.WIDE)));
    return files;
  }

  private String written(Scene scene) {
    Crowd crowd = new Crowd();
    Draft.of(scene, Windows.whole(PX_PER_IN), new PaperPoint(0, 0), crowd);
    boolean metric = subject.lengths().metric();
    double unitPerPx = (metric ? Inches.IN_MILLIMETRES : 1) / PX_PER_IN;
    return new DxfWriter(roles(), unitPerPx, metric).write(List.copyOf(crowd.inks()));
  }

  private Map<String, String> roles() {
    Map<String, String> roles = new LinkedHashMap<>();
    for (Piece each : subject.pieces().all()) {
      roles.put(each.mark(), each.shape().role());
    }
    return roles;
  }
}
