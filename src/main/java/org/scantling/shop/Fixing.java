package org.scantling.shop;

/**
 * Small things that hold the timber together.
 *
 * @param id row of the fasteners or packs table, or what it is
 * @param name as asked for in the shop
 * @param count what the joints take, without spares
 * @param use where they go
 */
record Fixing(String id, String name, int count, String use) {}
