package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.design.CutHeaders;
import org.scantling.design.Geometry;
import org.scantling.design.HeaderBearing;
import org.scantling.design.HeaderPiece;
import org.scantling.design.Structure.Member;
import org.scantling.design.Structure.Notch;
import org.scantling.design.TopLine;

/** The pieces of the headers, with their seats. */
final class HeaderMembers {
  private final Geometry geometry;
  private final TopLine top;
  private final CutHeaders cutHeaders;
  private final MemberMaker maker;

  HeaderMembers(Geometry geometry, TopLine top, CutHeaders cutHeaders, MemberMaker maker) {
    this.geometry = geometry;
    this.top = top;
    this.cutHeaders = cutHeaders;
    this.maker = maker;
  }

  /** Pieces of one length and with the same seats together, as they are cut. */
  List<Member> all() {
    Map<List<Object>, Integer> counts = new LinkedHashMap<>();
    for (HeaderPiece piece : cutHeaders.all()) {
      List<Object> key = List.of(MemberMaker.told(piece.lengthIn()), seats(piece));
      List<Object> turned =
          List.of(MemberMaker.told(piece.lengthIn()), turned(seats(piece), piece));
      counts.merge(counts.containsKey(turned) ? turned : key, 1, Integer::sum);
    }
    List<Member> headers = new ArrayList<>();
    counts.forEach(
        (key, count) -> {
          @SuppressWarnings("unchecked")
          List<Notch> seats = (List<Notch>) key.get(1);
          headers.add(maker.member("header", HEADER_SIZE, (Double) key.get(0), count, seats));
        });
    return headers;
  }

  private List<Notch> seats(HeaderPiece piece) {
    List<Notch> seats = new ArrayList<>();
    if (geometry.headers().paired() || !(geometry.headers().notchIn() > 0)) {
      return seats;
    }
    double postIn = geometry.posts().breadthIn() * top.stretchRatio();
    for (int post = piece.fromPost(); post <= piece.toPost(); post++) {
      HeaderBearing bearing = HeaderBearing.of(piece, post, postIn);
      if (bearing.lengthIn() > 0) {
        seats.add(
            new Notch(
                "underside",
                MemberMaker.told(bearing.middleIn() - piece.firstIn()),
                MemberMaker.told(bearing.lengthIn()),
                geometry.headers().notchIn()));
      }
    }
    return seats;
  }

  private static List<Notch> turned(List<Notch> seats, HeaderPiece piece) {
    List<Notch> turned = new ArrayList<>();
    for (Notch seat : seats) {
      double atIn = MemberMaker.told(piece.lengthIn() - seat.atIn());
      turned.add(0, new Notch(seat.face(), atIn, seat.widthIn(), seat.depthIn()));
    }
    return turned;
  }
}
