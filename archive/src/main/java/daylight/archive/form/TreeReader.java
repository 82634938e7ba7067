package daylight.archive.form;

import daylight.line.measure.Argument;
import daylight.line.measure.ComplaintCode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Reads bytes as a tree of texts; whatever is wrong becomes a complaint on the desk. */
public final class TreeReader {
  /** The largest file that is read, in bytes; a book of thirty years is a tenth of it. */
  public static final int LARGEST = 8 << 20;

  static final int DEEPEST = 50;
  static final int LONGEST_TEXT = 20_000;

  private final int[] characters;
  private final Desk desk;
  private final Iterator<Event> events;
  private boolean refused;

  private TreeReader(String text, Desk desk) {
    this.characters = text.codePoints().toArray();
    this.desk = desk;
    LoadSettings settings = LoadSettings.builder().setCodePointLimit(LARGEST + 1).build();
    this.events = new Parse(settings).parseString(text).iterator();
  }

  /**
   * The tree of a text.
   *
   * @return null when the text is none that can be read; the desk then holds a complaint
   */
  public static @Nullable Tree read(byte[] bytes, Desk desk) {
    if (bytes.length > LARGEST) {
      desk.complain(FormTrouble.TOO_LARGE, Mark.NOWHERE, "", new Argument.Count(LARGEST));
      return null;
    }
    String text = Utf8.of(bytes, desk);
    if (text == null) {
      return null;
    }
    try {
      TreeReader reader = new TreeReader(text, desk);
      Tree tree = reader.document();
      return reader.refused ? null : tree;
    } catch (Refused stop) {
      return null;
    } catch (MarkedYamlEngineException e) {
      desk.complain(
          isTab(text, e) ? FormTrouble.TAB : FormTrouble.NOT_YAML,
          e.getProblemMark().map(TreeReader::mark).orElse(Mark.NOWHERE),
          "",
          new Argument.Text(String.valueOf(e.getProblem())));
      return null;
    } catch (YamlEngineException e) {
      String said = String.valueOf(e.getMessage());
      desk.complain(FormTrouble.NOT_YAML, Mark.NOWHERE, "", new Argument.Text(said));
      return null;
    }
  }

  private static boolean isTab(String text, MarkedYamlEngineException e) {
    return e.getProblemMark()
        .map(mark -> text.codePoints().skip(mark.getIndex()).findFirst().orElse(0) == '\t')
        .orElse(false);
  }

  private static Mark mark(org.snakeyaml.engine.v2.exceptions.Mark mark) {
    return new Mark(mark.getLine() + 1, mark.getColumn() + 1);
  }

  private static Mark start(Event event) {
    return event.getStartMark().map(TreeReader::mark).orElse(Mark.NOWHERE);
  }

  private @Nullable Tree document() {
    Tree tree = null;
    while (events.hasNext()) {
      Event event = events.next();
      if (event instanceof DocumentStartEvent && tree != null) {
        refuse(FormTrouble.SEVERAL_DOCUMENTS, start(event));
        return null;
      }
      if (event instanceof NodeEvent) {
        tree = node(event, 1);
      }
    }
    if (tree == null) {
      refuse(FormTrouble.EMPTY, Mark.NOWHERE);
    }
    return tree;
  }

  private Tree node(Event event, int depth) {
    Mark at = start(event);
    if (depth > DEEPEST) {
      refuse(FormTrouble.TOO_DEEP, at, new Argument.Count(DEEPEST));
      throw new Refused();
    }
    if (event instanceof NodeEvent named && named.getAnchor().isPresent()) {
      refuse(FormTrouble.ALIAS, at);
    }
    return switch (event) {
      case ScalarEvent scalar -> text(scalar, at);
      case SequenceStartEvent list -> items(list, depth, at);
      case MappingStartEvent map -> keys(map, depth, at);
      case AliasEvent alias -> new Tree.Text("", true, false, at);
      default -> throw new IllegalStateException("not a node: " + event);
    };
  }

  private Tree.Text text(ScalarEvent scalar, Mark at) {
    refuseTag(scalar.getTag(), at);
    String text = scalar.getValue();
    if (text.length() > LONGEST_TEXT) {
      refuse(FormTrouble.TEXT_TOO_LONG, at, new Argument.Count(LONGEST_TEXT));
    }
    boolean cut = scalar.isPlain() && scalar.getEndMark().map(this::lostWordsAfter).orElse(false);
    return new Tree.Text(text, scalar.isPlain(), cut, at);
  }

  /** Whether what follows on the line reads like a number sign rather than like a comment. */
  private boolean lostWordsAfter(org.snakeyaml.engine.v2.exceptions.Mark end) {
    int i = end.getIndex();
    int first = i;
    while (i < characters.length && (characters[i] == ' ' || characters[i] == '\t')) {
      i++;
    }
    return i > first
        && i + 1 < characters.length
        && characters[i] == '#'
        && !Character.isWhitespace(characters[i + 1])
        && characters[i + 1] != '#';
  }

  private Tree items(SequenceStartEvent list, int depth, Mark at) {
    refuseTag(list.getTag(), at);
    List<Tree> items = new ArrayList<>();
    for (Event next = events.next(); next instanceof NodeEvent; next = events.next()) {
      items.add(node(next, depth + 1));
    }
    return new Tree.Items(items, at);
  }

  private Tree keys(MappingStartEvent map, int depth, Mark at) {
    refuseTag(map.getTag(), at);
    Map<String, Tree.Member> members = new LinkedHashMap<>();
    for (Event next = events.next(); next instanceof NodeEvent; next = events.next()) {
      Tree key = node(next, depth + 1);
      Tree value = node(events.next(), depth + 1);
      if (!(key instanceof Tree.Text(String name, boolean plain, boolean cut, Mark where))) {
        refuse(FormTrouble.KEY_NOT_TEXT, key.at());
      } else if (members.containsKey(name)) {
        complain(FormTrouble.DUPLICATE_KEY, where, new Argument.Text(name));
      } else {
        members.put(name, new Tree.Member(where, value));
      }
    }
    return new Tree.Keys(members, at);
  }

  private void refuseTag(Optional<String> tag, Mark at) {
    if (tag.isPresent()) {
      refuse(FormTrouble.TAG, at);
    }
  }

  private void refuse(ComplaintCode code, Mark at, Argument... arguments) {
    refused = true;
    complain(code, at, arguments);
  }

  private void complain(ComplaintCode code, Mark at, Argument... arguments) {
    desk.complain(code, at, "", arguments);
  }

  /** Reading stops; the desk knows why. */
  private static final class Refused extends RuntimeException {
    Refused() {
      super(null, null, false, false);
    }
  }
}
