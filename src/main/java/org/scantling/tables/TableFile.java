package org.scantling.tables;

/** The files of the tables folder, their columns, and whether a house may add rows to them. */
@SuppressWarnings(
    "ImmutableEnumChecker") // what is not immutable is filled by the constructor alone
enum TableFile {
  DESIGN_VALUES(
      "design-values.csv",
      DesignValueRow.class,
      true,
      "id,species,grade,member_class,width_from_in,width_to_in,bending_psi,tension_psi,shear_psi,"
          + "bearing_psi,compression_psi,elasticity_psi,stability_elasticity_psi,"
          + "specific_gravity_ratio,wet_weight_pcf"),
  ADJUSTMENT_FACTORS(
      "adjustment-factors.csv",
      AdjustmentRow.class,
      false,
      "id,factor,property,member_class,condition,nominal_thickness_from_in,"
          + "nominal_thickness_to_in,nominal_width_from_in,nominal_width_to_in,unity_up_to_psi,"
          + "value,unit"),
  SIZES(
      "sizes.csv",
      SizeRow.class,
      true,
      "id,market,member_class,thickness_in,width_in,nominal_thickness_in,nominal_width_in,roles,"
          + "rank,stock_family"),
  STOCK_LENGTHS(
      "stock-lengths.csv", StockLengthRow.class, true, "id,market,stock_family,lengths_in"),
  SOILS(
      "soils.csv",
      SoilRow.class,
      true,
      "id,words,vertical_bearing_psf,lateral_bearing_psf_per_ft,friction_ratio,cohesion_psf,"
          + "stiffening_lb_per_in3,stiffening_kind,stiffening_source,stiffening_where,"
          + "stiffening_status,"
          + "dry_density_pcf,moisture_percent,conductivity_btu_per_ft_h_f,"
          + "thermal_kind,thermal_source,thermal_where,thermal_status"),
  ZONES("zones.csv", ZoneRow.class, false, "id,frost_depth_in,ground_snow_psf,wind_mph"),
  FROST_PLACES(
      "frost-places.csv",
      FrostPlaceRow.class,
      true,
      "id,place,region,country,frost_depth_in,measured_to"),
  FREEZING_INDEX(
      "freezing-index.csv",
      FreezingIndexRow.class,
      true,
      "id,state,counties,freezing_index_f_days,bound,mean_annual_f"),
  VINES(
      "vines.csv",
      VineRow.class,
      true,
      "id,weight_class,wet_low_psf,wet_high_psf,wet_design_psf,hanging_in,canopy_fill_leaf_ratio,"
          + "canopy_fill_bare_ratio,side_fill_leaf_ratio,side_fill_bare_ratio,drag_factor,mat_in,"
          + "climbs_by,lean_in_in,woody,coldest_zone"),
  USERS(
      "users.csv",
      UserRow.class,
      true,
      "id,words,clear_width_in,headroom_in,headroom_kind,headroom_source,headroom_where,"
          + "headroom_status"),
  EXPOSURE(
      "exposure.csv",
      ExposureRow.class,
      false,
      "id,words,alpha_exponent,gradient_height_ft,kz_least_height_ft,snow_exposure_factor,"
          + "snow_kind,snow_source,snow_where,snow_status"),
  SNOW("snow.csv", NumberRow.class, false, "id,value,unit,statement"),
  WIND("wind.csv", WindRow.class, false, "id,value,unit,from_ratio,to_ratio,statement"),
  LIVE("live.csv", NumberRow.class, false, "id,value,unit,statement"),
  AUTHORITY("authority.csv", NumberRow.class, false, "id,value,unit,statement"),
  FASTENERS(
      "fasteners.csv",
      FastenerRow.class,
      true,
      "id,type,name,diameter_in,length_in,root_diameter_in,bending_yield_psi"),
  THUMB("thumb.csv", NumberRow.class, false, "id,value,unit,statement"),
  CHECKS(
      "checks.csv",
      CheckRow.class,
      false,
      "id,limit_ratio,eased_by_record,unit,nature,larger,client_words,builder_words"),
  DEFAULTS("defaults.csv", DefaultWord.class, false, "id,word,statement"),
  JOINTS(
      "joints.csv",
      JointRow.class,
      true,
      "id,question,style,fasteners,usual,way,fastener,count,thread_in,tip_in,rated_lift_lb,"
          + "rated_side_lb,rated_down_lb,rated_moment_lb_ft,rated_turn_ratio"),
  CAUTIONS("cautions.csv", CautionRow.class, true, "id,occasion,severity,text"),
  SHOP("shop.csv", NumberRow.class, false, "id,value,unit,statement"),
  CLIMBERS(
      "climbers.csv",
      ClimberRow.class,
      false,
      "id,run,apart_in,eyes_apart_in,lowest_in,wire,eye,words"),
  PACKS("packs.csv", PackRow.class, true, "id,count,words,metric_count,metric_words"),
  STEPS("steps.csv", StepRow.class, true, "id,occasion,part,text"),
  WORK("work.csv", WorkRow.class, false, "id,minutes,unit,hands,statement"),
  WORKINGS("workings.csv", CalculationRow.class, false, "id,roles,part,statement,formula,metric"),
  SYNONYMS("synonyms.csv", SynonymRow.class, true, "id,list,written,means,says"),
  EDGES("edges.csv", EdgeRow.class, true, "id,keys,words,title,because,whose"),
  SYMBOLS("symbols.csv", SymbolRow.class, false, "id,symbol,scope,part,means,unit"),
  BASE_CHANGES(
      "base-changes.csv", BaseChangeRow.class, false, "id,counts,questions,step_in,statement"),
  OPTION_AXES(
      "option-axes.csv",
      OptionAxisRow.class,
      false,
      "id,toward,most,crossed,alone,over_stated,statement"),
  OPTION_COUNTS(
      "option-counts.csv",
      OptionCountRow.class,
      false,
      "id,step,names,worth,worth_share,statement"),
  NEAR_MISSES(
      "near-misses.csv",
      NearMissRow.class,
      false,
      "id,demand,value,most,over_stated,gains,from,gain,pick,timber_more,deeper_in,statement"),
  LOOK("look.csv", LookRow.class, false, "id,of,dimension,to,statement"),
  DEMANDS(
      "demands.csv",
      DemandRow.class,
      false,
      "id,unit,step,least,most,sample_step,reach,words,limits,choice,ordered,eased_by,weight");

  /** The file that every {@code source} cell points into. */
  static final String SOURCES = "SOURCES.csv";

  private final Class<? extends TableRow> type;
  private final TableColumns layout;

  TableFile(String fileName, Class<? extends TableRow> type, boolean open, String columns) {
    this.type = type;
    this.layout = new TableColumns(fileName, open, columns);
  }

  TableColumns layout() {
    return layout;
  }

  String fileName() {
    return layout.fileName();
  }

  /** The record that a row becomes. */
  Class<? extends TableRow> type() {
    return type;
  }

  /** True where a house may add rows of its own, false where every id has its one meaning. */
  boolean open() {
    return layout.open();
  }

  /** True where every row is one number that a rule reads. */
  boolean holdsNumbers() {
    return type == NumberRow.class || type == WindRow.class || this == ADJUSTMENT_FACTORS;
  }

  String[] columns() {
    return layout.columns();
  }
}
