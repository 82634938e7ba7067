package daylight.report.view;

import daylight.report.draw.Spot;
import daylight.report.markup.Tag;
import java.util.List;
import java.util.Optional;

/**
 * One sheet of the drawings.
 *
 * @param name its word on a page, which no other sheet has
 * @param spots where each sample lies on it; empty where it does not show it
 */
public record Face(String name, Tag sheet, List<Optional<Spot>> spots) {
  public Face {
    spots = List.copyOf(spots);
  }

  /** Whether there is any place of the line on it. */
  public boolean shows() {
    return spots.stream().anyMatch(Optional::isPresent);
  }

  /** What holds it on a page, as the cursor finds it: a drawing that scrolls by itself. */
  public Tag drawing(String heading) {
    Tag drawing =
        Tag.of("div")
            .with("class", "drawing")
            .with("tabindex", "0")
            .with("role", "group")
            .with("aria-label", heading);
    if (shows()) {
      drawing.with("data-drawing", name);
    }
    return drawing.add(sheet);
  }
}
