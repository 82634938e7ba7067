package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Tree;
import daylight.line.measure.Argument;
import daylight.line.measure.FilePlace;
import daylight.line.survey.Correlated;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads the covariances of a network file, in square metres and square radians. */
final class CovarianceReader {
  private static final double LARGEST = 1e12;

  /** By label: the standard deviations of its components. */
  private final Map<String, List<Double>> sds = new HashMap<>();

  private final List<Group> groups = new ArrayList<>();

  /** Labels with their common matrix, and the row of the file that holds them. */
  private record Group(Fields row, List<String> labels, List<List<Double>> matrix) {}

  /**
   * @param widths by label: how many components the observation has
   */
  CovarianceReader(List<Fields> rows, Map<String, Integer> widths) {
    for (Fields row : rows) {
      Group group = group(row, widths);
      if (group != null) {
        groups.add(group);
        int next = 0;
        for (String label : group.labels) {
          List<Double> own = new ArrayList<>();
          for (int i = 0; i < widths.getOrDefault(label, 0); i++, next++) {
            own.add(StrictMath.sqrt(Math.max(group.matrix.get(next).get(next), 0)));
          }
          if (sds.put(label, own) != null) {
            row.complain(NetworkTrouble.TWICE, "of", new Argument.Text(label));
          }
        }
      }
    }
  }

  private static @Nullable Group group(Fields row, Map<String, Integer> widths) {
    List<String> labels = row.texts("of");
    int size = 0;
    for (String label : labels) {
      if (!widths.containsKey(label)) {
        row.complain(NetworkTrouble.UNKNOWN_LABEL, "of", new Argument.Text(label));
      }
      size += widths.getOrDefault(label, 0);
    }
    for (String key : List.of("of", "matrix")) {
      if (!row.has(key)) {
        row.complain(FormTrouble.MISSING, key, new Argument.Text(key));
      }
    }
    List<List<Double>> matrix = matrix(row);
    int wanted = size;
    if (row.sound()
        && (size == 0
            || matrix.size() != size
            || matrix.stream().anyMatch(line -> line.size() != wanted))) {
      row.complain(NetworkTrouble.MATRIX_SIZE, "matrix", new Argument.Count(size));
    }
    return row.sound() ? new Group(row, labels, matrix) : null;
  }

  private static List<List<Double>> matrix(Fields row) {
    List<List<Double>> matrix = new ArrayList<>();
    row.eachItem(
        "matrix",
        (tree, place) -> {
          List<Double> line = new ArrayList<>();
          if (tree instanceof Tree.Items items) {
            items.items().forEach(item -> line.add(number(row, item, place)));
          } else {
            row.desk()
                .complain(
                    FormTrouble.WRONG_SHAPE, place, List.of(new Argument.Term("form.shape.list")));
            row.spoil();
          }
          matrix.add(line);
        });
    return matrix;
  }

  /** A plain number, or one with a power of ten. */
  private static double number(Fields row, Tree item, FilePlace line) {
    String text = item instanceof Tree.Text found ? found.text() : "";
    if (text.matches("[-+]?\\d{1,12}(\\.\\d{1,40})?([eE][-+]?\\d{1,2})?")) {
      double value = Double.parseDouble(text);
      if (Math.abs(value) <= LARGEST) {
        return value;
      }
    }
    row.desk()
        .complain(
            FormTrouble.NOT_A_NUMBER,
            item.at(),
            line.path(),
            new Argument.Text(text),
            new Argument.Number(-LARGEST),
            new Argument.Number(LARGEST));
    row.spoil();
    return 0;
  }

  /** The standard deviations of an observation; null where its own row must say them. */
  @Nullable List<Double> sds(String label) {
    return sds.get(label);
  }

  /** The covariances, once the components of every observation are known. */
  List<Correlated> correlated(Map<String, List<Correlated.Component>> components) {
    List<Correlated> correlated = new ArrayList<>();
    for (Group group : groups) {
      List<Correlated.Component> of =
          group.labels.stream()
              .flatMap(label -> components.getOrDefault(label, List.of()).stream())
              .toList();
      if (!group.row.sound() || of.size() != group.matrix.size()) {
        continue;
      }
      switch (Correlated.flaw(group.matrix)) {
        case NONE -> correlated.add(new Correlated(of, group.matrix));
        case NOT_SYMMETRIC -> group.row.complain(NetworkTrouble.NOT_SYMMETRIC, "matrix");
        case NOT_POSITIVE -> group.row.complain(NetworkTrouble.NOT_POSITIVE, "matrix");
      }
    }
    return correlated;
  }
}
