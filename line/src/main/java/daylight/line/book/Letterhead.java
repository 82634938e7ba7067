package daylight.line.book;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Who hands a report over: what stands at its head and what goes with it, as whoever owns it wrote
 * it. Nothing is computed from it.
 *
 * @param name of the company; null for none
 * @param lines address, telephone and the like, one a line
 * @param licences their numbers, with whose they are
 * @param logo file of a picture, relative to the file of the letterhead; null for none
 * @param colour of the name and of the rule below it, as {@code #rrggbb}; null for the usual one
 * @param terms on which the work is done
 * @param warranty what is warranted
 * @param money in which estimates are written, such as {@code USD}; empty where there are none
 * @param prices what work usually costs
 */
public record Letterhead(
    @Nullable String name,
    List<String> lines,
    List<String> licences,
    @Nullable String logo,
    @Nullable String colour,
    List<String> terms,
    List<String> warranty,
    String money,
    List<Price> prices) {
  /** Nobody's. */
  public static final Letterhead NONE =
      new Letterhead(null, List.of(), List.of(), null, null, List.of(), List.of(), "", List.of());

  public Letterhead {
    lines = List.copyOf(lines);
    licences = List.copyOf(licences);
    terms = List.copyOf(terms);
    warranty = List.copyOf(warranty);
    prices = List.copyOf(prices);
  }

  /**
   * What work usually costs.
   *
   * @param kind id of the kind of finding that it mends
   * @param what the work
   * @param from the least
   * @param to the most
   */
  public record Price(String kind, String what, double from, double to) {}

  /** What it usually costs to mend a kind of finding. */
  public Optional<Price> price(String kind) {
    return prices.stream().filter(price -> price.kind().equals(kind)).findFirst();
  }
}
