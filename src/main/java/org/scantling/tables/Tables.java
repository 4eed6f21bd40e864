package org.scantling.tables;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.scantling.reasons.Question;

/**
 * All the numbers of the trade, each read when it is first asked for; safe to share between
 * threads.
 *
 * <p>Every lookup by id throws an IllegalArgumentException that names the file and the ids that it
 * has.
 */
public final class Tables {
  private final TableReader reader;
  private final Map<TableFile, Table<?>> read = new ConcurrentHashMap<>();

  private final List<Loosened> loosened;

  private Tables(TableReader reader) {
    this(reader, List.of());
  }

  private Tables(TableReader reader, List<Loosened> loosened) {
    this.reader = reader;
    this.loosened = loosened;
  }

  /**
   * The same tables, held against the standards that they follow.
   *
   * @throws TableException at a row of the house that loosens one and does not say on what basis
   */
  Tables heldToStandards() {
    Tables held = new Tables(reader, List.copyOf(reader.loosened()));
    held.read.putAll(read);
    return held;
  }

  /** The numbers of standards that a house takes to the side that is not safe. */
  public List<Loosened> loosened() {
    return loosened;
  }

  /** The tables of the program. */
  public static Tables load() {
    return new Tables(new TableReader(HouseRules.none()));
  }

  /** The tables of the program with a house's rows laid over them. */
  static Tables over(HouseRules house) {
    Tables tables = new Tables(new TableReader(house));
    for (TableFile file : house.tables().keySet()) {
      tables.table(file, file.type());
    }
    return tables;
  }

  /** The documents that sources are of, as they are cited. */
  public Set<String> documents() {
    return Set.copyOf(reader.sources().citations().values());
  }

  public Table<DesignValueRow> designValues() {
    return table(TableFile.DESIGN_VALUES, DesignValueRow.class);
  }

  public Table<AdjustmentRow> adjustmentFactors() {
    return table(TableFile.ADJUSTMENT_FACTORS, AdjustmentRow.class);
  }

  public Table<SizeRow> sizes() {
    return table(TableFile.SIZES, SizeRow.class);
  }

  public Table<StockLengthRow> stockLengths() {
    return table(TableFile.STOCK_LENGTHS, StockLengthRow.class);
  }

  public Table<SoilRow> soils() {
    return table(TableFile.SOILS, SoilRow.class);
  }

  public Table<ZoneRow> zones() {
    return table(TableFile.ZONES, ZoneRow.class);
  }

  public Table<FrostPlaceRow> frostPlaces() {
    return table(TableFile.FROST_PLACES, FrostPlaceRow.class);
  }

  public Table<FreezingIndexRow> freezingIndex() {
    return table(TableFile.FREEZING_INDEX, FreezingIndexRow.class);
  }

  public Table<VineRow> vines() {
    return table(TableFile.VINES, VineRow.class);
  }

  public Table<UserRow> users() {
    return table(TableFile.USERS, UserRow.class);
  }

  public Table<ExposureRow> exposures() {
    return table(TableFile.EXPOSURE, ExposureRow.class);
  }

  public Table<NumberRow> snow() {
    return table(TableFile.SNOW, NumberRow.class);
  }

  public Table<WindRow> wind() {
    return table(TableFile.WIND, WindRow.class);
  }

  /** The same for another place, of which the authority of this one has nothing to say. */
  public Tables elsewhere() {
    if (authority().rows().stream().allMatch(row -> row.amount() == 0)) {
      return this;
    }
    Tables other = new Tables(reader, loosened);
    other.read.putAll(read);
    other.read.put(TableFile.AUTHORITY, load().authority());
    return other;
  }

  /** What the authority of the place asks for; 0 where it says nothing. */
  public Table<NumberRow> authority() {
    return table(TableFile.AUTHORITY, NumberRow.class);
  }

  public Table<NumberRow> live() {
    return table(TableFile.LIVE, NumberRow.class);
  }

  public Table<FastenerRow> fasteners() {
    return table(TableFile.FASTENERS, FastenerRow.class);
  }

  public Table<NumberRow> thumbs() {
    return table(TableFile.THUMB, NumberRow.class);
  }

  /** Where timber is bought: as somebody says, else where it usually is. */
  public String market(Optional<String> said) {
    return said.orElseGet(() -> defaults().row("market").word());
  }

  /** Words taken where neither the site nor the base says. */
  public Table<DefaultWord> defaults() {
    return table(TableFile.DEFAULTS, DefaultWord.class);
  }

  /** What holds each joint. */
  public Table<JointRow> joints() {
    return table(TableFile.JOINTS, JointRow.class);
  }

  /**
   * What usually holds a joint beside headers of that style; empty where they have no such joint.
   */
  public Optional<JointRow> usualJoint(Question question, String headerStyle) {
    return joints().rows().stream()
        .filter(each -> each.question() == question)
        .filter(each -> each.usual() && each.fits(headerStyle))
        .findFirst();
  }

  /** What people must be told, and when. */
  public Table<CautionRow> cautions() {
    return table(TableFile.CAUTIONS, CautionRow.class);
  }

  /** What the cut list, the buying list and the set-out read. */
  public Table<NumberRow> shop() {
    return table(TableFile.SHOP, NumberRow.class);
  }

  /** What each way of climbing wants to hold on to. */
  public Table<ClimberRow> climbers() {
    return table(TableFile.CLIMBERS, ClimberRow.class);
  }

  /** How small things are packed, by what they are; what has no row is sold by the piece. */
  public Table<PackRow> packs() {
    return table(TableFile.PACKS, PackRow.class);
  }

  /** The order of work. */
  public Table<StepRow> steps() {
    return table(TableFile.STEPS, StepRow.class);
  }

  /** How long each piece of work takes. */
  public Table<WorkRow> work() {
    return table(TableFile.WORK, WorkRow.class);
  }

  /** What is tried otherwise when whole structures are compared. */
  public Table<OptionAxisRow> optionAxes() {
    return table(TableFile.OPTION_AXES, OptionAxisRow.class);
  }

  /** By what whole structures are compared, first what is asked first. */
  public Table<OptionCountRow> optionCounts() {
    return table(TableFile.OPTION_COUNTS, OptionCountRow.class);
  }

  /** What is tried beside every proposal, the first one first. */
  public Table<NearMissRow> nearMisses() {
    return table(TableFile.NEAR_MISSES, NearMissRow.class);
  }

  /** The proportions by which a structure is seen to be of the family of its base. */
  public Table<LookRow> look() {
    return table(TableFile.LOOK, LookRow.class);
  }

  /** How loads and stresses are worked, step by step. */
  public Table<CalculationRow> workings() {
    return table(TableFile.WORKINGS, CalculationRow.class);
  }

  /** What the symbols of those workings mean. */
  public Table<SymbolRow> symbols() {
    return table(TableFile.SYMBOLS, SymbolRow.class);
  }

  /** The demands along which thresholds are searched, and how. */
  public Table<DemandRow> demands() {
    return table(TableFile.DEMANDS, DemandRow.class);
  }

  /** What tells one base from another on a site, what weighs most first. */
  public Table<BaseChangeRow> baseChanges() {
    return table(TableFile.BASE_CHANGES, BaseChangeRow.class);
  }

  public Table<CheckRow> checks() {
    return table(TableFile.CHECKS, CheckRow.class);
  }

  /** What people write where a file has another word for it. */
  public Table<SynonymRow> synonyms() {
    return table(TableFile.SYNONYMS, SynonymRow.class);
  }

  /** What people ask for and what lies outside the rules. */
  public Table<EdgeRow> edges() {
    return table(TableFile.EDGES, EdgeRow.class);
  }

  /** Row of soils.csv. */
  public SoilRow soil(String id) {
    return soils().row(id);
  }

  /** Row of vines.csv. */
  public VineRow vine(String id) {
    return vines().row(id);
  }

  /** Row of users.csv. */
  public UserRow user(String id) {
    return users().row(id);
  }

  /** Row of exposure.csv. */
  public ExposureRow exposure(String id) {
    return exposures().row(id);
  }

  /** Row of sizes.csv. */
  public SizeRow size(String id) {
    return sizes().row(id);
  }

  /** Row of fasteners.csv. */
  public FastenerRow fastener(String id) {
    return fasteners().row(id);
  }

  /** Row of thumb.csv. */
  public NumberRow thumb(String id) {
    return thumbs().row(id);
  }

  /** Row of shop.csv. */
  public NumberRow shop(String id) {
    return shop().row(id);
  }

  /** Row of snow.csv. */
  public NumberRow snow(String id) {
    return snow().row(id);
  }

  /** Row of wind.csv. */
  public WindRow wind(String id) {
    return wind().row(id);
  }

  /** Row of live.csv. */
  public NumberRow live(String id) {
    return live().row(id);
  }

  /** Row of checks.csv. */
  public CheckRow check(String id) {
    return checks().row(id);
  }

  /** Row of adjustment-factors.csv. */
  public AdjustmentRow factor(String id) {
    return adjustmentFactors().row(id);
  }

  /** The adjustment factors by what they adjust. */
  public Factors factors() {
    return new Factors(adjustmentFactors());
  }

  /**
   * Row of zones.csv.
   *
   * @param zone plant hardiness zone, 1 to 13
   */
  public ZoneRow zone(int zone) {
    return zones().row(Integer.toString(zone));
  }

  /** The sizes that may serve in a role, smallest first. */
  public List<SizeRow> sizes(String role, String market) {
    return TimberLookup.sizes(sizes(), role, market);
  }

  /**
   * The reference design values of a timber: the class and, for southern pine, the width follow
   * from its nominal size.
   *
   * @throws IllegalArgumentException when the tables hold none, such as a No.3 timber
   */
  public DesignValueRow designValues(String species, String grade, SizeRow size) {
    return TimberLookup.designValues(designValues(), species, grade, size);
  }

  /**
   * The lengths in which a size is sold, shortest first.
   *
   * @throws IllegalArgumentException when the market sells none of its family
   */
  public StockLengthRow stockLengths(SizeRow size) {
    return TimberLookup.stockLengths(stockLengths(), size);
  }

  /**
   * The air-freezing index of a county or place: its own published number, else the county's row,
   * else that of the state's other counties.
   *
   * @param state full name of the state
   * @param county county or place, without the word county
   */
  public Optional<FreezingIndexRow> freezingIndex(String state, String county) {
    return SiteLookup.freezingIndex(freezingIndex(), state, county);
  }

  /**
   * Force factor of flat-sided open frames.
   *
   * @param solidRatio solid share of the outline, 0 to 0.7
   * @throws IllegalArgumentException for a side so dense that it counts as a wall
   */
  public WindRow windLattice(double solidRatio) {
    return SiteLookup.windLattice(wind(), solidRatio);
  }

  /**
   * Force factor of a wall standing on the ground; between two rows that of the shorter wall, which
   * is the greater.
   *
   * @param lengthRatio length over height, above zero
   */
  public WindRow windWall(double lengthRatio) {
    return SiteLookup.windWall(wind(), lengthRatio);
  }

  /** Reads every table now, so that a fault in any of them shows. */
  public Tables readAll() {
    for (TableFile file : TableFile.values()) {
      table(file, file.type());
    }
    return this;
  }

  @SuppressWarnings("unchecked") // each file is always read with its one type
  private <T extends TableRow> Table<T> table(TableFile file, Class<T> type) {
    Table<T> table = (Table<T>) read.get(file);
    return table != null ? table : (Table<T>) firstRead(file, type);
  }

  private synchronized <T extends TableRow> Table<?> firstRead(TableFile file, Class<T> type) {
    Table<?> table = read.get(file);
    if (table == null) {
      table = TypedRows.table(file, type, reader.rows(file));
      read.put(file, table);
    }
    return table;
  }
}
