package daylight.app.web;

import daylight.app.Job;
import daylight.line.measure.Shown;
import daylight.report.draw.PlanTurn;
import daylight.report.words.Language;
import daylight.report.words.Words;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * In which language and units a page is asked for.
 *
 * @param chosen by whoever looks, on one of our pages; null where nobody chose
 * @param wanted the language that the browser asks for; null where it asks for none of ours
 * @param page the address of the page itself, to choose anew on it; null where none can be chosen
 * @param plan which way up the plan is to lie; null for as the book was opened
 */
record Wish(
    @Nullable Look chosen,
    @Nullable Language wanted,
    @Nullable String page,
    @Nullable PlanTurn plan) {
  /** The ways that can be asked for, by their words in addresses. */
  static final Map<String, PlanTurn> TURNS =
      Map.of("north", PlanTurn.NORTH_UP, "along", PlanTurn.ALONG);

  static Wish by(Context request) {
    return new Wish(
        Look.read(Remembered.get(request, Look.COOKIE)).orElse(null),
        Look.languageOf(request.header("Accept-Language")).orElse(null),
        request.path(),
        TURNS.get(String.valueOf(request.queryParam("plan"))));
  }

  /** The same where nothing can be chosen anew. */
  Wish nowhere() {
    return new Wish(chosen, wanted, null, null);
  }

  /** The light that was chosen; null for what the device says of itself. */
  @Nullable Light light() {
    return chosen == null ? null : chosen.light();
  }

  /** The language for what is opened so: as chosen here, else as it was opened, else as wanted. */
  Language language(Job.Settings settings) {
    Language opened = settings.language();
    if (chosen != null) {
      return chosen.language();
    }
    if (opened != null) {
      return opened;
    }
    return wanted == null ? Language.EN : wanted;
  }

  /**
   * The units.
   *
   * @param usual those of the book, or of how it was opened
   */
  Shown shown(Shown usual) {
    return chosen == null ? usual : chosen.shown();
  }

  /** Words for what is opened so. */
  Words words(Job.Settings settings, Shown usual) {
    return Words.of(language(settings), shown(usual));
  }

  /** Words where no quantity is shown. */
  Words words(Job.Settings settings) {
    return words(settings, Shown.METRES);
  }

  /**
   * What a browser is to remember from now on, where the address of the page chooses: {@code
   * ?language=fr}, {@code ?units=metres}, {@code ?light=basement}. Empty where it chooses nothing
   * of ours.
   */
  static Optional<Look> choice(Context request, Words now) {
    Optional<Language> language =
        Optional.ofNullable(request.queryParam("language")).flatMap(Language::of);
    Optional<Shown> units = Optional.ofNullable(request.queryParam("units")).flatMap(Look::shown);
    Light before = by(request).light();
    String light = request.queryParam("light");
    boolean lit = Light.DEVICE.equals(light) || (light != null && Look.light(light) != null);
    return language.isEmpty() && units.isEmpty() && !lit
        ? Optional.empty()
        : Optional.of(
            new Look(
                language.orElse(now.language()),
                units.orElse(now.shown()),
                lit && light != null ? Look.light(light) : before));
  }
}
