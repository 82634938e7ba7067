package daylight.line.proving;

import daylight.line.book.FieldBook;
import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.book.Reach;
import daylight.line.book.Surroundings;
import daylight.line.book.Test;
import daylight.line.book.Visit;
import daylight.line.book.Work;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Of every fixture, roof and inlet where it comes in, by everything up to a visit. */
final class ConnectionMap {
  private final FieldBook book;
  private final Waterways ways;
  private final List<Visit> visits;

  ConnectionMap(FieldBook book, Waterways ways, Visit last) {
    this.book = book;
    this.ways = ways;
    this.visits = book.visits().subList(0, book.visits().indexOf(last) + 1);
  }

  List<Connection> all() {
    List<Connection> all = new ArrayList<>();
    Surroundings around = book.site().surroundings();
    for (Surroundings.Fixture one : around.fixtures()) {
      all.add(of(one.label(), Connection.Kind.FIXTURE, one.kind(), one.node()));
    }
    for (Surroundings.Roof one : around.roofs()) {
      all.add(of(one.label(), Connection.Kind.ROOF, null, one.node()));
    }
    for (Node node : book.site().nodes()) {
      boolean told = all.stream().anyMatch(one -> one.node().equals(node.label()));
      if (node.kind() == Node.Kind.INLET && !told) {
        all.add(of(node.label(), Connection.Kind.INLET, node.what(), node.label()));
      }
    }
    return all;
  }

  private Connection of(String source, Connection.Kind kind, @Nullable String what, String node) {
    List<Reach> own = isMouth(node) ? ways.own(node) : List.of();
    String joins = own.isEmpty() ? node : own.getLast().downstream();
    Set<String> tested = new LinkedHashSet<>();
    Set<String> seen = new LinkedHashSet<>();
    Set<String> opening = new LinkedHashSet<>();
    Set<String> against = new LinkedHashSet<>();
    for (Visit visit : visits) {
      if (holds(visit, own)) {
        tests(visit, source, node, tested, against);
        visit.passes().stream()
            .filter(pass -> wentThrough(pass, own, node, joins))
            .forEach(pass -> seen.add(pass.label()));
        openings(visit, joins).forEach(opening::add);
      }
    }
    Connection.Known known =
        !tested.isEmpty()
            ? Connection.Known.TESTED
            : !seen.isEmpty()
                ? Connection.Known.SEEN
                : !opening.isEmpty() ? Connection.Known.OPENING_SEEN : Connection.Known.ASSUMED;
    List<String> by =
        switch (known) {
          case TESTED -> List.copyOf(tested);
          case SEEN -> List.copyOf(seen);
          case OPENING_SEEN -> List.copyOf(opening);
          case ASSUMED -> List.<String>of();
        };
    return new Connection(source, kind, what, node, joins, known, by, List.copyOf(against));
  }

  /** What a visit found holds until one of the pipes is laid otherwise. */
  private boolean holds(Visit visit, List<Reach> own) {
    return visits.subList(visits.indexOf(visit) + 1, visits.size()).stream()
        .flatMap(later -> later.works().stream())
        .noneMatch(
            work ->
                work instanceof Work.Repair repair
                    && repair.altered()
                    && own.stream().anyMatch(reach -> reach.label().equals(repair.reach())));
  }

  private void tests(
      Visit visit, String source, String node, Set<String> tested, Set<String> against) {
    for (Test test : visit.tests()) {
      for (Passage passage : Prover.passages(ways, test)) {
        boolean from = isAt(test.at(), source, node);
        boolean smokeTo =
            test.kind() == Test.Kind.SMOKE && isAt(passage.seen().where(), source, node);
        boolean away = !test.at().equals(passage.seen().where());
        boolean told = away && (from || smokeTo);
        switch (passage.meaning()) {
          case AS_THE_BOOK_SAYS, INDOORS, ELSEWHERE, DID_NOT_COME -> {
            boolean agrees = passage.said() && passage.seen().arrived();
            if (told) {
              (agrees ? tested : against).add(test.label());
            }
          }
          case OUT_OF_THE_GROUND, NOTHING -> {}
        }
      }
    }
  }

  /** A place of a test is the source itself by its own label, or where it is its mouth. */
  private boolean isAt(String place, String source, String node) {
    return place.equals(source) || (place.equals(node) && isMouth(node));
  }

  /**
   * An inlet is the mouth of what drains into it. Any other node, such as a cleanout, only passes
   * on what comes to it: a camera or dye put in there shows nothing of a fixture beside it.
   */
  private boolean isMouth(String node) {
    return book.site().findNode(node).filter(one -> one.kind() == Node.Kind.INLET).isPresent();
  }

  /** Whether the camera went from one end of its own pipe to the other. */
  private static boolean wentThrough(Pass pass, List<Reach> own, String node, String joins) {
    List<String> walk = pass.walk().stream().map(Pass.Leg::reach).toList();
    if (own.isEmpty() || !walk.containsAll(own.stream().map(Reach::label).toList())) {
      return false;
    }
    boolean turnsSeen =
        pass.walk().stream()
            .filter(leg -> own.stream().anyMatch(reach -> reach.label().equals(leg.reach())))
            .allMatch(Pass.Leg::seen);
    return turnsSeen && came(pass, node, own) && came(pass, joins, own);
  }

  /** Whether a push was at a node: it began or ended there, saw it, or went on beyond it. */
  private static boolean came(Pass pass, String node, List<Reach> own) {
    Pass.End end = pass.end();
    boolean ended = end != null && node.equals(end.node());
    boolean noted = pass.findings().stream().anyMatch(finding -> node.equals(finding.node()));
    String last = pass.walk().getLast().reach();
    boolean beyond =
        pass.entry().equals(own.getFirst().upstream())
            && own.stream().noneMatch(reach -> reach.label().equals(last));
    return pass.entry().equals(node) || ended || noted || beyond;
  }

  private static Stream<String> openings(Visit visit, String joins) {
    return visit.passes().stream()
        .flatMap(pass -> pass.findings().stream())
        .filter(finding -> joins.equals(finding.node()))
        .map(finding -> finding.label());
  }
}
