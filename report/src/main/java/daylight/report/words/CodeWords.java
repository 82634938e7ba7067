package daylight.report.words;

import daylight.line.book.Finding;
import daylight.line.condition.CodeRow;
import daylight.line.condition.CodeTable;
import daylight.line.condition.Seen;
import daylight.line.measure.Argument;
import java.util.Optional;

/** Says what somebody else calls a finding. */
public record CodeWords(Words words, CodeTable table) {

  /** The code with its name; empty where the table has none for it. */
  public Optional<String> code(Finding finding) {
    Seen seen = Seen.of(finding, null);
    Optional<CodeRow> row = table.find(seen);
    if (row.isEmpty()) {
      return table.wantsMore(seen)
          ? Optional.of(words.word("finding.code.open"))
          : Optional.empty();
    }
    CodeRow found = row.get();
    String name = found.name();
    return Optional.of(name == null ? found.code() : found.code() + " " + name);
  }

  /** Whose codes they are, and who vouches for them. */
  public String whose() {
    return words.say(
        table.checked() ? "report.codes.own" : "report.codes.unchecked",
        new Argument.Text(table.title()));
  }
}
