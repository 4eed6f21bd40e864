package org.scantling.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Turns YAML or JSON text into nodes that know their lines. Refuses what a site or design file
 * never needs and what makes files dangerous or ambiguous: anchors and aliases, tags, several
 * documents, deep nesting, keys given twice.
 */
final class TreeReader {
  private static final int DEEPEST = 12;
  private static final int MOST_SLIPS = 20;
  private static final Pattern REMARK = Pattern.compile(".*:\\s*(#\\w+)\\s*");
  private static final TokenStreamFactory YAML = new YAMLFactory();
  private static final TokenStreamFactory JSON = new JsonFactory();

  private final SourceText source;
  private final Problems problems;
  private final JsonParser parser;

  private TreeReader(SourceText source, Problems problems, JsonParser parser) {
    this.source = source;
    this.problems = problems;
    this.parser = parser;
  }

  /** The one node of a text. */
  static Node read(SourceText source, Problems problems) {
    if (source.text().isBlank()) {
      throw problems.fatal(
          source
              .start()
              .problem(
                  SourceFile.whole(),
                  ProblemPhrases.say("found.empty"),
                  ProblemPhrases.say("accepted.document")));
    }
    SourceText text = source;
    for (int slips = 0; ; slips++) {
      Problems own = new Problems();
      try (JsonParser parser = opened(text)) {
        Node node = new TreeReader(text, own, parser).document();
        problems.addAll(own);
        return node;
      } catch (JacksonException unreadable) {
        Problem problem = notWellFormed(source, unreadable);
        int near = problem.line().orElse(1) - source.firstLine() + 1;
        Optional<SyntaxRepair.Mended> mended =
            slips < MOST_SLIPS ? SyntaxRepair.of(text, line(unreadable), near) : Optional.empty();
        if (mended.isEmpty()) {
          throw problems.fatal(problem);
        }
        problems.add(
            source
                .start()
                .at(mended.get().line() + source.firstLine() - 1)
                .problem(problem.field(), problem.found(), problem.accepted())
                .withAdvice(mended.get().advice()));
        text = mended.get().text();
      } catch (IntakeException fatal) {
        problems.addAll(fatal.problems());
        throw new IntakeException(problems.all());
      }
    }
  }

  /** The line, counted from 1, at which the parser gives up; 0 where it does not. */
  static int stopsAt(SourceText source) {
    try (JsonParser parser = opened(source)) {
      new TreeReader(source, new Problems(), parser).document();
      return 0;
    } catch (JacksonException unreadable) {
      return line(unreadable);
    } catch (IntakeException otherwise) {
      return 0;
    }
  }

  private static int line(JacksonException unreadable) {
    return unreadable.getLocation() == null ? 1 : Math.max(unreadable.getLocation().getLineNr(), 1);
  }

  private static JsonParser opened(SourceText source) {
    TokenStreamFactory format = source.isJson() ? JSON : YAML;
    return format.createParser(ObjectReadContext.empty(), new WholeSigns(source.text()));
  }

  /** The keys of a file that must be a group of keys. */
  static Node.Group readGroup(SourceText source, Problems problems) {
    Node node = read(source, problems);
    if (node instanceof Node.Group group) {
      return group;
    }
    throw problems.fatal(
        node.origin()
            .problem(SourceFile.whole(), node.words(), ProblemPhrases.say("accepted.title")));
  }

  private static Problem notWellFormed(SourceText source, JacksonException unreadable) {
    ParserComplaint complaint = ParserComplaint.of(unreadable);
    String format = source.isJson() ? "JSON" : "YAML";
    return Origin.line(source.name(), complaint.line() + source.firstLine() - 1)
        .problem(
            SourceFile.whole(),
            ProblemPhrases.say("found.malformed", "format", format, "why", complaint.words()),
            ProblemPhrases.say("accepted.well-formed", "format", format));
  }

  private Node document() {
    JsonToken token = parser.nextToken();
    if (token == null) {
      throw problems.fatal(
          source
              .start()
              .problem(
                  SourceFile.whole(),
                  ProblemPhrases.say("found.empty"),
                  ProblemPhrases.say("accepted.document")));
    }
    Node node = node(token, "", 0);
    if (parser.nextToken() != null) {
      throw problems.fatal(
          here()
              .problem(
                  SourceFile.whole(),
                  ProblemPhrases.say("found.second-document"),
                  ProblemPhrases.say("accepted.one-document")));
    }
    return node;
  }

  private Node node(JsonToken token, String path, int depth) {
    refuseAnchorsAndTags(token, path);
    if (depth > DEEPEST) {
      throw problems.fatal(
          here()
              .problem(
                  field(path),
                  ProblemPhrases.say("found.deep"),
                  ProblemPhrases.say("accepted.depth", "deepest", String.valueOf(DEEPEST))));
    }
    Origin origin = here();
    return switch (token) {
      case START_OBJECT -> new Node.Group(origin, members(path, depth));
      case START_ARRAY -> new Node.Items(origin, items(path, depth));
      case VALUE_NULL -> new Node.Scalar(origin, remark(), Node.Form.EMPTY);
      case VALUE_TRUE, VALUE_FALSE -> new Node.Scalar(origin, parser.getString(), Node.Form.TRUTH);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
          new Node.Scalar(origin, parser.getString(), Node.Form.NUMBER);
      default -> new Node.Scalar(origin, parser.getString(), Node.Form.TEXT);
    };
  }

  /** What a number sign hides where a value should stand: {@code grade: #2}. */
  private String remark() {
    if (source.isJson()) {
      return "";
    }
    int line = Math.max(parser.currentTokenLocation().getLineNr(), 1);
    return source
        .text()
        .lines()
        .skip(line - 1L)
        .findFirst()
        .map(REMARK::matcher)
        .filter(Matcher::matches)
        .map(found -> found.group(1))
        .orElse("");
  }

  private Map<String, Node.Member> members(String path, int depth) {
    Map<String, Node.Member> members = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      Origin origin = here();
      String below = path.isEmpty() ? key : path + "." + key;
      refuseAnchor(below);
      Node.Member earlier = members.get(key);
      Node value = node(parser.nextToken(), below, depth + 1);
      if (earlier == null) {
        members.put(key, new Node.Member(origin, value));
      } else {
        String found = ProblemPhrases.say("found.key-twice", "key", ProblemPhrases.shortened(key));
        problems.add(
            origin
                .problem(field(below), found, ProblemPhrases.say("accepted.once"))
                .withAdvice(
                    ProblemPhrases.say(
                        "advice.twice", "line", String.valueOf(earlier.key().line().orElse(1)))));
      }
    }
    return members;
  }

  private List<Node> items(String path, int depth) {
    List<Node> items = new ArrayList<>();
    JsonToken token = parser.nextToken();
    while (token != JsonToken.END_ARRAY) {
      items.add(node(token, path + "[" + items.size() + "]", depth + 1));
      token = parser.nextToken();
    }
    return items;
  }

  private void refuseAnchorsAndTags(JsonToken token, String path) {
    if (source.isJson()) {
      return;
    }
    if (token == JsonToken.VALUE_EMBEDDED_OBJECT || parser.getTypeId() != null) {
      throw problems.fatal(
          here()
              .problem(
                  field(path),
                  ProblemPhrases.say("found.tag"),
                  ProblemPhrases.say("accepted.no-tag")));
    }
    refuseAnchor(path);
  }

  /** Jackson shows no anchor on a single value; without aliases such an anchor does nothing. */
  private void refuseAnchor(String path) {
    if (!source.isJson() && (parser.getObjectId() != null || isAlias())) {
      throw problems.fatal(
          here()
              .problem(
                  field(path),
                  ProblemPhrases.say("found.anchor"),
                  ProblemPhrases.say("accepted.no-anchor")));
    }
  }

  private boolean isAlias() {
    return parser instanceof YAMLParser yaml && yaml.isCurrentAlias();
  }

  private static String field(String path) {
    return path.isEmpty() ? SourceFile.whole() : ProblemPhrases.shortened(path);
  }

  private Origin here() {
    int line = parser.currentTokenLocation().getLineNr();
    return Origin.line(source.name(), Math.max(line, 1) + source.firstLine() - 1);
  }
}
