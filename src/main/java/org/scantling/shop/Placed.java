package org.scantling.shop;

/** One piece before it has a mark. */
record Placed(Shape shape, Place place) {}
