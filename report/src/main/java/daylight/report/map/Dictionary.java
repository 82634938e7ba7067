package daylight.report.map;

import java.util.ArrayList;
import java.util.List;

/**
 * The data dictionary as rows: one for every field of every layer, in the reader's language.
 *
 * @param layer its name, as in the files
 * @param field its name, as in the files
 */
public record Dictionary(String layer, String field, String type, String unit, String meaning) {
  /** The heads of its columns, as in the files. */
  public static final List<String> HEADS = List.of("layer", "field", "type", "unit", "meaning");

  /** All rows in the order of the layers and their fields. */
  public static List<Dictionary> of(Atlas atlas) {
    List<Dictionary> rows = new ArrayList<>();
    for (Layer layer : Layer.values()) {
      for (Field field : layer.fields()) {
        rows.add(
            new Dictionary(
                layer.id(),
                field.name(),
                atlas.type(field),
                atlas.unit(field),
                atlas.meaning(layer, field)));
      }
    }
    return rows;
  }

  /** Its cells in the order of {@link #HEADS}. */
  public List<String> cells() {
    return List.of(layer, field, type, unit, meaning);
  }
}
