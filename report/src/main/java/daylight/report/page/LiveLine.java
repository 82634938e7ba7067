package daylight.report.page;

import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.view.CursorPanel;
import daylight.report.view.CursorTable;
import daylight.report.view.Face;
import daylight.report.view.Side;
import daylight.report.view.Views;
import daylight.report.words.Words;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;

/**
 * The three drawings of a report under one cursor, where a screen runs scripts. Where it runs none,
 * they are what they are on paper.
 */
final class LiveLine {
  private static final String SCRIPT = CursorPanel.script();

  private final Words words;
  private final Exhibits exhibits;
  private final Views views;
  private final CursorPanel panel;

  LiveLine(Subject subject, Exhibits exhibits) {
    this.words = subject.words();
    this.exhibits = exhibits;
    this.views = Views.onSheets(subject, finding -> exhibits.picture(finding).orElse(""));
    this.panel = new CursorPanel(words);
  }

  /** Whether there is no place of the line to go to. */
  boolean isEmpty() {
    return views.isEmpty();
  }

  /** The section of a side, for paper. */
  Tag figure(Side side) {
    return figure(side, false);
  }

  /** Drawings and panel together, for a screen. */
  Tag all() {
    Tag sides = Tag.of("div").with("class", "sides");
    for (Side side : Side.values()) {
      sides.add(figure(side, true));
    }
    return panel
        .said(Tag.of("div").with("id", "line"))
        .add(
            panel.how(words.word("report.line.how")),
            Tag.of("div")
                .add(
                    sides,
                    Tag.of("div")
                        .with("class", "beside")
                        .add(panel.facts(), panel.mover(), panel.picture())));
  }

  /** What a page ends with: the table of places, and the script. */
  List<Tag> scripts() {
    return List.of(
        Tag.of("script", CursorTable.inPage(views))
            .with("type", "application/json")
            .with("id", "line-table"),
        Tag.of("script").with("type", "module").code(SCRIPT));
  }

  /**
   * What the page may do, by the Content Security Policy of the W3C: run that script, and nothing
   * else; show what it brings along, and ask for nothing.
   *
   * @param style the text of its style sheet
   */
  static String policy(String style) {
    return "default-src 'none'; script-src "
        + script()
        + "; style-src "
        + digest(Tag.of("style").code(style).inside())
        + "; font-src data:; img-src data:; base-uri 'none'; form-action 'none'";
  }

  /** The digest by which a policy knows the script. */
  static String script() {
    return digest(Tag.of("script").code(SCRIPT).inside());
  }

  private static String digest(String text) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private Tag figure(Side side, boolean alive) {
    String id = side.word();
    String heading = words.word("report." + id);
    String caption = exhibits.caption(id, words.word("report." + id + ".caption"));
    Tag figure = Tag.of("figure").add(Tag.of("figcaption", caption));
    for (Face face : views.faces(side)) {
      if (!alive) {
        figure.add(OwnersReport.drawing(heading, face.sheet()));
      } else if (face.shows()) {
        figure.add(
            Tag.of("div").with("class", "drawn").add(panel.zoom(heading), face.drawing(heading)));
      } else {
        figure.add(Tag.of("div").with("class", "drawn").add(face.drawing(heading)));
      }
    }
    return Html.section(id, heading).with("class", "sheet").add(figure);
  }
}
