package daylight.line.proving;

import daylight.line.book.Landmark;
import daylight.line.book.Node;
import daylight.line.book.Reach;
import daylight.line.book.Site;
import daylight.line.book.Surroundings;
import daylight.line.book.WaterWay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What of a site drains where: nodes, fixtures, roofs and points on the ground by their labels. */
final class Waterways {
  private final Site site;

  Waterways(Site site) {
    this.site = site;
  }

  /** The node that a node, a fixture or a roof drains into; empty for a point on the ground. */
  Optional<String> node(String label) {
    Surroundings around = site.surroundings();
    return site.findNode(label)
        .map(Node::label)
        .or(
            () ->
                around.fixtures().stream()
                    .filter(one -> one.label().equals(label))
                    .map(Surroundings.Fixture::node)
                    .findFirst())
        .or(
            () ->
                around.roofs().stream()
                    .filter(one -> one.label().equals(label))
                    .map(Surroundings.Roof::node)
                    .findFirst());
  }

  boolean isFixture(String label) {
    return site.findNode(label).isEmpty()
        && site.surroundings().fixtures().stream().anyMatch(one -> one.label().equals(label));
  }

  /** A cover or a well is the way into another pipe, and not bare ground. */
  boolean isGround(String label) {
    boolean pipe =
        site.landmarks().stream()
            .filter(one -> one.label().equals(label))
            .anyMatch(one -> one.kind() == Landmark.Kind.COVER || one.kind() == Landmark.Kind.WELL);
    return node(label).isEmpty() && !pipe;
  }

  /** Whether water put in at one node may come to another. */
  boolean leads(String from, String to) {
    return WaterWay.leads(site, from, to);
  }

  /** Whether it must, if the book is right. */
  boolean leadsSurely(String from, String to) {
    return WaterWay.leadsSurely(site, from, to);
  }

  /** Whether air may go from one node to another. */
  boolean hangTogether(String one, String other) {
    return WaterWay.hangTogether(site, one, other);
  }

  /** How many reaches bring water to a node. */
  long into(String node) {
    return site.reaches().stream().filter(reach -> reach.downstream().equals(node)).count();
  }

  /**
   * The reaches from a node down to where they come into another pipe: none from a node that other
   * water comes to.
   */
  List<Reach> own(String node) {
    List<Reach> own = new ArrayList<>();
    String at = node;
    boolean on = into(node) == 0;
    while (on) {
      String here = at;
      Optional<Reach> next =
          site.reaches().stream()
              .filter(reach -> reach.upstream().equals(here) && !own.contains(reach))
              .findFirst();
      next.ifPresent(own::add);
      at = next.map(Reach::downstream).orElse(at);
      on = next.isPresent() && into(at) == 1;
    }
    return own;
  }
}
