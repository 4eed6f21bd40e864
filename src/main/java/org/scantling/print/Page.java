package org.scantling.print;

import java.util.ArrayList;
import java.util.List;

/** A page under construction: blocks from top to bottom. */
public final class Page {
  private final List<Block> blocks = new ArrayList<>();

  public Page title(String text) {
    return add(new Block.Heading(1, text));
  }

  public Page heading(String text) {
    return add(new Block.Heading(2, text));
  }

  public Page paragraph(String text) {
    return add(new Block.Paragraph(text));
  }

  /** Nothing where there are no items. */
  public Page items(List<Block.Item> items) {
    return items.isEmpty() ? this : add(new Block.Items(items));
  }

  public Page add(Block block) {
    blocks.add(block);
    return this;
  }

  public List<Block> blocks() {
    return List.copyOf(blocks);
  }
}
