package daylight.report.words;

import daylight.line.book.Catalogue;
import daylight.line.book.Place;
import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Says what was seen in the pipe, one column of a table at a time.
 *
 * @param catalogue tells what the quantities of a kind are
 * @param place says where a place is
 */
public record FindingWords(Words words, Catalogue catalogue, Function<Place, String> place) {

  /** What it is. */
  public String what(PlacedFinding placed) {
    return Words.capitalised(words.kind(placed.finding().kind()));
  }

  /** Where it is, or from where to where it goes. */
  public String where(PlacedFinding placed) {
    String from = place.apply(placed.from());
    Place to = placed.to();
    return to == null
        ? from
        : words.say("place.from_to", new Argument.Text(from), new Argument.Text(place.apply(to)));
  }

  /** At which clock positions, as the camera looks. */
  public Optional<String> clock(PlacedFinding placed) {
    return Optional.ofNullable(placed.finding().clock()).map(words::clockShort);
  }

  /** How large it is, as far as somebody noted that. */
  public Optional<String> size(PlacedFinding placed) {
    List<String> sizes = new ArrayList<>();
    String kind = placed.finding().kind();
    placed
        .finding()
        .quantities()
        .forEach((name, reading) -> sizes.add(size(kind, name, reading.value())));
    return sizes.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", sizes));
  }

  /** What the crew wrote beside it. */
  public Optional<String> remark(PlacedFinding placed) {
    return Optional.ofNullable(placed.finding().remark());
  }

  private String size(String kind, String name, double value) {
    String key = "quantity." + name;
    Dimension dimension =
        catalogue.find(kind).map(Catalogue.Kind::quantities).map(all -> all.get(name)).orElse(null);
    Argument size =
        dimension == null
            ? new Argument.Number(value)
            : dimension == Dimension.LENGTH
                ? new Argument.Small(value)
                : new Argument.Quantity(dimension, value);
    return words.has(key)
        ? words.say(key, size)
        : words.say("quantity.other", size, new Argument.Text(name));
  }
}
