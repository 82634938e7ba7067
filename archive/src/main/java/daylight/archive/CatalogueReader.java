package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.line.book.Catalogue;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads a catalogue kind by kind. */
final class CatalogueReader {
  /** The keys of every finding, which no kind may take for a particular of its own. */
  private static final Set<String> TAKEN = BookShape.FINDING.keys().keySet();

  private CatalogueReader() {}

  static Catalogue read(Fields fields, @Nullable Catalogue base) {
    Map<String, Catalogue.Kind> kinds = new LinkedHashMap<>();
    if (base != null) {
      base.kinds().forEach(kind -> kinds.put(kind.id(), kind));
    }
    Map<String, Catalogue.Kind> own = new LinkedHashMap<>();
    for (Fields row : fields.rows("kinds")) {
      Catalogue.Kind kind = kind(row);
      if (row.sound() && own.put(kind.id(), kind) != null) {
        row.complain(FormTrouble.DUPLICATE_KEY, "id", new Argument.Text(kind.id()));
      }
    }
    kinds.putAll(own);
    return new Catalogue(new ArrayList<>(kinds.values()));
  }

  private static Catalogue.Kind kind(Fields row) {
    String id = row.wantedWords("id");
    List<String> words = row.texts("words");
    if (words.stream().anyMatch(TAKEN::contains)) {
      row.complain(FormTrouble.DUPLICATE_KEY, "words", new Argument.Text(id));
    }
    return new Catalogue.Kind(
        id,
        row.wantedChoice("bears", Catalogue.Bears.class),
        row.choice("hazard", Catalogue.Hazard.class, Catalogue.Hazard.NONE),
        row.yes("stretch", false),
        quantities(row),
        words,
        says(row),
        row.words("symbol", id),
        row.words("letters-unchecked"));
  }

  private static Map<String, List<String>> says(Fields row) {
    Map<String, List<String>> says = new LinkedHashMap<>();
    Fields part = row.part("says");
    if (part != null) {
      part.written().forEach(word -> says.put(word, part.texts(word)));
    }
    return says;
  }

  private static Map<String, Dimension> quantities(Fields row) {
    Map<String, Dimension> quantities = new LinkedHashMap<>();
    Fields part = row.part("quantities");
    if (part == null) {
      return quantities;
    }
    for (String name : part.written()) {
      if (TAKEN.contains(name)) {
        part.complain(FormTrouble.DUPLICATE_KEY, name, new Argument.Text(name));
      }
      quantities.put(name, part.wantedChoice(name, Dimension.class));
    }
    return quantities;
  }
}
