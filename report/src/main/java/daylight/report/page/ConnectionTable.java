package daylight.report.page;

import daylight.line.proving.Connection;
import daylight.report.draw.Subject;
import daylight.report.markup.Tag;
import daylight.report.words.ConnectionWords;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;

/** Of every fixture, roof and inlet where it comes in, and how that is known. */
public final class ConnectionTable {
  private final Words words;
  private final List<Connection> connections;
  private final ConnectionWords said;

  public ConnectionTable(Subject subject) {
    this.words = subject.words();
    this.connections = subject.answers().proving().connections();
    this.said = new ConnectionWords(words, subject.book());
  }

  Tag section(Exhibits exhibits) {
    String caption = words.word("report.connections.caption");
    return Html.section(Exhibits.CONNECTIONS, words.word("report.connections"))
        .addAll(
            told(
                exhibits.has(Exhibits.CONNECTIONS)
                    ? exhibits.caption(Exhibits.CONNECTIONS, caption)
                    : ""));
  }

  /** The table under a caption, or that nothing is noted. */
  public List<Tag> told(String caption) {
    List<Tag> told = new ArrayList<>();
    if (connections.isEmpty()) {
      told.add(Tag.of("p", words.word("report.connections.none")));
      return told;
    }
    List<String> heads =
        List.of("column.comes_from", "column.comes_in", "column.known", "column.says_otherwise");
    told.add(
        Html.table(
            caption,
            heads.stream().map(words::word).toList(),
            connections.stream().map(this::row).map(Html::row).toList()));
    return told;
  }

  private List<String> row(Connection connection) {
    return List.of(
        said.source(connection),
        Words.capitalised(said.joins(connection)),
        Words.capitalised(said.known(connection)),
        connection.against().isEmpty() ? Html.EMPTY : String.join(", ", connection.against()));
  }
}
