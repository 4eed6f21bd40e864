package org.scantling.words;

import org.scantling.sayings.Template;
import org.scantling.sayings.WordRow;

/**
 * The same said to each of the three readers: the columns client, builder and engineer of a row.
 */
record ReaderTemplates(Template client, Template builder, Template engineer) {
  static ReaderTemplates of(WordRow row) {
    return new ReaderTemplates(
        new Template(row.cell("client")),
        new Template(row.cell("builder")),
        new Template(row.cell("engineer")));
  }

  Template to(Reader reader) {
    return switch (reader) {
      case CLIENT -> client;
      case BUILDER -> builder;
      case ENGINEER -> engineer;
    };
  }
}
