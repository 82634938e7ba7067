package daylight.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.urgency.HowSoon;
import daylight.line.urgency.Urgency;
import daylight.line.urgency.UrgencyTable;
import daylight.report.words.SoonWords;
import daylight.report.words.Words;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** How soon something is to be done about a finding, and by which row of which rule. */
final class SoonJson {
  private final Words words;
  private final UrgencyTable table;

  SoonJson(Words words, UrgencyTable table) {
    this.words = words;
    this.table = table;
  }

  ObjectNode of(HowSoon how) {
    ObjectNode json = Json.object();
    switch (how) {
      case HowSoon.Stop stop -> json.put("by", "stop").putNull("urgency");
      case HowSoon.Listed listed -> json.put("by", "list").put("urgency", lower(Urgency.AT_ONCE));
      case HowSoon.Ruled ruled -> ruled(json, ruled);
      case HowSoon.CannotSay cannot -> json.put("by", "open").putNull("urgency");
      case HowSoon.Nothing nothing -> json.put("by", "nothing").putNull("urgency");
    }
    return json.put("sentence", new SoonWords(words).say(how).orElse(null));
  }

  private void ruled(ObjectNode json, HowSoon.Ruled ruled) {
    UrgencyTable.Row row = table.row(ruled.grade());
    json.put("by", "rule").put("urgency", lower(ruled.urgency()));
    json.put("class", ruled.grade().number()).put("aspect", lower(ruled.aspect()));
    json.put("consequence", lower(ruled.consequence()));
    ArrayNode unknown = json.putArray("unknown");
    ruled.unknown().forEach(one -> unknown.add(lower(one)));
    json.put("atWorst", lower(ruled.atWorst()));
    json.put("rule", table.id()).put("source", row.source()).put("mark", lower(row.mark()));
  }

  private static @Nullable String lower(@Nullable Enum<?> value) {
    return value == null ? null : value.name().toLowerCase(Locale.ROOT);
  }
}
