package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** The published JSON schemas follow the shape records, and agree with the reader. */
class FileSchemaTest {
  private static final Path RESOURCES = Path.of("src/main/resources/org/scantling/schema");
  private static final int MOST_SHOWN = 5;
  private static final YAMLMapper YAML = new YAMLMapper();
  private static final JsonMapper JSON = new JsonMapper();

  private final Schema siteSchema = schema("site.schema.json");
  private final Schema designSchema = schema("design.schema.json");

  @Test
  void the_schemas_are_those_of_the_shape_records() throws IOException {
    is_as_generated("site.schema.json", FileSchema.text(SiteFile.class, "Site file"));
    is_as_generated("design.schema.json", FileSchema.text(DesignFile.class, "Design file"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "orchard-walk.yaml",
        "least.yaml",
        "metric.json",
        "trade-fractions.yaml",
        "ferry-bluff.yaml",
        "two-bases.yaml"
      })
  void good_sites_pass_the_schema(String name) {
    assertThat(siteSchema.validate(tree(Example.good(name)))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"base/gate-arbour.yaml", "base/metric-bower.yaml"})
  void good_designs_pass_the_schema(String name) {
    assertThat(designSchema.validate(tree(Example.good(name)))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bare-number.yaml",
        "bases-none.yaml",
        "climate-as-text.yaml",
        "climate-without-snow.yaml",
        "empty-values.yaml",
        "hill-half-told.yaml",
        "hill-place.yaml",
        "list-of-sites.yaml",
        "machine-without-width.yaml",
        "merge-key.yaml",
        "no-title-no-base-no-length.yaml",
        "no-walkway-no-site.yaml",
        "numbers-as-text-and-text-as-numbers.yaml",
        "one-word.yaml",
        "several-at-once.json",
        "unknown-group.yaml",
        "unknown-key.yaml",
        "unknown-preferences.yaml",
        "zone-in-words.yaml",
        "zone-out-of-the-map.yaml",
      })
  void structural_faults_of_sites_fail_the_schema_too(String name) {
    assertThat(siteSchema.validate(tree(Example.folder("malformed").resolve(name)))).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "design-braces-number.yaml",
        "design-braces-word.yaml",
        "design-count-of-a-half.yaml",
        "design-end-cut.yaml",
        "design-incomplete-posts.yaml",
        "design-is-a-site.yaml",
        "design-nothing.json",
        "design-quoted-count.yaml",
        "design-without-posts.yaml",
      })
  void structural_faults_of_designs_fail_the_schema_too(String name) {
    assertThat(designSchema.validate(tree(Example.folder("malformed").resolve(name)))).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "orchard-walk.yaml",
        "least.yaml",
        "metric.json",
        "trade-fractions.yaml",
        "ferry-bluff.yaml",
        "two-bases.yaml"
      })
  void schema_and_reader_agree_on_every_structural_change_of_a_site(String name) {
    SiteReader reader = new SiteReader(Example.VOCABULARY);
    agree(tree(Example.good(name)), siteSchema, text -> reader.read(text, List.of()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"base/gate-arbour.yaml", "base/metric-bower.yaml"})
  void schema_and_reader_agree_on_every_structural_change_of_a_design(String name) {
    DesignReader reader = new DesignReader(Example.VOCABULARY);
    agree(tree(Example.good(name)), designSchema, reader::read);
  }

  private static void agree(JsonNode good, Schema schema, Consumer<SourceText> reader) {
    List<JsonNode> changed = StructuralChanges.of(good);
    List<String> disagreements = new ArrayList<>();
    int refusals = 0;
    for (JsonNode tree : changed) {
      String json = JSON.writeValueAsString(tree);
      boolean schemaPasses = schema.validate(json, InputFormat.JSON).isEmpty();
      boolean readerPasses = passes(reader, json);
      refusals += schemaPasses ? 0 : 1;
      if (schemaPasses != readerPasses) {
        disagreements.add(
            (schemaPasses ? "only the schema" : "only the reader") + " takes " + json);
      }
    }
    assertThat(disagreements.stream().limit(MOST_SHOWN)).isEmpty();
    assertThat(refusals).isGreaterThan(20).isLessThan(changed.size() + 1);
  }

  private static boolean passes(Consumer<SourceText> reader, String json) {
    try {
      reader.accept(new SourceText("changed.json", 1, json, Example.folder("good")));
      return true;
    } catch (IntakeException refused) {
      return false;
    }
  }

  private static void is_as_generated(String name, String generated) throws IOException {
    if ("write".equals(System.getProperty("golden"))) {
      Files.writeString(RESOURCES.resolve(name), generated);
    }
    assertThat(Files.readString(RESOURCES.resolve(name))).isEqualTo(generated);
  }

  private static Schema schema(String name) {
    try {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(Files.readString(RESOURCES.resolve(name)), InputFormat.JSON);
    } catch (IOException unreadable) {
      throw new AssertionError(unreadable);
    }
  }

  private static JsonNode tree(Path file) {
    return YAML.readTree(file.toFile());
  }

  /** Each way to put one node of a tree out of shape. */
  private static final class StructuralChanges {
    private final JsonNode good;
    private final List<JsonNode> changed = new ArrayList<>();

    private StructuralChanges(JsonNode good) {
      this.good = good;
    }

    static List<JsonNode> of(JsonNode good) {
      StructuralChanges changes = new StructuralChanges(good);
      changes.at("", good);
      return changes.changed;
    }

    private void at(String pointer, JsonNode node) {
      if (node instanceof ObjectNode group) {
        change(pointer, parent -> ((ObjectNode) parent).put("unheard-of", "x"));
        group
            .properties()
            .forEach(
                member -> {
                  String key = member.getKey();
                  change(pointer, parent -> ((ObjectNode) parent).remove(key));
                  replacements()
                      .forEach(
                          value ->
                              change(pointer, parent -> ((ObjectNode) parent).set(key, value)));
                  at(pointer + "/" + key, member.getValue());
                });
      } else if (node instanceof ArrayNode list) {
        for (int i = 0; i < list.size(); i++) {
          int place = i;
          change(pointer, parent -> ((ArrayNode) parent).remove(place));
          replacements()
              .forEach(value -> change(pointer, parent -> ((ArrayNode) parent).set(place, value)));
          at(pointer + "/" + i, list.get(i));
        }
      }
    }

    private void change(String pointer, Consumer<JsonNode> change) {
      JsonNode copy = good.deepCopy();
      change.accept(copy.at(pointer));
      changed.add(copy);
    }

    private static List<JsonNode> replacements() {
      return List.of(
          JSON.readTree("7.5"),
          JSON.readTree("true"),
          JSON.readTree("null"),
          JSON.readTree("{}"),
          JSON.readTree("[]"),
          JSON.readTree("\"\""),
          JSON.readTree("{\"unheard-of\": \"6 ft\"}"),
          JSON.readTree("[7.5]"));
    }
  }
}
