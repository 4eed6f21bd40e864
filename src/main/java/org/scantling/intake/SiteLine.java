package org.scantling.intake;

import java.nio.file.Path;
import java.util.Optional;

/**
 * One site of many, as it stands on a line of its own, with what is wrong so far. It is held
 * against the keys of a site file by {@link SiteReader#readEach(SiteLine, java.util.List)}.
 */
public final class SiteLine {
  private final SourceText source;
  private final Node.Group keys;
  private final Optional<Node.Scalar> id;
  private final Problems problems;

  SiteLine(
      String name,
      int number,
      Path folder,
      Node.Group keys,
      Optional<Node.Scalar> id,
      Problems problems) {
    this.source = new SourceText(name, number, "", folder);
    this.keys = keys;
    this.id = id;
    this.problems = problems;
  }

  /**
   * What somebody else calls the site.
   *
   * @param number true where it is written as a number
   */
  public record Id(String text, boolean number) {}

  /** By which its answer is known again; no key of a site file. */
  public Optional<Id> id() {
    return id.map(value -> new Id(value.text(), value.form() == Node.Form.NUMBER));
  }

  SourceText source() {
    return source;
  }

  Node.Group keys() {
    return keys;
  }

  Problems problems() {
    return problems;
  }
}
