package daylight.report.page;

import daylight.report.draw.PlanDrawing;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.Words;

/** The door for the report on two pages: what an owner reads, and the line from above. */
public final class ShortReport {
  /** As a number of things to measure: nothing is said of them. */
  public static final int LEFT_OUT = -1;

  private ShortReport() {}

  /**
   * The page that an owner reads, by itself.
   *
   * @param toDo so many things to do are told one by one
   * @param toMeasure so many things to measure are; {@link #LEFT_OUT} for nothing about them
   */
  public static Edition first(Subject subject, Sender sender, int toDo, int toMeasure) {
    return new Edition(
        subject,
        sender,
        OwnersReport.title(subject),
        subject.words().word("report.short.about"),
        page(subject, sender, toDo, toMeasure));
  }

  /** The same with the line from above behind it. */
  public static Edition of(Subject subject, Sender sender, int toDo, int toMeasure) {
    Edition first = first(subject, sender, toDo, toMeasure);
    return new Edition(
        subject, sender, first.title(), first.about(), first.main().add(plan(subject)));
  }

  private static Tag page(Subject subject, Sender sender, int toDo, int toMeasure) {
    Head head = new Head(subject, sender);
    Unsaid unsaid = new Unsaid(subject);
    Tag main =
        Tag.of("main")
            .with("class", "short")
            .addAll(head.stops())
            .add(head.header())
            .addAll(new FirstPage(subject, sender).told(toDo));
    if (toMeasure != LEFT_OUT) {
      main.add(unsaid.section(toMeasure));
    }
    unsaid.declined().ifPresent(main::add);
    return main;
  }

  private static Tag plan(Subject subject) {
    Words words = subject.words();
    return Html.section(Exhibits.PLAN, words.word("report.plan"))
        .with("class", "sheet")
        .add(
            Tag.of("figure")
                .add(Tag.of("figcaption", words.word("report.short.plan")))
                .add(
                    Tag.of("div")
                        .with("class", "drawing")
                        .add(PlanDrawing.sheets(subject).getFirst())));
  }
}
