package org.scantling.reasons;

/**
 * How hard the base design itself is worked by a check, at the place where it has stood.
 *
 * @param check such as footing.embedment
 * @param ratio its demand over its capacity there
 * @param sinceYear first year of its service
 */
public record ProvenCheck(String check, double ratio, int sinceYear) implements Fact {
  @Override
  public String reference() {
    return "base:" + check;
  }
}
