package org.scantling.problem;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Site;
import org.scantling.reasons.RoleTimber;
import org.scantling.reasons.TimberRole;

/** What single roles are made of, where that is another than the rest. */
final class RoleTimbers {
  private RoleTimbers() {}

  /** By the site file, or where it says nothing of timber by the base. */
  static List<RoleTimber> of(Site site) {
    boolean asked = site.materials().named();
    Site.Materials said =
        asked ? site.materials() : site.base().materials().orElse(site.materials());
    List<RoleTimber> timbers = new ArrayList<>();
    for (TimberRole role : TimberRole.values()) {
      Site.Timber timber = said.byRole().get(role.key());
      if (timber != null) {
        timber.species().ifPresent(it -> timbers.add(new RoleTimber(role.species(), it, asked)));
        timber.grade().ifPresent(it -> timbers.add(new RoleTimber(role.grade(), it, asked)));
      }
    }
    return timbers;
  }
}
