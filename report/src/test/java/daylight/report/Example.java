package daylight.report;

import daylight.line.book.FieldBook;
import daylight.line.book.Id;
import daylight.line.book.Site;
import daylight.line.measure.Reading;
import daylight.line.measure.Shown;
import daylight.report.page.Paper;
import daylight.report.shots.Shots;
import daylight.report.words.Language;
import java.util.List;
import java.util.UUID;

/**
 * An invented property with a drain of 85 ft in two reaches and a branch, set down by hand: six
 * locates, ten findings, a pond. Its figures are plausible, not computed.
 */
public final class Example {
  private static final UUID SITE = UUID.fromString("00000000-0000-5000-8000-000000000001");

  private Example() {}

  /** The usual property: nothing deadly in the pipe, no satellite fix. */
  public static Handout usual() {
    return new Handout(
        ExampleBook.book(),
        ExampleLine.line(false, false),
        ExampleAnswers.answers(false),
        ExampleAnswers.rules(),
        Shots.NONE,
        List.of(),
        Language.EN,
        Shown.FEET_INCHES,
        Paper.LETTER);
  }

  /** The same in other units. */
  public static Handout usual(Shown shown) {
    Handout usual = usual();
    return new Handout(
        usual.book(),
        usual.line(),
        usual.answers(),
        usual.rules(),
        usual.shots(),
        List.of(),
        Language.EN,
        shown,
        usual.paper());
  }

  /** The same with a gas pipe through the drain, and tied to the earth. */
  public static Handout deadly() {
    return new Handout(
        ExampleBook.book(),
        ExampleLine.line(true, true),
        ExampleAnswers.answers(true),
        ExampleAnswers.rules(),
        Shots.NONE,
        List.of(),
        Language.EN,
        Shown.FEET_INCHES,
        Paper.LETTER);
  }

  /** The usual property under another name. */
  public static Handout named(String name) {
    Handout usual = usual();
    Site site = usual.book().site();
    Site renamed =
        new Site(
            site.id(),
            name,
            site.address(),
            site.zone(),
            site.invented(),
            site.landmarks(),
            site.boundaries(),
            site.nodes(),
            site.reaches(),
            site.surroundings());
    FieldBook book =
        new FieldBook(usual.book().id(), usual.book().units(), renamed, usual.book().visits());
    return new Handout(
        book,
        usual.line(),
        usual.answers(),
        usual.rules(),
        usual.shots(),
        List.of(),
        usual.language(),
        usual.shown(),
        usual.paper());
  }

  static Id id(String label) {
    return Id.derived(SITE, "entry", label);
  }

  static Reading reading(double value) {
    return new Reading(value, null, "as typed");
  }
}
