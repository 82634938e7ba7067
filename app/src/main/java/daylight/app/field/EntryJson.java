package daylight.app.field;

import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import daylight.app.web.Look;
import daylight.archive.form.Tree;
import daylight.archive.store.Entered;
import daylight.archive.store.Entering;
import daylight.line.measure.Complaint;
import daylight.report.words.Words;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Entries and what became of them, to and from JSON. */
final class EntryJson {
  /** How many entries may be sent at once. */
  static final int MOST = 500;

  private static final int DEEPEST = 20;
  private static final int LONGEST_TEXT = 100_000;
  private static final Pattern SECTION = Pattern.compile("(?:[a-z]+(?:[-/][a-z]+)*)?");
  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              new JsonFactoryBuilder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(DEEPEST)
                          .maxStringLength(LONGEST_TEXT)
                          .build())
                  .build())
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .build();

  private EntryJson() {}

  /** What was sent. */
  sealed interface Sent {
    record Entries(List<Entered> entries) implements Sent {}

    /**
     * It is not what is wanted.
     *
     * @param why a key of the phrases
     * @param at where
     */
    record Misread(String why, String at) implements Sent {}
  }

  static ObjectNode object() {
    return MAPPER.createObjectNode();
  }

  static Sent read(byte[] body) {
    try {
      JsonNode entries = MAPPER.readTree(body).path("entries");
      if (!entries.isArray() || entries.isEmpty() || entries.size() > MOST) {
        return new Sent.Misread("enter.entries", Integer.toString(MOST));
      }
      List<Entered> read = new ArrayList<>();
      for (int i = 0; i < entries.size(); i++) {
        Optional<Entered> one = entered(entries.get(i));
        if (one.isEmpty()) {
          return new Sent.Misread("enter.shape", "entries[" + i + "]");
        }
        read.add(one.get());
      }
      return new Sent.Entries(read);
    } catch (JsonProcessingException e) {
      return new Sent.Misread("enter.json", place(e.getLocation()));
    } catch (IOException e) {
      return new Sent.Misread("enter.json", "1:1");
    }
  }

  /** Line and column; what is too deep has none. */
  private static String place(@Nullable JsonLocation at) {
    return at == null ? "1:1" : at.getLineNr() + ":" + at.getColumnNr();
  }

  private static Optional<Entered> entered(JsonNode node) {
    Optional<UUID> entry = Office.id(node.path("entry").asText());
    JsonNode parent = node.path("parent");
    Optional<UUID> within = Office.id(parent.asText());
    String section = node.path("section").asText();
    JsonNode base = node.path("base");
    JsonNode keys = node.path("keys");
    boolean sound =
        entry.isPresent()
            && (parent.isNull() || within.isPresent())
            && SECTION.matcher(section).matches()
            && parent.isNull() == section.isEmpty()
            && (base.isMissingNode() || (base.isInt() && base.intValue() >= 0))
            && (keys.isObject() || keys.isNull());
    return sound
        ? content(entry.get(), keys)
            .map(
                text ->
                    new Entered(
                        entry.get(),
                        within.orElse(null),
                        section,
                        base.asInt(),
                        text.isEmpty() ? null : text))
        : Optional.empty();
  }

  /** The keys with the identity first; empty text for none, nothing where they name another. */
  private static Optional<String> content(UUID entry, JsonNode keys) {
    if (keys.isNull()) {
      return Optional.of("");
    }
    JsonNode named = keys.path("id");
    if (!named.isMissingNode() && !named.asText().equals(entry.toString())) {
      return Optional.empty();
    }
    return Optional.of(keys(entry, (ObjectNode) keys).toString());
  }

  /** The keys of an entry as the archive takes them. */
  static ObjectNode keys(UUID entry, ObjectNode keys) {
    ObjectNode all = object();
    // A book says first of what version it is.
    keys.properties().stream()
        .filter(one -> one.getKey().startsWith("daylight-"))
        .forEach(one -> all.set(one.getKey(), one.getValue()));
    all.put("id", entry.toString());
    keys.properties().forEach(one -> all.putIfAbsent(one.getKey(), one.getValue()));
    return (ObjectNode) withoutNothing(all);
  }

  /** A new entry that a page of ours writes. */
  static Entered fresh(UUID entry, @Nullable UUID parent, String section, ObjectNode keys) {
    return changed(entry, parent, section, 0, keys);
  }

  /** An entry that a page of ours writes anew, upon that number. */
  static Entered changed(
      UUID entry, @Nullable UUID parent, String section, int base, ObjectNode keys) {
    return new Entered(entry, parent, section, base, keys(entry, keys).toString());
  }

  /** A key with nothing behind it counts as not written. */
  private static JsonNode withoutNothing(JsonNode node) {
    if (node instanceof ObjectNode keys) {
      ObjectNode out = object();
      keys.properties().stream()
          .filter(one -> !one.getValue().isNull())
          .forEach(one -> out.set(one.getKey(), withoutNothing(one.getValue())));
      return out;
    }
    if (node instanceof ArrayNode items) {
      ArrayNode out = MAPPER.createArrayNode();
      items.forEach(item -> out.add(withoutNothing(item)));
      return out;
    }
    return node;
  }

  static ObjectNode row(BookNow.Row row) {
    return object()
        .put("entry", row.entry().toString())
        .put("parent", row.parent() == null ? null : row.parent().toString())
        .put("section", row.section())
        .put("number", row.number())
        .set("keys", own(row.keys()));
  }

  /** The keys of an entry without its identity, to be changed and entered again. */
  static ObjectNode keys(BookNow.Row row) {
    return own(row.keys());
  }

  private static ObjectNode own(Tree.Keys keys) {
    ObjectNode out = (ObjectNode) json(keys);
    out.remove("id");
    return out;
  }

  private static JsonNode json(Tree tree) {
    return switch (tree) {
      case Tree.Text text -> TextNode.valueOf(text.text());
      case Tree.Items items -> {
        ArrayNode out = MAPPER.createArrayNode();
        items.items().forEach(item -> out.add(json(item)));
        yield out;
      }
      case Tree.Keys keys -> {
        ObjectNode out = object();
        keys.members().forEach((key, member) -> out.set(key, json(member.value())));
        yield out;
      }
    };
  }

  static ObjectNode outcome(UUID entry, Entering outcome, Look look) {
    ObjectNode out = object().put("entry", entry.toString());
    return switch (outcome) {
      case Entering.Kept(int number) -> out.put("state", "kept").put("number", number);
      case Entering.Same(int number) -> out.put("state", "same").put("number", number);
      case Entering.Clash(int number, String now) -> {
        out.put("state", "clash").put("number", number);
        yield out.set("now", now(now));
      }
      case Entering.Wrong(List<Complaint> complaints) -> {
        out.put("state", "wrong");
        ArrayNode said = out.putArray("complaints");
        Office.said(complaints, look).forEach(said::add);
        ArrayNode at = out.putArray("at");
        complaints.forEach(one -> at.add(lastKey(one.place().path())));
        yield out;
      }
      case Entering.NotWritten(var why) -> {
        out.put("state", "not-written");
        out.putArray("complaints").add(Words.of(look.language(), look.shown()).say(why));
        yield out;
      }
    };
  }

  private static @Nullable JsonNode now(@Nullable String content) {
    return content == null ? null : own(BookNow.keys(content));
  }

  /** The key that a complaint is about, for the field of a page that it belongs to. */
  static String lastKey(String path) {
    return path.substring(path.lastIndexOf('.') + 1);
  }
}
