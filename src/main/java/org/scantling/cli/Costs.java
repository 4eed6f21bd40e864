package org.scantling.cli;

import java.util.Optional;
import org.scantling.tables.PriceList;
import org.scantling.tables.Tables;
import org.scantling.tables.Yard;

/**
 * By what proposals are worked out in money and time.
 *
 * @param prices what things cost, where somebody says it
 */
record Costs(Tables tables, Optional<Yard> yard, Optional<PriceList> prices) {}
