package daylight.archive.form;

import daylight.line.measure.Argument;
import daylight.line.measure.ComplaintCode;
import daylight.line.measure.FilePlace;
import daylight.line.measure.Nearest;
import daylight.line.measure.Reading;
import daylight.line.measure.Refusal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The keys of one section, read one by one as what they are meant to be.
 *
 * <p>Whatever does not fit is a complaint and makes the fields {@linkplain #sound() unsound}. The
 * methods named {@code wanted…} then return a stand-in of the right type, so that reading goes on
 * and every other complaint is found too; a row that is not sound must be dropped by the caller. A
 * key with nothing behind it counts as not written.
 */
public final class Fields {
  private static final Reading STAND_IN = new Reading(1, null, "?");

  private final Section section;
  private final Tree.Keys keys;
  private final String path;
  private final Desk desk;
  private boolean sound = true;

  /** Opens a section and complains of every key that it does not know. */
  public Fields(Section section, Tree.Keys keys, String path, Desk desk) {
    this.section = section;
    this.keys = keys;
    this.path = path;
    this.desk = desk;
    if (section.others() == null) {
      keys.members().keySet().stream()
          .filter(key -> !section.keys().containsKey(key))
          .forEach(this::unknown);
    }
  }

  /** Complains of a key that is not known here. */
  public void unknown(String key) {
    unknown(key, section.keys().keySet());
  }

  /** Complains of a key that is none of these. */
  public void unknown(String key, Set<String> known) {
    sound = false;
    Optional<String> near = desk.full() ? Optional.empty() : Nearest.of(key, known);
    desk.complain(
        FormTrouble.UNKNOWN_KEY,
        keyPlace(key),
        List.of(new Argument.Text(key), new Argument.Choices(near.stream().toList())));
  }

  /** Whether nothing was wrong so far with what stands directly in this section. */
  public boolean sound() {
    return sound;
  }

  /** Notes that something within this section is wrong, so that it counts as unsound. */
  public void spoil() {
    sound = false;
  }

  /** A text that is a quantity of a special kind; the complaint names the reason. */
  public void refuse(
      String key, String text, String kind, Refusal reason, List<String> suggestions) {
    Amounts.refuse(this, key, text, kind, reason, suggestions);
  }

  /** The keys written here, in order. */
  public Set<String> written() {
    return keys.members().keySet();
  }

  /** Whether something stands at a key. */
  public boolean has(String key) {
    return tree(key) != null;
  }

  /** Where this section begins. */
  public FilePlace place() {
    return desk.place(keys.at(), path);
  }

  /** Where what stands at a key begins; where the section begins when nothing does. */
  public FilePlace place(String key) {
    Tree.Member member = keys.members().get(key);
    return desk.place(member == null ? keys.at() : member.value().at(), inside(path, key));
  }

  private FilePlace keyPlace(String key) {
    Tree.Member member = keys.members().get(key);
    return desk.place(member == null ? keys.at() : member.key(), inside(path, key));
  }

  private static String inside(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  /** Complains of what stands at a key. */
  public void complain(ComplaintCode code, String key, Argument... arguments) {
    complainAt(place(key), code, arguments);
  }

  private void complainAt(FilePlace place, ComplaintCode code, Argument... arguments) {
    sound &= code.gravity() != daylight.line.measure.Gravity.STOPS;
    desk.complain(code, place, List.of(arguments));
  }

  /** What stands at a key, as it was written; null when nothing does. */
  public @Nullable Tree tree(String key) {
    section.at(key);
    Tree.Member member = keys.members().get(key);
    return member == null || isNothing(member.value()) ? null : member.value();
  }

  private static boolean isNothing(Tree tree) {
    return tree instanceof Tree.Text(String text, boolean plain, boolean cut, Mark at)
        && plain
        && text.isEmpty();
  }

  /** The text at a key; null when there is none, or when it is not a text. */
  public @Nullable String text(String key) {
    Tree tree = tree(key);
    return tree == null ? null : text(tree, place(key));
  }

  private @Nullable String text(Tree tree, FilePlace place) {
    if (tree instanceof Tree.Text(String text, boolean plain, boolean cut, Mark at)) {
      return text;
    }
    wrongShape(place, "text");
    return null;
  }

  private void wrongShape(FilePlace place, String expected) {
    complainAt(place, FormTrouble.WRONG_SHAPE, new Argument.Term("form.shape." + expected));
  }

  /** Words at a key; null when there are none. Words lost to a comment are doubted. */
  public @Nullable String words(String key) {
    Tree tree = tree(key);
    return tree == null ? null : words(tree, place(key));
  }

  private @Nullable String words(Tree tree, FilePlace place) {
    String text = text(tree, place);
    if (text == null) {
      return null;
    }
    if (tree instanceof Tree.Text(String t, boolean plain, boolean cut, Mark at) && cut) {
      complainAt(place, FormTrouble.CUT_BY_COMMENT, new Argument.Text(text));
    }
    if (text.isBlank()) {
      complainAt(place, FormTrouble.BLANK);
      return null;
    }
    return text;
  }

  /** Words at a key, or others when there are none. */
  public String words(String key, String otherwise) {
    String words = words(key);
    return words == null ? otherwise : words;
  }

  /** Words at a key that must be there. */
  public String wantedWords(String key) {
    String words = words(key);
    return words == null ? missing(key, "?") : words;
  }

  private <T> T missing(String key, T standIn) {
    if (!has(key)) {
      complain(FormTrouble.MISSING, key, new Argument.Text(key));
    }
    return standIn;
  }

  /** Yes or no at a key. */
  public boolean yes(String key, boolean otherwise) {
    String text = text(key);
    if (text == null) {
      return otherwise;
    }
    return switch (text) {
      case "yes", "true" -> true;
      case "no", "false" -> false;
      default -> notChosen(key, text, List.of("yes", "no"), otherwise);
    };
  }

  /** One word out of an enum's; null when none is written. */
  public <E extends Enum<E>> @Nullable E choice(String key, Class<E> type) {
    String text = text(key);
    if (text == null) {
      return null;
    }
    for (E constant : type.getEnumConstants()) {
      if (Section.word(constant).equals(text)) {
        return constant;
      }
    }
    return notChosen(key, text, Section.words(type), null);
  }

  /** One word out of an enum's, or another when none is written. */
  public <E extends Enum<E>> E choice(String key, Class<E> type, E otherwise) {
    E chosen = choice(key, type);
    return chosen == null ? otherwise : chosen;
  }

  /** One word out of an enum's that must be there. */
  public <E extends Enum<E>> E wantedChoice(String key, Class<E> type) {
    E chosen = choice(key, type);
    return chosen == null ? missing(key, type.getEnumConstants()[0]) : chosen;
  }

  /** Complains that a text is none of the words known, the likeliest first. */
  public <T extends @Nullable Object> T notChosen(
      String key, String text, List<String> known, T standIn) {
    List<String> choices = new ArrayList<>(known);
    Nearest.of(text, known)
        .ifPresent(
            near -> {
              choices.remove(near);
              choices.addFirst(near);
            });
    complain(FormTrouble.NOT_A_CHOICE, key, new Argument.Text(text), new Argument.Choices(choices));
    return standIn;
  }

  /** A day at a key; null when none is written. */
  public @Nullable LocalDate date(String key) {
    return parsed(key, Texts::date, FormTrouble.NOT_A_DATE);
  }

  /** An identity at a key; null when none is written. */
  public @Nullable UUID uuid(String key) {
    return parsed(key, Texts::uuid, FormTrouble.NOT_AN_ID);
  }

  /** A plain decimal number between two others at a key; null when none is written. */
  public @Nullable Double number(String key, double least, double most) {
    return parsed(
        key,
        text -> Texts.number(text, least, most),
        FormTrouble.NOT_A_NUMBER,
        new Argument.Number(least),
        new Argument.Number(most));
  }

  private <T> @Nullable T parsed(
      String key, Function<String, Optional<T>> parser, FormTrouble trouble, Argument... more) {
    String text = text(key);
    if (text == null) {
      return null;
    }
    Optional<T> value = parser.apply(text);
    if (value.isEmpty()) {
      List<Argument> arguments = new ArrayList<>(List.of(new Argument.Text(text)));
      arguments.addAll(List.of(more));
      complain(trouble, key, arguments.toArray(Argument[]::new));
    }
    return value.orElse(null);
  }

  /** A quantity at a key, of the dimension its shape says; null when none is written. */
  public @Nullable Reading reading(String key) {
    if (section.at(key) instanceof Shape.Amount amount) {
      return reading(key, amount);
    }
    throw new IllegalArgumentException(section.name() + ": " + key + " is not a quantity");
  }

  /** A quantity that must be there. */
  public Reading wantedReading(String key) {
    Reading reading = reading(key);
    return reading == null ? missing(key, STAND_IN) : reading;
  }

  /** A quantity at a key that only the entry's kind gives a shape to. */
  public @Nullable Reading reading(String key, Shape.Amount amount) {
    Tree tree = tree(key);
    return tree == null ? null : new Amounts(amount, this, key).read(tree);
  }

  /** The keys at a key; null when there are none. */
  public @Nullable Fields part(String key) {
    return part(key, section.at(key));
  }

  private @Nullable Fields part(String key, Shape shape) {
    Tree tree = tree(key);
    return tree == null ? null : open(tree, shape, place(key));
  }

  private @Nullable Fields open(Tree tree, Shape shape, FilePlace place) {
    if (tree instanceof Tree.Keys members) {
      return new Fields(sectionOf(shape), members, place.path(), desk);
    }
    wrongShape(place, "keys");
    return null;
  }

  private static Section sectionOf(Shape shape) {
    return switch (shape) {
      case Shape.Part(Section section) -> section;
      case Shape.Either(List<Shape> shapes) ->
          shapes.stream()
              .filter(Shape.Part.class::isInstance)
              .map(Fields::sectionOf)
              .findFirst()
              .orElseThrow();
      default -> throw new IllegalArgumentException("not a section: " + shape);
    };
  }

  /** The sections of the list at a key. */
  public List<Fields> rows(String key) {
    Shape item = itemShape(key);
    List<Fields> rows = new ArrayList<>();
    eachItem(
        key,
        (tree, place) -> {
          Fields row = open(tree, item, place);
          if (row != null) {
            rows.add(row);
          }
        });
    return rows;
  }

  /** The texts of the list at a key. */
  public List<String> texts(String key) {
    List<String> texts = new ArrayList<>();
    eachItem(
        key,
        (tree, place) -> {
          String text = words(tree, place);
          if (text != null) {
            texts.add(text);
          }
        });
    return texts;
  }

  private Shape itemShape(String key) {
    if (section.at(key) instanceof Shape.Rows(Shape item)) {
      return item;
    }
    throw new IllegalArgumentException(section.name() + ": " + key + " is not a list");
  }

  /** Hands over each item of the list at a key with its place. */
  public void eachItem(String key, BiConsumer<Tree, FilePlace> reader) {
    Tree tree = tree(key);
    if (tree instanceof Tree.Items(List<Tree> items, Mark at)) {
      for (int i = 0; i < items.size(); i++) {
        Tree item = items.get(i);
        reader.accept(item, desk.place(item.at(), inside(path, key) + "[" + i + "]"));
      }
    } else if (tree != null) {
      wrongShape(place(key), "list");
    }
  }

  /** The words of an item, or the section it opens. */
  public @Nullable Fields item(Tree tree, FilePlace place, String key) {
    return open(tree, itemShape(key), place);
  }

  /** Whether keys stand at a key. */
  public boolean hasKeys(String key) {
    return tree(key) instanceof Tree.Keys;
  }

  /** Where every key stands, and every key within: {@code end.cable}, {@code lifts[0].by}. */
  public Map<String, FilePlace> places() {
    return new PlacesWithin(desk, path).of(keys);
  }

  /** The desk on which this is read. */
  public Desk desk() {
    return desk;
  }
}
