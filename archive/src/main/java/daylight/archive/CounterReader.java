package daylight.archive;

import daylight.archive.form.Fields;
import daylight.line.book.Pass;
import java.util.ArrayList;
import java.util.List;

/** Reads what a pass says of its counter: checks, resets, and what a person put right. */
final class CounterReader {
  private final Clerk clerk;

  CounterReader(Clerk clerk) {
    this.clerk = clerk;
  }

  List<Pass.CounterCheck> checks(Fields pass) {
    List<Pass.CounterCheck> checks = new ArrayList<>();
    for (Fields row : pass.rows("counter-checks")) {
      Pass.CounterCheck check =
          new Pass.CounterCheck(
              clerk.name(row, "counter-check", "check-"),
              row.wantedReading("counter"),
              row.wantedReading("taped"));
      clerk.keep(checks, row, check);
    }
    return checks;
  }

  List<Pass.Reset> resets(Fields pass) {
    List<Pass.Reset> resets = new ArrayList<>();
    for (Fields row : pass.rows("resets")) {
      Pass.Reset reset =
          new Pass.Reset(
              clerk.name(row, "reset", "reset-"),
              row.wantedReading("before"),
              row.wantedReading("after"));
      clerk.keep(resets, row, reset);
    }
    return resets;
  }

  List<Pass.Anchor> anchors(Fields pass) {
    List<Pass.Anchor> anchors = new ArrayList<>();
    for (Fields row : pass.rows("anchors")) {
      Pass.Anchor anchor =
          new Pass.Anchor(
              clerk.name(row, "anchor", "anchor-"),
              row.wantedWords("media"),
              row.wantedReading("at").value(),
              row.wantedReading("counter"));
      clerk.keep(anchors, row, anchor);
    }
    return anchors;
  }

  List<Pass.Correction> corrections(Fields pass) {
    List<Pass.Correction> corrections = new ArrayList<>();
    for (Fields row : pass.rows("corrections")) {
      Pass.Correction correction =
          new Pass.Correction(
              clerk.name(row, "correction", "correction-"),
              row.wantedWords("media"),
              row.wantedReading("from").value(),
              row.wantedReading("to").value(),
              row.reading("counter"));
      clerk.keep(corrections, row, correction);
    }
    return corrections;
  }
}
