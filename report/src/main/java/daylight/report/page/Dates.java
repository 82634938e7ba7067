package daylight.report.page;

import daylight.line.answer.FollowUp;
import daylight.line.answer.FollowUps;
import daylight.line.measure.Argument;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.FollowUpWords;
import daylight.report.words.Words;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What there is to come back to, a day each, as the calendar beside the report has it. */
final class Dates {
  private final Subject subject;
  private final Words words;

  Dates(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
  }

  private record Day(FollowUp.Due.On due, FollowUp follow) {}

  /** The section; empty where nothing has a day. */
  Optional<Tag> section() {
    FollowUpWords said = new FollowUpWords(words, subject.book(), subject.line(), subject.rules());
    List<String> days =
        FollowUps.of(subject.book(), subject.line(), subject.rules(), subject.answers()).stream()
            .flatMap(
                follow ->
                    follow.due() instanceof FollowUp.Due.On on
                        ? Stream.of(new Day(on, follow))
                        : Stream.empty())
            .sorted(Comparator.comparing(day -> day.due().day()))
            .map(
                day ->
                    words.named(
                        words.figure(new Argument.Day(day.due().day())),
                        said.summary(day.follow())))
            .toList();
    return days.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Html.section("dates", words.word("report.dates"))
                .add(Html.list(days))
                .add(Tag.of("p", note()).with("class", "quiet")));
  }

  private String note() {
    return words.say("report.dates.note", new Argument.Text(subject.rules().urgency().id()));
  }
}
