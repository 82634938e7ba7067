package daylight.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The field book of one invented drain that was looked through once; a test adds what it is about.
 *
 * @param unit of bare distances
 * @param end what the counter showed at the outlet
 * @param visit lines of the visit besides
 * @param findings of the push
 * @param anchors of the push
 * @param media that the book names
 */
public record OneDrain(
    String unit,
    String end,
    List<String> visit,
    List<String> findings,
    List<String> anchors,
    List<String> media) {
  /** Nothing but the drain, in feet, to where the camera of {@link CountedFilm} turned back. */
  public static OneDrain empty() {
    return new OneDrain("ft", "9", List.of(), List.of(), List.of(), List.of());
  }

  public OneDrain in(String other) {
    return new OneDrain(other, end, visit, findings, anchors, media);
  }

  public OneDrain to(String cable) {
    return new OneDrain(unit, cable, visit, findings, anchors, media);
  }

  public OneDrain on(String... lines) {
    return new OneDrain(unit, end, List.of(lines), findings, anchors, media);
  }

  public OneDrain found(String... lines) {
    return new OneDrain(unit, end, visit, List.of(lines), anchors, media);
  }

  public OneDrain typed(String... lines) {
    return new OneDrain(unit, end, visit, findings, List.of(lines), media);
  }

  public OneDrain with(String... lines) {
    return new OneDrain(unit, end, visit, findings, anchors, List.of(lines));
  }

  /** With one recording of the push. */
  public OneDrain filmed(String file) {
    return with("{label: M1, kind: footage, file: " + file + ", pass: P1}");
  }

  /** The line of the book, from 1, that holds a text. */
  public static int line(Path book, String text) throws IOException {
    List<String> lines = Files.readAllLines(book);
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).contains(text)) {
        return i + 1;
      }
    }
    throw new AssertionError(text + " is not in " + book);
  }

  /** Writes the book. */
  public Path write(Path file) throws IOException {
    return Files.writeString(
        file,
        """
        # An invented scenario.
        daylight-book: 1
        units: {distance: %s, depth: ft, bore: in, level: ft}
        site:
          name: A drain
          zone: UTC
          invented: yes
          landmarks: [{label: A, base: yes}, {label: B, base: yes}]
          nodes:
            - {label: C1, kind: access}
            - {label: O1, kind: outlet}
          reaches:
            - {label: R1, line: drain, from: C1, to: O1, water: forward, material: pvc, bore: 4 in}
        visit:
          date: 2026-04-18
          ties: [{from: A, to: B, tape: 40 ft}]
        """
                .formatted(unit)
            + visit.stream().map(line -> "  " + line + "\n").collect(Collectors.joining())
            + """
            passes:
              - label: P1
                entry: C1
                walk: [R1]
                zero: {reads: 0}
                end: {cable: %s, why: outlet-reached, node: O1}
            """
                .formatted(end)
                .indent(2)
            + list("      ", "findings", findings)
            + list("      ", "anchors", anchors)
            + list("  ", "media", media));
  }

  private static String list(String indent, String key, List<String> rows) {
    return rows.isEmpty()
        ? ""
        : indent
            + key
            + ":\n"
            + rows.stream().map(row -> indent + "  - " + row + "\n").collect(Collectors.joining());
  }
}
