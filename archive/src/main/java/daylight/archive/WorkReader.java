package daylight.archive;

import daylight.archive.form.Fields;
import daylight.line.book.Id;
import daylight.line.book.Test;
import daylight.line.book.Work;
import java.util.ArrayList;
import java.util.List;

/** Reads what was tried and what was done. */
final class WorkReader {
  private final Clerk clerk;

  WorkReader(Clerk clerk) {
    this.clerk = clerk;
  }

  List<Test> tests(Fields visit) {
    List<Test> tests = new ArrayList<>();
    for (Fields row : visit.rows("tests")) {
      Test test =
          new Test(
              clerk.name(row, "test", "test-"),
              row.wantedChoice("kind", Test.Kind.class),
              row.wantedWords("at"),
              row.reading("flow"),
              row.reading("volume"),
              row.reading("duration"),
              row.reading("drop"),
              held(row),
              seen(row),
              row.words("remark"));
      clerk.keep(tests, row, test);
    }
    return tests;
  }

  private static Test.Held held(Fields test) {
    return new Test.Held(
        test.texts("reaches"),
        test.reading("riser"),
        test.reading("head"),
        test.reading("topped-up"));
  }

  private static List<Test.Seen> seen(Fields test) {
    List<Test.Seen> seen = new ArrayList<>();
    for (Fields row : test.rows("seen")) {
      Test.Seen read =
          new Test.Seen(
              row.wantedWords("where"),
              row.yes("arrived", true),
              row.reading("after"),
              row.reading("volume"));
      if (row.sound()) {
        seen.add(read);
      } else {
        test.spoil();
      }
    }
    return seen;
  }

  List<Work> works(Fields visit) {
    List<Work> works = new ArrayList<>();
    for (Fields row : visit.rows("works")) {
      Id id = clerk.name(row, "work", "W");
      clerk.keep(works, row, work(row, id));
    }
    return works;
  }

  private static Work work(Fields row, Id id) {
    return switch (row.wantedChoice("kind", BookShape.WorkKind.class)) {
      case CLEANING -> new Work.Cleaning(id, row.texts("reaches"), row.wantedWords("how"));
      case REPAIR ->
          new Work.Repair(
              id,
              row.date("date"),
              row.wantedWords("reach"),
              row.reading("from"),
              row.reading("to"),
              row.wantedWords("what"),
              row.yes("altered", false));
    };
  }
}
