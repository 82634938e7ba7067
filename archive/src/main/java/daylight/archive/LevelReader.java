package daylight.archive;

import daylight.archive.form.Fields;
import daylight.line.book.Id;
import daylight.line.book.Level;
import daylight.line.measure.Argument;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads measurements of height. */
final class LevelReader {
  private static final List<String> MEASURED = List.of("rod", "height", "rise");

  private final Clerk clerk;

  LevelReader(Clerk clerk) {
    this.clerk = clerk;
  }

  List<Level> levels(Fields visit) {
    List<Level> levels = new ArrayList<>();
    for (Fields row : visit.rows("levels")) {
      Id id = clerk.name(row, "level", "level-");
      List<String> measured = MEASURED.stream().filter(row::has).toList();
      if (measured.size() == 1) {
        clerk.keep(levels, row, level(row, id, measured.getFirst()));
      } else {
        String key = measured.isEmpty() ? "label" : measured.get(1);
        row.complain(FileTrouble.WHICH_LEVEL, key, new Argument.Choices(MEASURED));
      }
    }
    return levels;
  }

  private static Level level(Fields row, Id id, String measured) {
    return switch (measured) {
      case "rod" ->
          new Level.Rod(id, row.wantedWords("set-up"), mark(row), row.wantedReading("rod"));
      case "height" -> new Level.Height(id, mark(row), row.wantedReading("height"));
      default -> new Level.Rise(id, mark(row, "from"), mark(row, "to"), row.wantedReading("rise"));
    };
  }

  private static Level.Mark mark(Fields row, String key) {
    @Nullable Fields part = row.part(key);
    if (part == null) {
      return new Level.Mark(row.wantedWords(key), Level.Part.GROUND);
    }
    Level.Mark mark = mark(part);
    if (!part.sound()) {
      row.spoil();
    }
    return mark;
  }

  private static Level.Mark mark(Fields fields) {
    return new Level.Mark(
        fields.wantedWords("of"), fields.choice("part", Level.Part.class, Level.Part.GROUND));
  }
}
