package org.scantling.spans;

import java.util.List;
import org.scantling.confirm.Limits;
import org.scantling.confirm.Material;
import org.scantling.confirm.PostChecks;
import org.scantling.confirm.SidePush;
import org.scantling.reasons.Checked;
import org.scantling.tables.Tables;

/** The checks of one post for a height and the area of the top that it carries. */
record PostTrial(Tables tables, Material material, Assumptions assumed, Limits limits) {

  List<Checked> of(double heightIn, double areaFt2) {
    SidePush push = new SidePush(assumed.post().pushLb(), 0, heightIn);
    return PostChecks.under(
            assumed.loads().deadPsf() * areaFt2,
            assumed.loads().livePsf() * areaFt2,
            new PostChecks.Standing(push, push, 0, 0, 1),
            limits,
            id -> tables.check(id).source())
        .of(material);
  }
}
