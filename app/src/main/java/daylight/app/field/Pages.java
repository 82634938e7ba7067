package daylight.app.field;

import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.UUID;

/** Some pages that belong together: a maker of pages adds its own addresses and the links there. */
interface Pages {
  void addTo(RoutesConfig routes);

  /** Links to it from the page of a site. */
  default List<Link> ofSite(UUID book, Phrases phrases) {
    return List.of();
  }

  /** Links to it from the page of a visit. */
  default List<Link> ofVisit(UUID book, UUID visit, Phrases phrases) {
    return List.of();
  }

  /**
   * A link.
   *
   * @param says what is there, in a word or two
   * @param why what one does there, in a sentence
   */
  record Link(String href, String says, String why) {}
}
