package daylight.app.web;

import daylight.line.book.Finding;
import daylight.line.book.Where;
import daylight.line.course.PlacedFinding;
import daylight.line.measure.Argument;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.shots.Still;
import daylight.report.words.Words;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Leads from what was seen to the moment of the footage that shows it. */
final class Moments {
  private final Property property;
  private final Subject subject;
  private final Words words;
  private final List<Recording> recordings;

  /**
   * When a recording shows something.
   *
   * @param media the label of the recording
   * @param seconds from its first frame
   * @param still taken there; null for none
   */
  private record Moment(String media, double seconds, @Nullable Still still) {}

  Moments(Property property, Subject subject, List<Recording> recordings) {
    this.property = property;
    this.subject = subject;
    this.words = subject.words();
    this.recordings = recordings;
  }

  /** Whether there is anything to lead to. */
  boolean knows(Finding finding) {
    return find(finding).isPresent();
  }

  /** A picture, or the time alone where none was taken, that leads to its moment. */
  Optional<Tag> of(PlacedFinding placed, String shows) {
    return find(placed.finding()).map(moment -> link(moment, shows));
  }

  /** The time alone, where there is a recording on the page to lead to. */
  Optional<Tag> link(PlacedFinding placed, String shows) {
    return find(placed.finding())
        .flatMap(
            moment ->
                played(moment)
                    .map(
                        one ->
                            toPlayer(one, moment, now(moment, shows))
                                .text(words.say("web.go", time(moment), label(moment)))));
  }

  private Optional<Moment> find(Finding finding) {
    Optional<Moment> pictured =
        subject
            .shots()
            .of(finding.label())
            .map(still -> new Moment(still.media(), still.seconds(), still));
    return pictured.isPresent() || !(finding.where() instanceof Where.AtMoment(var media, var at))
        ? pictured
        : Optional.of(new Moment(media, at, null));
  }

  private Tag link(Moment moment, String shows) {
    Optional<Recording> played = played(moment);
    Tag link =
        played
            .map(one -> toPlayer(one, moment, now(moment, shows)).with("class", "still"))
            .orElseGet(() -> toPicture(moment));
    Still still = moment.still();
    if (still != null) {
      link.add(image(still, shows));
    }
    return link.add(
        Tag.of(
            "span",
            words.say(played.isPresent() ? "web.go" : "web.at", time(moment), label(moment))));
  }

  private Optional<Recording> played(Moment moment) {
    return recordings.stream()
        .filter(one -> one.media().label().equals(moment.media()))
        .filter(one -> one.played(property).isPresent())
        .findFirst();
  }

  private String now(Moment moment, String shows) {
    return words.say("web.now", time(moment), new Argument.Text(shows));
  }

  private static Argument time(Moment moment) {
    return new Argument.Text(Pieces.moment(moment.seconds()));
  }

  private static Argument label(Moment moment) {
    return new Argument.Label(moment.media());
  }

  private Tag toPlayer(Recording recording, Moment moment, String now) {
    return Tag.of("a")
        .with(
            "href", recording.played(property).orElseThrow() + "#t=" + Tag.number(moment.seconds()))
        .with("data-media", recording.media().id().uuid().toString())
        .with("data-seconds", moment.seconds())
        .with("data-now", now);
  }

  private Tag toPicture(Moment moment) {
    Still still = moment.still();
    return still == null
        ? Tag.of("div").with("class", "still")
        : Tag.of("a").with("class", "still").with("href", property.address(still.file()));
  }

  private Tag image(Still still, String shows) {
    return Tag.of("img")
        .with("src", property.address(still.file()))
        .with("alt", shows)
        .with("width", Integer.toString(still.picture().width()))
        .with("height", Integer.toString(still.picture().height()));
  }
}
