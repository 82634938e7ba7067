package daylight.line.condition;

import daylight.line.book.Catalogue;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The door of the room: grades by a published scheme. */
public final class Condition {
  private final GradeScheme scheme;
  private final Catalogue catalogue;

  /** Grades by a scheme over the kinds of a catalogue. */
  public Condition(GradeScheme scheme, Catalogue catalogue) {
    this.scheme = scheme;
    this.catalogue = catalogue;
  }

  /** The scheme. */
  public GradeScheme scheme() {
    return scheme;
  }

  /** What the scheme says of a finding. Refuses none. */
  public FindingGrade grade(Seen seen) {
    Optional<Catalogue.Kind> kind = catalogue.find(seen.kind());
    if (kind.isPresent() && kind.get().hazard() == Catalogue.Hazard.STOP) {
      return ungraded(seen, FindingGrade.Ungraded.OUTRANKS, new Immediate.NotListed());
    }
    Immediate immediate = Immediates.of(scheme, seen);
    SortedMap<Aspect, Verdict> verdicts = new TreeMap<>();
    for (Aspect aspect : Aspect.values()) {
      Verdict verdict = Grading.of(scheme, aspect, seen);
      if (verdict != null) {
        verdicts.put(aspect, verdict);
      }
    }
    return verdicts.isEmpty()
        ? ungraded(seen, why(kind.orElse(null)), immediate)
        : new FindingGrade(seen.kind(), verdicts, null, immediate);
  }

  private static FindingGrade ungraded(Seen seen, FindingGrade.Ungraded why, Immediate immediate) {
    return new FindingGrade(seen.kind(), new TreeMap<>(), why, immediate);
  }

  private static FindingGrade.Ungraded why(Catalogue.@Nullable Kind kind) {
    if (kind == null) {
      return FindingGrade.Ungraded.KIND_UNKNOWN;
    }
    return kind.bears() == Catalogue.Bears.FEATURE
        ? FindingGrade.Ungraded.FEATURE
        : FindingGrade.Ungraded.NO_ROW;
  }

  /** The findings of a line taken together, in their order. */
  public static LineGrade together(List<FindingGrade> findings) {
    Map<Aspect, LineGrade.Worst> worst = new EnumMap<>(Aspect.class);
    List<FindingGrade> outranking = new ArrayList<>();
    List<FindingGrade> immediate = new ArrayList<>();
    List<FindingGrade> open = new ArrayList<>();
    for (int i = 0; i < findings.size(); i++) {
      FindingGrade finding = findings.get(i);
      for (Map.Entry<Aspect, Verdict> one : finding.verdicts().entrySet()) {
        if (one.getValue() instanceof Verdict.Graded graded
            && worse(graded.grade(), worst.get(one.getKey()))) {
          worst.put(one.getKey(), new LineGrade.Worst(graded.grade(), finding, i));
        }
      }
      if (finding.ungraded() == FindingGrade.Ungraded.OUTRANKS) {
        outranking.add(finding);
      }
      if (finding.immediate() instanceof Immediate.Yes) {
        immediate.add(finding);
      }
      if (isOpen(finding)) {
        open.add(finding);
      }
    }
    return new LineGrade(new TreeMap<>(worst), outranking, immediate, open);
  }

  private static boolean worse(Grade grade, LineGrade.@Nullable Worst before) {
    return before == null || grade.worseThan(before.grade());
  }

  private static boolean isOpen(FindingGrade finding) {
    return finding.immediate() instanceof Immediate.Open
        || finding.verdicts().values().stream().anyMatch(Verdict.CannotSay.class::isInstance);
  }
}
