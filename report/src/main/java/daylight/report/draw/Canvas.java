package daylight.report.draw;

import daylight.report.markup.Tag;

/** What parts of a drawing are added to. */
interface Canvas {
  /** Adds to what was drawn so far, on top of it. */
  void add(Tag... tags);

  /** Adds what other tags refer to by their id. */
  void define(Tag definition);

  /** An id that no other drawing on a page uses. */
  String unique(String name);
}
