package daylight.report.map;

import daylight.line.answer.Caution;
import daylight.line.answer.DigPlace;
import daylight.line.course.Run;
import daylight.line.dig.Dig;
import daylight.line.dig.DigBox;
import daylight.line.dig.DigTarget;
import daylight.line.dig.DigTicket;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.report.draw.Subject;
import daylight.report.words.DigWords;
import daylight.report.words.Words;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Where the ground may have to be opened, the ticket before anything else. */
final class DigRows {
  private final Making making;
  private final Subject subject;
  private final Words words;

  DigRows(Making making) {
    this.making = making;
    this.subject = making.subject();
    this.words = subject.words();
  }

  List<Row> all() {
    return subject.answers().digs().stream().map(this::dig).toList();
  }

  private Row dig(DigPlace place) {
    Filling row =
        making
            .row(
                Layer.DIG_BOX,
                place.finding().finding().label(),
                words.word(Caution.NOTIFY_BEFORE_DIGGING) + " " + words.word(Caution.HAND_DIG))
            .text("ticket", say(DigWords.of(place.ticket())))
            .text("line", place.line())
            .text("reach", place.finding().from().reach())
            .number("distance", place.finding().from().distance())
            .yesNo("cleaned", place.cleaned());
    ticket(row, place.ticket());
    return switch (place.dig()) {
      case Dig.Unknown(var missing) -> row.text("missing", words.say(missing)).done();
      case DigTarget target -> target(row, target);
    };
  }

  private Row target(Filling row, DigTarget target) {
    DigBox box = target.box();
    depth(row, "crown", target.crown());
    depth(row, "invert", target.invert());
    return row.spot(target.spot())
        .bearing("heading", target.spot(), box.bearing())
        .degrees("heading_sd", headingSd(target))
        .number("box_along", box.along())
        .number("box_across", box.across())
        .ellipse(target.spot(), target.spread())
        .text("quality", target.quality().name())
        .text("card", card(target))
        .text("missing", making.missing(target.invert()))
        .shape(Areas.of(box.corners()))
        .done();
  }

  private double headingSd(DigTarget target) {
    return making
        .run(target.place().reach())
        .map(
            run ->
                run.path() instanceof Run.Path.Found found
                    ? found.nearest(target.place().distance()).bearingSd()
                    : 0.0)
        .orElse(0.0);
  }

  /** From the least to the most that holds it with 95 %; nothing lies above the ground. */
  private static void depth(Filling row, String name, @Nullable Measured depth) {
    if (depth != null) {
      row.number(name + "_least", Math.max(0, depth.lower95()))
          .number(name + "_most", Math.max(0, depth.upper95()));
    }
  }

  private static void ticket(Filling row, DigTicket ticket) {
    switch (ticket) {
      case DigTicket.None none -> {}
      case DigTicket.Good(var number, var expires) ->
          row.text("ticket_number", number).day("ticket_expires", expires);
      case DigTicket.Undated(var number) -> row.text("ticket_number", number);
      case DigTicket.Expired(var number, var expired) ->
          row.text("ticket_number", number).day("ticket_expires", expired);
    }
  }

  /** The whole card, the same rows as on paper. */
  private String card(DigTarget target) {
    return DigWords.of(
            target,
            subject.line(),
            subject.book().site(),
            subject.answers().stops(),
            subject.rules().limits().dig())
        .stream()
        .map(this::say)
        .collect(Collectors.joining("\n"));
  }

  private String say(DigWords.Row row) {
    return words.say(row.key(), row.arguments().toArray(Argument[]::new));
  }
}
