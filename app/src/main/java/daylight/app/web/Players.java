package daylight.app.web;

import daylight.app.FilmText;
import daylight.line.measure.Argument;
import daylight.report.markup.Tag;
import daylight.report.shots.Reel;
import daylight.report.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The recordings, each played where a browser can, and told of where it cannot. */
final class Players {
  /** What is said as a recording runs. */
  static final String CAPTIONS = "captions.vtt";

  /** Where in a recording what was found is. */
  static final String CHAPTERS = "chapters.vtt";

  private final Property property;
  private final Reading.Answered answered;
  private final List<Recording> recordings;
  private final Words words;

  Players(Property property, Reading.Answered answered, List<Recording> recordings, Words words) {
    this.answered = answered;
    this.property = property;
    this.recordings = recordings;
    this.words = words;
  }

  Tag all() {
    return Tag.of("div")
        .with("class", "players")
        .addAll(recordings.stream().map(this::player).toList());
  }

  private Tag player(Recording recording) {
    Tag figure = Tag.of("figure");
    Optional<String> played = recording.played(property);
    if (played.isPresent()) {
      figure.add(video(recording, played.get()));
      figure.add(Tag.of("p").with("class", "now").with("role", "status"));
      figure.add(
          Tag.of("a", words.word("web.back"))
              .with("class", "back")
              .with("href", "#findings")
              .with("hidden", ""));
      figure.add(Pieces.paragraph("cannot", words.word("web.cannot_after_all")).with("hidden", ""));
    } else {
      figure.add(
          Pieces.paragraph("cannot", words.say("web.cannot", new Argument.Text(kind(recording)))));
      property
          .proxy(recording)
          .ifPresent(
              state ->
                  figure.add(
                      Pieces.paragraph("making", ProxyWords.told(state, words))
                          .with("role", "status")
                          .with("data-proxy", recording.progressAddress(property))));
    }
    if (played.isPresent() && !recording.playable()) {
      figure.add(Pieces.paragraph("quiet", words.word("web.proxy.plays")));
    }
    return figure.add(
        Tag.of("figcaption", about(recording))
            .text(" ")
            .add(
                Tag.of("a", words.word("web.keep"))
                    .with("href", recording.address(property))
                    .with("download", "")));
  }

  /** Silent until somebody turns the sound on: bathrooms and voices are on these tapes. */
  private Tag video(Recording recording, String address) {
    Reel reel = recording.reel();
    Tag video =
        Tag.of("video")
            .with("controls", "")
            .with("muted", "")
            .with("playsinline", "")
            .with("preload", "metadata")
            .with("data-media", recording.media().id().uuid().toString())
            .with("aria-label", about(recording))
            .with("src", address);
    recording.text(answered).ifPresent(text -> video.addAll(tracks(recording, text)));
    return reel == null
        ? video
        : video
            .with("width", Integer.toString(reel.width()))
            .with("height", Integer.toString(reel.height()));
  }

  /** What is said as the recording runs, and where in it what was found is. */
  private List<Tag> tracks(Recording recording, FilmText text) {
    Tag chapters = track(recording, CHAPTERS, "chapters");
    return text.captions().isEmpty()
        ? List.of(chapters)
        : List.of(track(recording, CAPTIONS, "captions"), chapters);
  }

  private Tag track(Recording recording, String file, String kind) {
    return Tag.of("track")
        .with("kind", kind)
        .with("src", recording.textAddress(property, file))
        .with("srclang", words.language().code())
        .with("label", words.word("web." + kind));
  }

  private String about(Recording recording) {
    String pass = recording.media().pass();
    Reel reel = recording.reel();
    String name =
        pass == null
            ? words.say("web.recording", new Argument.Label(recording.media().label()))
            : words.say(
                "web.recording_of",
                new Argument.Label(recording.media().label()),
                new Argument.Label(pass));
    return reel == null ? name : name + ", " + Pieces.moment(reel.seconds());
  }

  private static String kind(Recording recording) {
    Reel reel = recording.reel();
    String ending = Types.ending(recording.media().file()).toUpperCase(Locale.ROOT);
    return reel == null ? ending : reel.codec() + " in " + ending;
  }
}
