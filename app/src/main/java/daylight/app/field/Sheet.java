package daylight.app.field;

import daylight.report.markup.Tag;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What is on a page, without what all pages share.
 *
 * @param way the pages above it, the uppermost first; the list of sites is always there
 * @param modules names of the modules it loads, from the room's own files
 * @param book the book it is about; null for none
 */
record Sheet(
    String title, List<Step> way, List<String> modules, @Nullable UUID book, List<Tag> contents) {
  /** A page above. */
  record Step(String href, String says) {}

  static Sheet of(String title, List<Tag> contents) {
    return new Sheet(title, List.of(), List.of(), null, contents);
  }

  Sheet under(Step... steps) {
    return new Sheet(title, List.of(steps), modules, book, contents);
  }

  Sheet with(String... names) {
    return new Sheet(title, way, List.of(names), book, contents);
  }

  Sheet about(UUID which) {
    return new Sheet(title, way, modules, which, contents);
  }
}
