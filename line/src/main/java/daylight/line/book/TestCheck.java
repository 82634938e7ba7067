package daylight.line.book;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Tests name what is known, and say what a test of their kind can say. */
final class TestCheck {
  private final FaultList faults;
  private final Names names;
  private final Set<String> inlets;
  private final Set<String> anywhere;

  TestCheck(FaultList faults, Names names, Surroundings around) {
    this.faults = faults;
    this.names = names;
    this.inlets = new TreeSet<>(names.nodes());
    this.inlets.addAll(Names.labels(around.fixtures()));
    this.inlets.addAll(Names.labels(around.roofs()));
    this.anywhere = new TreeSet<>(inlets);
    this.anywhere.addAll(names.points());
  }

  void check(Test test) {
    faults.known(BookFault.UNKNOWN_TEST_PLACE, test, "at", test.at(), inlets);
    for (int i = 0; i < test.seen().size(); i++) {
      String where = test.seen().get(i).where();
      faults.known(BookFault.UNKNOWN_TEST_PLACE, test, "seen[" + i + "].where", where, anywhere);
    }
    noTime(test);
    level(test);
    held(test);
    caught(test);
  }

  private void noTime(Test test) {
    Reading duration = test.duration();
    if (duration != null && !(duration.value() > 0)) {
      Argument time = new Argument.Quantity(Dimension.DURATION, duration.value());
      faults.add(BookFault.NOT_POSITIVE, test, "duration", time);
    }
    boolean hold = test.kind() == Test.Kind.HOLD;
    boolean lost = test.drop() != null || test.held().toppedUp() != null;
    if (hold && lost && duration == null) {
      faults.add(BookFault.HOLD_WITHOUT_DURATION, test, test.drop() == null ? "topped-up" : "drop");
    }
  }

  private void level(Test test) {
    Reading drop = test.drop();
    switch (test.kind()) {
      case HOLD -> {
        if (drop != null && drop.value() < 0) {
          faults.add(BookFault.HOLD_GAINS, test, "drop", new Argument.Length(-drop.value()));
        }
      }
      case PIT_RISE -> faults.notNegative(test, "drop", drop);
      case WATER_RUN, DYE, SMOKE -> ofOtherTest(test, "drop", drop);
    }
  }

  private void held(Test test) {
    Test.Held held = test.held();
    if (test.kind() != Test.Kind.HOLD) {
      ofOtherTest(test, "reaches", held.reaches().isEmpty() ? null : held.reaches());
      ofOtherTest(test, "riser", held.riser());
      ofOtherTest(test, "head", held.head());
      ofOtherTest(test, "topped-up", held.toppedUp());
      return;
    }
    for (int i = 0; i < held.reaches().size(); i++) {
      String label = held.reaches().get(i);
      String field = "reaches[" + i + "]";
      faults.known(BookFault.UNKNOWN_REACH, test, field, label, names.reaches());
      if (held.reaches().indexOf(label) < i) {
        faults.add(BookFault.HELD_TWICE, test, field, new Argument.Label(label));
      }
    }
    faults.positive(test, "riser", held.riser());
    faults.notNegative(test, "head", held.head());
  }

  private void ofOtherTest(Test test, String field, @Nullable Object written) {
    if (written != null) {
      String kind = "test." + test.kind().name().toLowerCase(Locale.ROOT);
      Argument name = new Argument.Text(field);
      faults.add(BookFault.OF_OTHER_TEST, test, field, new Argument.Term(kind), name);
    }
  }

  /** More may come out than was put in, but then some of it is not of this test. */
  private void caught(Test test) {
    double out = 0;
    int last = -1;
    for (int i = 0; i < test.seen().size(); i++) {
      Reading volume = test.seen().get(i).volume();
      if (volume != null) {
        out += volume.value();
        last = i;
      }
    }
    Reading in = test.volume();
    if (last >= 0 && in != null && out > in.value()) {
      faults.add(
          BookFault.MORE_OUT_THAN_IN,
          test,
          "seen[" + last + "].volume",
          new Argument.Quantity(Dimension.VOLUME, out),
          new Argument.Quantity(Dimension.VOLUME, in.value()));
    }
  }
}
