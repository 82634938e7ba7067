package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.measure.Argument;
import daylight.line.measure.Mark;
import daylight.line.urgency.Occasion;
import daylight.line.urgency.TimeLimits;
import daylight.line.urgency.Urgency;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads how much time the words of a table of urgency leave. */
final class TimesReader {
  private static final String WITHIN = "within";
  private static final String AGAIN = "look-again";
  private static final List<String> UNITS = List.of("days", "weeks", "months", "years");

  private static final int MOST = 999;

  private static final Pattern WHOLE = Pattern.compile("\\d{1,3}");

  /** Any day without the ends of February, so that lengths compare as a calendar has them. */
  private static final LocalDate SOME_DAY = LocalDate.of(2001, 1, 1);

  static final Section SECTION =
      Section.named("times")
          .rows(WITHIN, times(Section.named("within-row").oneOf("urgency", Urgency.class)))
          .rows(AGAIN, times(Section.named("look-again-row").oneOf("occasion", Occasion.class)));

  private TimesReader() {}

  private static Section times(Section row) {
    Section with = row;
    for (String unit : UNITS) {
      with = with.plain(unit, Shape.Kind.NUMBER);
    }
    return with.words("source", "note").oneOf("mark", Mark.class);
  }

  /** As far as they are there and sound; what is wrong makes the fields unsound. */
  static TimeLimits read(Fields fields) {
    SortedMap<Urgency, TimeLimits.Limit> within = rows(fields, WITHIN, "urgency", Urgency.class);
    order(fields, within);
    return new TimeLimits(within, rows(fields, AGAIN, "occasion", Occasion.class));
  }

  private static <E extends Enum<E>> SortedMap<E, TimeLimits.Limit> rows(
      Fields fields, String list, String key, Class<E> of) {
    SortedMap<E, TimeLimits.Limit> rows = new TreeMap<>();
    if (!fields.has(list)) {
      return rows;
    }
    boolean sound = true;
    for (Fields row : fields.rows(list)) {
      E word = row.wantedChoice(key, of);
      TimeLimits.Limit limit = limit(row, key);
      if (limit != null && rows.putIfAbsent(word, limit) != null) {
        row.complain(RuleTrouble.ROW_TWICE, key, new Argument.Text(Section.word(word)));
      }
      if (!row.sound()) {
        sound = false;
        fields.spoil();
      }
    }
    for (E word : of.getEnumConstants()) {
      if (sound && !rows.containsKey(word)) {
        fields.complain(RuleTrouble.ROW_MISSING, list, new Argument.Text(Section.word(word)));
      }
    }
    return rows;
  }

  private static TimeLimits.@Nullable Limit limit(Fields row, String key) {
    Period time = time(row, key);
    String source = row.wantedWords("source");
    Mark mark = row.wantedChoice("mark", Mark.class);
    String note = row.words("note");
    return time == null || !row.sound() ? null : new TimeLimits.Limit(time, source, mark, note);
  }

  private static @Nullable Period time(Fields row, String key) {
    List<String> written = UNITS.stream().filter(row::has).toList();
    if (written.size() != 1) {
      row.complain(
          FileTrouble.ONE_OF,
          written.isEmpty() ? key : written.get(1),
          new Argument.Choices(UNITS));
      return null;
    }
    String unit = written.getFirst();
    String text = row.text(unit);
    if (text == null) {
      return null;
    }
    if (!WHOLE.matcher(text).matches()) {
      row.complain(RuleTrouble.NOT_WHOLE, unit, new Argument.Text(text), new Argument.Number(MOST));
      return null;
    }
    int count = Integer.parseInt(text);
    return switch (unit) {
      case "days" -> Period.ofDays(count);
      case "weeks" -> Period.ofWeeks(count);
      case "months" -> Period.ofMonths(count);
      default -> Period.ofYears(count);
    };
  }

  /** What is more urgent never has more time. */
  private static void order(Fields fields, SortedMap<Urgency, TimeLimits.Limit> within) {
    Urgency sooner = null;
    for (Urgency urgency : within.keySet()) {
      if (sooner != null && day(within, urgency).isBefore(day(within, sooner))) {
        fields.complain(
            RuleTrouble.SHORTER_THOUGH_MILDER,
            WITHIN,
            new Argument.Text(Section.word(urgency)),
            new Argument.Text(Section.word(sooner)));
      }
      sooner = urgency;
    }
  }

  private static LocalDate day(SortedMap<Urgency, TimeLimits.Limit> within, Urgency urgency) {
    TimeLimits.Limit limit = within.get(urgency);
    return limit == null ? SOME_DAY : limit.from(SOME_DAY);
  }
}
