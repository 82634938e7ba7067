package daylight.report.view;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.report.draw.Spot;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The table by which a page moves its cursor, as JSON: a column for each figure, a row for each
 * sample. Words that repeat stand once and are named by their number.
 */
public final class CursorTable {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final int TENTHS = 1;
  private static final int HUNDREDTHS = 2;

  private final Views views;
  private final Map<String, Integer> words = new LinkedHashMap<>();

  private CursorTable(Views views) {
    this.views = views;
  }

  /** The table of a line, with the recordings that go along it. */
  public static String json(Views views, List<Ride> rides) {
    return new CursorTable(views).write(rides).toString();
  }

  /**
   * The same without recordings, to stand within an element of a page: no character of it means
   * anything there, in HTML or in XML.
   */
  public static String inPage(Views views) {
    return json(views, List.of())
        .replace("&", "\\u0026")
        .replace("<", "\\u003c")
        .replace(">", "\\u003e");
  }

  private ObjectNode write(List<Ride> rides) {
    ObjectNode out = MAPPER.createObjectNode();
    List<Sample> samples = views.samples();
    ArrayNode routes = out.putArray("routes");
    for (Views.Stretch stretch : views.stretches()) {
      routes
          .addObject()
          .put("says", stretch.route().from() + " → " + stretch.route().to())
          .put("from", stretch.from())
          .put("to", stretch.to());
    }
    ArrayNode reach = out.putArray("reach");
    ArrayNode distance = out.putArray("distance");
    ArrayNode where = out.putArray("where");
    ArrayNode depth = out.putArray("depth");
    ArrayNode within = out.putArray("within");
    ArrayNode seen = out.putArray("seen");
    for (Sample sample : samples) {
      reach.add(word(sample.place().reach()));
      number(distance, sample.place().distance(), HUNDREDTHS);
      where.add(sample.where());
      depth.add(sample.depth().map(this::word).orElse(-1));
      within.add(sample.within().map(this::word).orElse(-1));
      seen.add(
          word(
              views
                  .subject()
                  .words()
                  .word("draw.strip.seen." + sample.seen().name().toLowerCase(Locale.ROOT))));
    }
    ArrayNode faces = out.putArray("faces");
    for (Face face : views.showing()) {
      faces.add(face.name());
      spots(out.putObject(face.name()), face.spots());
    }
    ArrayNode things = out.putArray("things");
    for (Thing thing : views.things()) {
      ObjectNode one =
          things
              .addObject()
              .put("id", thing.id())
              .put("says", thing.says())
              .put("from", thing.from())
              .put("to", thing.to());
      if (!thing.picture().isEmpty()) {
        one.put("picture", thing.picture());
      }
    }
    rides(out.putArray("rides"), rides);
    ArrayNode said = out.putArray("words");
    words.keySet().forEach(said::add);
    return out;
  }

  private int word(String text) {
    Integer known = words.putIfAbsent(text, words.size());
    return known == null ? words.size() - 1 : known;
  }

  /**
   * The columns of a drawing, from the first row that it shows to the last; one that is the same
   * all along is written once.
   */
  private static void spots(ObjectNode into, List<Optional<Spot>> all) {
    int first = 0;
    int end = all.size();
    while (all.get(first).isEmpty()) {
      first++;
    }
    while (all.get(end - 1).isEmpty()) {
      end--;
    }
    List<Optional<Spot>> spots = all.subList(first, end);
    into.put("first", first).put("rows", spots.size());
    column(into.putArray("x"), spots, Spot::x);
    column(into.putArray("y"), spots, Spot::y);
    column(into.putArray("from"), spots, Spot::from);
    column(into.putArray("to"), spots, Spot::to);
    column(into.putArray("wide"), spots, Spot::wide);
    column(into.putArray("high"), spots, Spot::high);
    column(into.putArray("turn"), spots, Spot::turn);
  }

  private static void column(
      ArrayNode into, List<Optional<Spot>> spots, ToDoubleFunction<Spot> of) {
    List<Optional<BigDecimal>> values = new ArrayList<>();
    for (Optional<Spot> spot : spots) {
      values.add(spot.map(one -> rounded(of.applyAsDouble(one), TENTHS)));
    }
    boolean same = values.stream().distinct().count() == 1;
    for (Optional<BigDecimal> value : same ? values.subList(0, 1) : values) {
      value.ifPresentOrElse(into::add, into::addNull);
    }
  }

  private static void rides(ArrayNode into, List<Ride> rides) {
    for (Ride ride : rides) {
      ObjectNode one = into.addObject().put("media", ride.media());
      ArrayNode seconds = one.putArray("seconds");
      ArrayNode sample = one.putArray("sample");
      ArrayNode bridged = one.putArray("bridged");
      for (int i = 0; i < ride.moments().size(); i++) {
        Ride.Moment moment = ride.moments().get(i);
        number(seconds, moment.seconds(), HUNDREDTHS);
        sample.add(moment.sample());
        if (moment.bridged()) {
          bridged.add(i);
        }
      }
    }
  }

  private static void number(ArrayNode into, double value, int decimals) {
    into.add(rounded(value, decimals));
  }

  private static BigDecimal rounded(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
  }
}
