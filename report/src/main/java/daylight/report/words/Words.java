package daylight.report.words;

import daylight.line.book.Finding;
import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.FilePlace;
import daylight.line.measure.Key;
import daylight.line.measure.Measured;
import daylight.line.measure.Print;
import daylight.line.measure.Printed;
import daylight.line.measure.Shown;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The door of the room: everything that is said to people, in one language and one choice of units.
 */
public final class Words {
  private static final Pattern FIELD = Pattern.compile("\\{(\\d+)(?:\\.(\\d+))?}");
  private static final Pattern PART = Pattern.compile("\\[([^]]*)]");

  private final Language language;
  private final Shown shown;
  private final Messages messages;
  private final Figures figures;
  private final Notation notation;

  private Words(Language language, Shown shown) {
    this.language = language;
    this.shown = shown;
    this.messages = Messages.read(language);
    this.figures = new Figures(messages, shown, this::within);
    this.notation = figures.notation();
  }

  /** The words of a language with quantities shown in the units chosen. */
  public static Words of(Language language, Shown shown) {
    return new Words(language, shown);
  }

  public Language language() {
    return language;
  }

  public Shown shown() {
    return shown;
  }

  /** A statement as a sentence. Refuses a key without message and a figure that is not there. */
  public String say(Statement statement) {
    return fill(statement.key().key(), statement.arguments(), true);
  }

  /** A message of our own with its figures. */
  public String say(String key, Argument... arguments) {
    return fill(key, List.of(arguments), true);
  }

  /** A word or a sentence without figures. */
  public String word(String key) {
    return messages.get(key);
  }

  /** A word or a sentence without figures. */
  public String word(Key key) {
    return messages.get(key.key());
  }

  /** Whether there is a message of that key, by itself or by count. */
  public boolean has(String key) {
    return messages.find(key).isPresent() || messages.find(key + ".other").isPresent();
  }

  /**
   * The word for a value of an enum that is no {@link Key}: its type and its name, as in {@code
   * material.cast_iron}. A type that is only called a kind or a reason goes by the one around it:
   * {@code node.access}.
   */
  public String name(Enum<?> value) {
    return messages.get(keyOf(value));
  }

  static String keyOf(Enum<?> value) {
    Class<?> type = value.getDeclaringClass();
    Class<?> outer = type.getEnclosingClass();
    boolean bare = type.getSimpleName().equals("Kind") || type.getSimpleName().equals("Reason");
    String prefix = bare && outer != null ? outer.getSimpleName() : type.getSimpleName();
    return (prefix + "." + value.name()).toLowerCase(Locale.ROOT);
  }

  /** One argument by itself, as it stands in a sentence. */
  public String figure(Argument argument) {
    return figures.show(argument);
  }

  /** A length with half of its 95 % interval. */
  public Printed length(Measured metres) {
    return notation.of(Print.length(metres, shown));
  }

  /** A length without uncertainty. */
  public String length(double metres) {
    return notation.of(Print.length(metres, shown));
  }

  /** A slope with half of its 95 % interval, rounded up. */
  public Printed slope(Measured slope) {
    return notation.of(Figures.slope(slope));
  }

  /** A number or a quantity as {@link Print} gives it, in the way of the language. */
  public String written(String printed) {
    return notation.of(printed);
  }

  /** A time of day or a position on the face of a clock, given as {@code 14:05}. */
  public String hour(String printed) {
    return notation.clock(printed);
  }

  /** The symbol of a unit, given as {@link daylight.line.measure.Unit} has it. */
  public String unit(String symbol) {
    return notation.unit(symbol);
  }

  /** Something and what is said of it: {@code Source: a book}. */
  public String named(String name, String what) {
    return messages.get("join.named").replace("{0}", name).replace("{1}", what);
  }

  /** Several things that stand side by side in a line. */
  public String beside(List<String> things) {
    return String.join(messages.get("join.semicolon"), things);
  }

  /** In the language's marks of quotation. */
  public String quoted(String text) {
    return messages.get("join.quoted").replace("{0}", text);
  }

  /** What is wrong, with file, line, column and entry as far as they are known. */
  public String complaint(Complaint complaint) {
    String sentence = fill(complaint.code().key(), complaint.arguments(), true);
    String where = where(complaint.place());
    return where.isEmpty() ? sentence : named(where, sentence);
  }

  private static String where(FilePlace place) {
    StringBuilder where = new StringBuilder();
    if (place.file() != null) {
      where.append(place.file());
      if (place.line() > 0) {
        where.append(':').append(place.line());
        where.append(place.column() > 0 ? ":" + place.column() : "");
      }
      where.append(' ');
    }
    where.append(place.path());
    return where.toString().strip();
  }

  /** A finding with its place, clock position and remark. */
  public String finding(PlacedFinding placed) {
    Finding finding = placed.finding();
    List<String> parts = new ArrayList<>();
    parts.add(
        placed.to() == null
            ? say(
                "finding.at",
                new Argument.Text(kind(finding.kind())),
                new Argument.Length(placed.from().distance()))
            : say(
                "finding.from_to",
                new Argument.Text(kind(finding.kind())),
                new Argument.Length(placed.from().distance()),
                new Argument.Length(placed.to().distance())));
    if (finding.clock() != null) {
      parts.add(clock(finding.clock()));
    }
    return capitalised(String.join(messages.get("join.comma"), parts));
  }

  /** A clock position or range, as the head looks. */
  public String clock(Finding.Clock clock) {
    return clock.from() == clock.to()
        ? say("finding.clock", new Argument.Text(hour(Print.clock(clock.from()))))
        : say(
            "finding.clock_range",
            new Argument.Text(hour(Print.clock(clock.from()))),
            new Argument.Text(hour(Print.clock(clock.to()))));
  }

  /** A clock position or range by itself. */
  public String clockShort(Finding.Clock clock) {
    String from = hour(Print.clock(clock.from()));
    return clock.from() == clock.to() ? from : from + "–" + hour(Print.clock(clock.to()));
  }

  /** A kind of finding as a noun phrase; an id that no message knows is shown as it is written. */
  public String kind(String id) {
    return messages.find("kind." + id).orElse(id);
  }

  /** A kind of finding in a word or two, for drawings. */
  public String shortKind(String id) {
    return messages.find("kind." + id + ".short").orElse(id);
  }

  /** With its first letter a capital. */
  public static String capitalised(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** A part of a sentence, whose first word stays as it is. */
  String within(String key, Argument... arguments) {
    return fill(key, List.of(arguments), false);
  }

  /** A part of a sentence, whose first word stays as it is. */
  private String within(Statement statement) {
    return fill(statement.key().key(), statement.arguments(), false);
  }

  private String fill(String key, List<Argument> arguments, boolean sentence) {
    String template = withoutEmptyParts(template(key, arguments), arguments);
    StringBuilder said = new StringBuilder();
    int done = 0;
    for (MatchResult field : FIELD.matcher(template).results().toList()) {
      Argument argument = argument(key, arguments, field);
      said.append(template, done, field.start());
      boolean first = field.start() == 0 ? sentence : opensSentence(template, field.start());
      String shown = figures.show(argument);
      Joints.join(language, said, first && isWord(argument) ? capitalised(shown) : shown);
      done = field.end();
    }
    return said.append(template, done, template.length()).toString();
  }

  /** A part in square brackets is said only when none of its lists is empty. */
  private static String withoutEmptyParts(String template, List<Argument> arguments) {
    return PART.matcher(template)
        .replaceAll(
            part -> {
              boolean silent =
                  FIELD.matcher(part.group(1)).results().anyMatch(field -> empty(arguments, field));
              return silent ? "" : Matcher.quoteReplacement(part.group(1));
            });
  }

  private static boolean empty(List<Argument> arguments, MatchResult field) {
    int at = Integer.parseInt(field.group(1));
    return at >= arguments.size()
        || (arguments.get(at) instanceof Argument.Choices choices && choices.choices().isEmpty())
        || (arguments.get(at) instanceof Argument.Either either && either.items().isEmpty())
        || (arguments.get(at) instanceof Argument.Several several && several.items().isEmpty());
  }

  private static boolean opensSentence(String template, int at) {
    return template.startsWith(". ", at - 2);
  }

  private static boolean isWord(Argument argument) {
    return argument instanceof Argument.Term
        || argument instanceof Argument.Probability
        || argument instanceof Argument.Said;
  }

  private static Argument argument(String key, List<Argument> arguments, MatchResult field) {
    int at = Integer.parseInt(field.group(1));
    if (at >= arguments.size()) {
      throw new IllegalArgumentException(
          key + ": the message needs figure " + at + ", given were " + arguments.size());
    }
    Argument argument = arguments.get(at);
    String item = field.group(2);
    return item != null && argument instanceof Argument.Several(List<Argument> items)
        ? items.get(Integer.parseInt(item))
        : argument;
  }

  private String template(String key, List<Argument> arguments) {
    for (int i = 0; i < arguments.size(); i++) {
      if (arguments.get(i) instanceof Argument.Count(long count)) {
        String one = messages.find(key + ".one").orElse(null);
        // Where one is told without its number, none of them cannot be told so.
        boolean single =
            one != null && language.isOne(count) && (count == 1 || one.contains("{" + i + "}"));
        String form = single ? one : messages.find(key + ".other").orElse(null);
        return form == null ? messages.get(key) : form;
      }
    }
    return messages.get(key);
  }
}
