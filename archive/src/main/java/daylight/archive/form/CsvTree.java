package daylight.archive.form;

import daylight.line.measure.Argument;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;
import org.jspecify.annotations.Nullable;

/**
 * Reads a table of comma-separated values (RFC 4180; semicolons where the head has those) as the
 * same tree that a YAML text gives: rows of keys, the heads of the columns being the keys. A line
 * that begins with # is a remark; {@code # title: …} gives the tree a title. Columns of the text
 * are not kept: the key says which one is meant.
 */
public final class CsvTree {
  private static final Pattern TITLE = Pattern.compile("(?m)^#\\s*title\\s*:\\s*(\\S.*?)\\s*$");

  private CsvTree() {}

  /**
   * The tree: {@code title}, where there is one, and {@code rows}.
   *
   * @return null when the text is no table; the desk then holds a complaint
   */
  public static Tree.@Nullable Keys read(byte[] bytes, Desk desk) {
    if (bytes.length > TreeReader.LARGEST) {
      desk.complain(
          FormTrouble.TOO_LARGE, Mark.NOWHERE, "", new Argument.Count(TreeReader.LARGEST));
      return null;
    }
    String text = Utf8.of(bytes, desk);
    if (text == null) {
      return null;
    }
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format(text))) {
      return keys(parser, text, desk);
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      return notCsv(e, desk);
    }
  }

  private static Tree.@Nullable Keys notCsv(Exception e, Desk desk) {
    Argument said = new Argument.Text(String.valueOf(e.getMessage()));
    desk.complain(FormTrouble.NOT_CSV, Mark.NOWHERE, "", said);
    return null;
  }

  private static CSVFormat format(String text) {
    String head =
        text.lines()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .findFirst()
            .orElse("");
    boolean semicolons = head.contains(";") && !head.contains(",");
    return CSVFormat.RFC4180
        .builder()
        .setDelimiter(semicolons ? ';' : ',')
        .setCommentMarker('#')
        .setHeader()
        .setSkipHeaderRecord(true)
        .setIgnoreEmptyLines(true)
        .setDuplicateHeaderMode(DuplicateHeaderMode.DISALLOW)
        .setTrim(true)
        .get();
  }

  private static Tree.Keys keys(CSVParser parser, String text, Desk desk) throws IOException {
    List<Tree> rows = new ArrayList<>();
    List<String> heads = parser.getHeaderNames();
    for (CSVRecord record : parser) {
      Mark at = new Mark((int) parser.getCurrentLineNumber(), 0);
      if (record.isConsistent()) {
        rows.add(row(record, heads, at));
      } else {
        desk.complain(
            FormTrouble.ROW_LENGTH,
            at,
            "rows[" + rows.size() + "]",
            new Argument.Count(record.size()),
            new Argument.Count(heads.size()));
      }
    }
    Map<String, Tree.Member> members = new LinkedHashMap<>();
    Mark top = new Mark(1, 0);
    Matcher title = TITLE.matcher(text);
    if (title.find()) {
      members.put("title", new Tree.Member(top, new Tree.Text(title.group(1), true, false, top)));
    }
    members.put("rows", new Tree.Member(top, new Tree.Items(rows, top)));
    return new Tree.Keys(members, top);
  }

  private static Tree row(CSVRecord record, List<String> heads, Mark at) {
    Map<String, Tree.Member> cells = new LinkedHashMap<>();
    for (int i = 0; i < heads.size(); i++) {
      cells.put(heads.get(i), new Tree.Member(at, new Tree.Text(record.get(i), true, false, at)));
    }
    return new Tree.Keys(cells, at);
  }
}
