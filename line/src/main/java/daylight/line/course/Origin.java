package daylight.line.course;

import daylight.line.book.Id;
import daylight.line.book.Priors;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What the error of one equation is made of: parts that err independently, each by its variance, in
 * any one unit. An origin without parts has no share in any figure.
 */
record Origin(List<Part> parts) {
  /** What only keeps the equations solvable. */
  static final Origin NOBODY = new Origin(List.of());

  private static final Map<Priors.Kind, Origin> PRIORS = new EnumMap<>(Priors.Kind.class);

  static {
    for (Priors.Kind kind : Priors.Kind.values()) {
      PRIORS.put(kind, of(new Source.OfPrior(kind)));
    }
  }

  /** One of them. */
  record Part(Source source, double variance) {}

  Origin {
    parts = List.copyOf(parts);
  }

  static Origin of(Source source) {
    return new Origin(List.of(new Part(source, 1)));
  }

  static Origin of(Id id, Source.Sort sort, Source.Part part) {
    return of(new Source.OfEntry(id, sort, part));
  }

  static Origin of(Priors.Kind kind) {
    return PRIORS.getOrDefault(kind, NOBODY);
  }

  /** Of several, those without variance left out. */
  static Origin of(Part... parts) {
    List<Part> some = new ArrayList<>();
    for (Part part : parts) {
      if (part.variance() > 0) {
        some.add(part);
      }
    }
    return new Origin(some);
  }

  static Part part(Source source, double sd) {
    return new Part(source, sd * sd);
  }

  static Part part(Id id, Source.Sort sort, Source.Part part, double sd) {
    return part(new Source.OfEntry(id, sort, part), sd);
  }

  static Part part(Priors.Kind kind, double sd) {
    return part(new Source.OfPrior(kind), sd);
  }
}
