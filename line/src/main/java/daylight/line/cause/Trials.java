package daylight.line.cause;

import daylight.line.book.Node;
import daylight.line.book.Test;
import daylight.line.book.WaterWay;
import daylight.line.proving.HeldTest;
import daylight.line.proving.HoldVerdict;
import daylight.line.proving.Passage;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** What the tests on the line say of the pipe in question; what each proved is not asked again. */
final class Trials {
  private final Scene scene;
  private final boolean placed;
  private final Set<String> reaches = new TreeSet<>();
  private final Set<String> ours = new TreeSet<>();

  /**
   * Of the pipe in question.
   *
   * @param placed whether it is known where the complaint shows
   */
  Trials(Scene scene, boolean placed, List<Where.Span> spans) {
    this.scene = scene;
    this.placed = placed;
    for (Where.Span span : spans) {
      reaches.add(span.reach());
      scene.line().findRun(span.reach()).ifPresent(run -> ours.add(run.reach().line()));
    }
  }

  /** Whether a test was done that an ask asks for. */
  boolean done(Ask ask) {
    return switch (ask) {
      case WATER_RUN ->
          passages(Test.Kind.WATER_RUN, Test.Kind.DYE).stream()
              .anyMatch(passage -> reaches.stream().anyMatch(through(passage)::contains));
      case HOLD_TEST -> holds().stream().anyMatch(held -> held.hold() != null);
      case SMOKE_TEST -> !passages(Test.Kind.SMOKE).isEmpty();
      case CAMERA, LEVELS, DEPTH, VENTS, RAIN, METER, DRY_SPELL, OUTLET_WATER, FILL -> false;
    };
  }

  /** The clue of a sign of tests; none where it is not there. */
  List<Clue> clues(Sign sign, double times) {
    Optional<? extends Clue> clue =
        switch (sign) {
          case ARRIVED -> water(sign, times, Passage.Meaning.AS_THE_BOOK_SAYS);
          case NOT_ARRIVED -> water(sign, times, Passage.Meaning.DID_NOT_COME);
          case HELD -> held(sign, times, HoldVerdict.Verdict.PASSES);
          case FELL -> held(sign, times, HoldVerdict.Verdict.FAILS);
          case SMOKE_INSIDE, SMOKE_FROM_GROUND -> smoke(sign, times);
          case NO_SMOKE -> noSmoke(times);
          case FOUND, NOT_FOUND, STOPPED, TOO_FLAT, BACKWARD, FALLS, SHALLOW, DEEP, WHEN ->
              Optional.<Clue>empty();
        };
    return clue.<List<Clue>>map(List::of).orElse(List.of());
  }

  private List<Passage> passages(Test.Kind... kinds) {
    return scene.proving().passages().stream()
        .filter(passage -> List.of(kinds).contains(passage.test().kind()))
        .filter(passage -> lines(passage.node()).stream().anyMatch(ours::contains))
        .toList();
  }

  private Set<String> lines(String node) {
    Set<String> lines = new TreeSet<>();
    scene.line().runs().stream()
        .map(run -> run.reach())
        .filter(reach -> reach.from().equals(node) || reach.to().equals(node))
        .forEach(reach -> lines.add(reach.line()));
    return lines;
  }

  private Set<String> through(Passage passage) {
    return WaterWay.below(scene.book().site(), passage.node());
  }

  /**
   * Water that came speaks for all of the pipe in question, and only if it came out behind it;
   * water that did not come may have been lost anywhere on its way.
   */
  private Optional<Clue> water(Sign sign, double times, Passage.Meaning meaning) {
    boolean all = sign == Sign.ARRIVED && placed;
    return passages(Test.Kind.WATER_RUN, Test.Kind.DYE).stream()
        .filter(passage -> passage.meaning() == meaning)
        .filter(
            passage ->
                all
                    ? through(passage).containsAll(reaches)
                    : reaches.stream().anyMatch(through(passage)::contains))
        .filter(this::reachesEnd)
        .findFirst()
        .map(passage -> new Clue.Tried(times, sign, passage.test(), passage.seen()));
  }

  private boolean reachesEnd(Passage passage) {
    Set<String> after = WaterWay.below(scene.book().site(), passage.seen().where());
    return reaches.stream().filter(through(passage)::contains).noneMatch(after::contains);
  }

  private List<HeldTest> holds() {
    return scene.proving().holds().stream()
        .filter(held -> held.reaches().stream().anyMatch(reaches::contains))
        .toList();
  }

  /** What was held whole speaks for every part; what leaked may leak in the part in question. */
  private Optional<Clue> held(Sign sign, double times, HoldVerdict.Verdict verdict) {
    for (HeldTest held : holds()) {
      Optional<HoldVerdict> told =
          held.deciding()
              .or(() -> held.against().stream().findFirst())
              .filter(one -> one.verdict() == verdict);
      if (told.isPresent() && (sign == Sign.FELL || held.reaches().containsAll(reaches))) {
        return Optional.of(new Clue.Filled(times, sign, held.test(), told.get().limit()));
      }
    }
    return Optional.empty();
  }

  private Optional<Clue> smoke(Sign sign, double times) {
    return passages(Test.Kind.SMOKE).stream()
        .filter(passage -> tells(passage) == sign)
        .findFirst()
        .map(passage -> new Clue.Tried(times, sign, passage.test(), passage.seen()));
  }

  private Optional<Clue> noSmoke(double times) {
    List<Passage> all = passages(Test.Kind.SMOKE);
    return all.stream().anyMatch(passage -> passage.seen().arrived())
        ? Optional.empty()
        : all.stream()
            .findFirst()
            .map(passage -> new Clue.Tried(times, Sign.NO_SMOKE, passage.test(), null));
  }

  private @Nullable Sign tells(Passage passage) {
    return switch (passage.meaning()) {
      case INDOORS -> Sign.SMOKE_INSIDE;
      case OUT_OF_THE_GROUND -> Sign.SMOKE_FROM_GROUND;
      case AS_THE_BOOK_SAYS, ELSEWHERE -> at(passage.seen().where());
      case DID_NOT_COME, NOTHING -> null;
    };
  }

  /** Out of an outlet smoke comes from every drain. */
  private @Nullable Sign at(String label) {
    boolean fixture =
        scene.book().site().surroundings().fixtures().stream()
            .anyMatch(one -> one.node().equals(label));
    Optional<Node.Kind> kind = scene.book().site().findNode(label).map(Node::kind);
    if (fixture) {
      return Sign.SMOKE_INSIDE;
    }
    return kind.map(
            one ->
                switch (one) {
                  case INLET, ACCESS, PIT -> Sign.SMOKE_INSIDE;
                  case JUNCTION, END -> Sign.SMOKE_FROM_GROUND;
                  case OUTLET -> null;
                })
        .orElse(null);
  }
}
