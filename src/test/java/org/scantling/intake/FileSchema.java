package org.scantling.intake;

import com.fasterxml.classmate.ResolvedType;
import com.github.victools.jsonschema.generator.CustomDefinition;
import com.github.victools.jsonschema.generator.CustomPropertyDefinition;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaGenerationContext;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.scantling.quantity.UnitSystem;
import org.scantling.tables.Tables;
import org.scantling.words.ClosedList;
import org.scantling.words.ClosedLists;
import org.scantling.words.ListValue;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Makes the JSON schema of a kind of file from its shape record. */
final class FileSchema {
  private static final JsonMapper JSON =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final String STARTS_AS_A_NUMBER = "^\\s*-?[0-9\u00bc-\u00be\u215b-\u215e]";

  private static final String LENGTH =
      STARTS_AS_A_NUMBER + "(.*[^0-9.,\\s]2?\\s*|[0-9]*-[0-9]+ [0-9]+/[0-9]+\\s*)$";

  private static final String SLOPE =
      STARTS_AS_A_NUMBER + ".*(%|percent|pct|:|\\bin\\b|\\bto\\b|per|over|/).*$|^(level|flat)$";

  private static final ClosedLists LISTS = ClosedLists.of(Tables.load(), UnitSystem.IMPERIAL);
  private static final Map<String, String> PATHS = new TreeMap<>();

  static {
    PATHS.putAll(ListedKeys.paths(DesignFile.class));
    PATHS.putAll(ListedKeys.paths(SiteFile.class));
  }

  /** What of a piece may be said by its length instead. */
  private static final Map<String, String> PIECES =
      Map.of("headers", "overhang", "crossbeams", "overhang", "posts", "embedment");

  /** What of a group bays told one by one say by themselves. */
  private static final Map<String, String> BAYS = Map.of("walkway", "length", "posts", "bay");

  private FileSchema() {}

  static String text(Class<?> shape, String title) {
    SchemaGeneratorConfigBuilder builder =
        new SchemaGeneratorConfigBuilder(SchemaVersion.DRAFT_2020_12, OptionPreset.PLAIN_JSON)
            .with(Option.FORBIDDEN_ADDITIONAL_PROPERTIES_BY_DEFAULT, Option.PLAIN_DEFINITION_KEYS);
    builder
        .forFields()
        .withPropertyNameOverrideResolver(field -> ShapeKeys.hyphened(field.getName()))
        .withRequiredCheck(field -> entry(field).required() && !saidByBays(field))
        .withCustomDefinitionProvider(FileSchema::definition);
    ObjectNode schema = new SchemaGenerator(builder.build()).generateSchema(shape);
    ObjectNode named = NODES.objectNode().put("title", title);
    named.setAll(schema);
    return JSON.writeValueAsString(named).replace("\r\n", "\n") + "\n";
  }

  private static Entry entry(FieldScope field) {
    return field.getRawMember().getAnnotation(Entry.class);
  }

  private static CustomPropertyDefinition definition(
      FieldScope field, SchemaGenerationContext context) {
    ObjectNode node = NODES.objectNode();
    if (field.isContainerType()) {
      ArrayNode either = node.putArray("anyOf");
      ObjectNode list = either.addObject().put("type", "array").put("maxItems", 100);
      list.set("items", item(entry(field), field.getContainerItemType(), context));
      either.add(item(entry(field), field.getContainerItemType(), context));
    } else {
      node = item(entry(field), field.getType(), context);
    }
    if (field.getDeclaringType().getErasedType().equals(SiteFile.Place.class)
        && field.getName().equals("climate")) {
      node.set("anyOf", enoughClimate());
    }
    if (PIECES.containsKey(field.getName())
        && field.getDeclaringType().getErasedType().equals(DesignFile.class)) {
      ArrayNode ways = NODES.arrayNode();
      ways.add(required(PIECES.get(field.getName()))).add(required("length"));
      node.set("anyOf", ways);
    }
    if (BAYS.containsKey(field.getName()) && isTop(field)) {
      either(node, BAYS.get(field.getName()));
    }
    node.put("description", description(field));
    return new CustomPropertyDefinition(node, CustomDefinition.EXCLUDING_ATTRIBUTES);
  }

  /** What the key means and, where it takes a word of a list, what each word means. */
  private static String description(FieldScope field) {
    String key =
        field.getDeclaringType().getErasedType().getName()
            + " "
            + ShapeKeys.hyphened(field.getName());
    Optional<ClosedList> list = Optional.ofNullable(PATHS.get(key)).flatMap(LISTS::at);
    StringBuilder said = new StringBuilder(says(key));
    list.ifPresent(
        words -> {
          said.append(". ").append(words.how());
          words.values().forEach(word -> said.append("\n").append(told(word)));
        });
    return said.toString();
  }

  private static String says(String key) {
    String ofSite = ListedKeys.paths(SiteFile.class).get(key);
    return ofSite == null
        ? KeyWords.of(DesignFile.class, ListedKeys.paths(DesignFile.class).get(key))
        : KeyWords.of(SiteFile.class, ofSite);
  }

  private static String told(ListValue word) {
    return (word.value() + ": " + word.name() + ". " + word.how()).strip();
  }

  private static ObjectNode item(Entry entry, ResolvedType type, SchemaGenerationContext context) {
    if (!type.getErasedType().isRecord()) {
      return single(entry);
    }
    ObjectNode group = context.createDefinitionReference(type);
    boolean word = entry.words().length > 0 || entry.table() != TableWords.NONE;
    List<ShapeKeys.Key> keys = ShapeKeys.keys(type.getErasedType());
    if (!word && keys.size() == 1) {
      ObjectNode either = NODES.objectNode();
      either.putArray("anyOf").add(single(keys.get(0).entry())).add(group);
      return either;
    }
    if (!word) {
      // The generator fills the reference in later, and only where it is nested.
      ObjectNode only = NODES.objectNode();
      only.putArray("allOf").add(group);
      return only;
    }
    ObjectNode either = NODES.objectNode();
    either.putArray("anyOf").add(single(entry)).add(group);
    return either;
  }

  private static ObjectNode single(Entry entry) {
    ObjectNode node = NODES.objectNode();
    if (entry.words().length > 0) {
      ArrayNode words = node.put("type", "string").putArray("enum");
      List.of(entry.words()).forEach(words::add);
      return node;
    }
    return switch (entry.kind()) {
      case TEXT -> node.put("type", "string").put("pattern", "\\S").put("maxLength", 200);
      case WORD -> node.put("type", "string").put("minLength", 1);
      case COUNT, YEAR -> node.put("type", "integer");
      case BAYS -> bays(node);
      case PATHS -> paths(node);
      case DATE -> date(node);
      case ZONE -> zone(node);
      case PLACE -> node.put("type", "string").put("minLength", 1);
      case PLACE_ON_HILL ->
          quantity(node, "^\\s*crest\\s*$|" + STARTS_AS_A_NUMBER + ".*[^0-9.,\\s]2?\\s*$");
      case PERCENT -> quantity(node, SLOPE);
      case CROSS_FALL -> quantity(node, SLOPE + "|" + LENGTH);
      case LENGTH -> quantity(node, LENGTH);
      default -> quantity(node, STARTS_AS_A_NUMBER + ".*[^0-9.,\\s]2?\\s*$");
    };
  }

  /** How many, or each by its length. */
  private static ObjectNode bays(ObjectNode node) {
    ArrayNode either = node.putArray("anyOf");
    either.addObject().put("type", "integer");
    ObjectNode list =
        either.addObject().put("type", "array").put("minItems", 1).put("maxItems", 16);
    list.set("items", quantity(NODES.objectNode(), LENGTH));
    return node;
  }

  /** One file, or a few. */
  private static ObjectNode paths(ObjectNode node) {
    ArrayNode either = node.putArray("anyOf");
    either.add(path());
    ObjectNode list =
        either
            .addObject()
            .put("type", "array")
            .put("minItems", 1)
            .put("maxItems", 6)
            .put("uniqueItems", true);
    list.set("items", path());
    return node;
  }

  private static ObjectNode path() {
    return NODES.objectNode().put("type", "string").put("pattern", "\\S").put("maxLength", 200);
  }

  private static ObjectNode date(ObjectNode node) {
    ArrayNode either = node.putArray("anyOf");
    either.addObject().put("type", "string").put("pattern", "^[0-9]{4}(-[0-9]{2}){0,2}$");
    either.addObject().put("type", "integer").put("minimum", 1800).put("maximum", 2199);
    return node;
  }

  private static ObjectNode quantity(ObjectNode node, String pattern) {
    return node.put("type", "string").put("pattern", pattern);
  }

  private static ObjectNode zone(ObjectNode node) {
    ArrayNode either = node.putArray("anyOf");
    either.addObject().put("type", "integer").put("minimum", 1).put("maximum", 13);
    either.addObject().put("type", "string").put("pattern", "^(1[0-3]|[1-9])[abAB]?$");
    return node;
  }

  /** Frost, snow and wind, or a hardiness zone alone. */
  private static ArrayNode enoughClimate() {
    ArrayNode ways = NODES.arrayNode();
    ways.add(required("hardiness-zone"));
    for (String frost : List.of("frost-depth", "air-freezing-index")) {
      for (String snow : List.of("ground-snow", "snow")) {
        for (String wind : List.of("wind-speed", "wind-pressure")) {
          ways.add(required(frost, snow, wind));
        }
      }
    }
    return ways;
  }

  /** Bays told one by one say it by themselves. */
  private static boolean saidByBays(FieldScope field) {
    Class<?> group = field.getDeclaringType().getErasedType();
    boolean walk = group.equals(SiteFile.Walk.class);
    String key = BAYS.get(walk ? "walkway" : "posts");
    return (walk || group.equals(DesignFile.Posts.class)) && field.getName().equals(key);
  }

  private static boolean isTop(FieldScope field) {
    Class<?> group = field.getDeclaringType().getErasedType();
    return group.equals(SiteFile.class) || group.equals(DesignFile.class);
  }

  private static void either(ObjectNode node, String key) {
    ArrayNode ways = node.withArray("allOf").addObject().putArray("anyOf");
    ways.add(required(key));
    ObjectNode listed = ways.addObject();
    listed.putObject("properties").putObject("bays").put("type", "array");
    listed.putArray("required").add("bays");
  }

  private static ObjectNode required(String... keys) {
    ObjectNode node = NODES.objectNode();
    ArrayNode list = node.putArray("required");
    List.of(keys).forEach(list::add);
    return node;
  }
}
