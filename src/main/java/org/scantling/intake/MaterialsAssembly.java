package org.scantling.intake;

import java.util.LinkedHashMap;
import java.util.Map;
import org.scantling.design.Site;
import org.scantling.reasons.TimberRole;

/** Builds the materials from a file that had no problem. */
final class MaterialsAssembly {
  private static final String GROUP = "materials";

  private MaterialsAssembly() {}

  static Site.Materials materials(Readings said) {
    return new Site.Materials(
        said.maybeWord(GROUP + ".species"),
        said.maybeWord(GROUP + ".grade"),
        said.maybeWord(GROUP + ".market"),
        byRole(said));
  }

  private static Map<String, Site.Timber> byRole(Readings said) {
    Map<String, Site.Timber> byRole = new LinkedHashMap<>();
    for (TimberRole role : TimberRole.values()) {
      String path = GROUP + "." + role.key();
      if (said.hasGroup(path)) {
        byRole.put(
            role.key(),
            new Site.Timber(said.maybeWord(path + ".species"), said.maybeWord(path + ".grade")));
      }
    }
    return byRole;
  }
}
