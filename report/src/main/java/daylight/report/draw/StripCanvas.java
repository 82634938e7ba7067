package daylight.report.draw;

import daylight.line.book.Place;
import daylight.report.markup.Tag;
import daylight.report.words.Words;

/** What every part of the strip draws with. */
record StripCanvas(
    Subject subject, Sheet sheet, Labeller labeller, Marks marks, Legend legend, StripLook look) {
  /** The size of the small print in the tracks. */
  static final double TINY = 7;

  Words words() {
    return subject.words();
  }

  /** Something that is drawn at a place; no label covers it. */
  void solid(Place place, Box room, Tag... tags) {
    sheet.add(Pen.at(place).add(tags));
    labeller.keepClear(room);
  }

  /** A box filled so that it reads in black and white: a wash, a pattern over it and an outline. */
  Tag washed(Box box, String colour, String pattern) {
    return Tag.of("g")
        .add(Pen.box(box, colour, "none").with("fill-opacity", 0.28))
        .add(patterned(box, pattern));
  }

  Tag patterned(Box box, String pattern) {
    return Pen.box(box, "url(#" + sheet.unique(pattern) + ")", "none");
  }

  /** Text in a row, at its left end; no label covers it. */
  void text(double x, double baseline, String text, boolean bold) {
    sheet.add(Pen.text(x, baseline, text, TINY, bold, Ink.DARK));
    labeller.keepClear(Box.ofText(x, baseline, text, TINY, bold));
  }
}
