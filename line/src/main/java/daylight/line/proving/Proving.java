package daylight.line.proving;

import java.util.List;

/**
 * What the tests proved.
 *
 * @param holds the hold tests of the visit
 * @param poured how much of the water put in was caught
 * @param passages what was put in somewhere and looked for elsewhere, on the visit
 * @param connections of every fixture, roof and inlet where it comes in and how that is known, by
 *     everything up to the visit
 */
public record Proving(
    List<HeldTest> holds,
    List<Poured> poured,
    List<Passage> passages,
    List<Connection> connections) {
  /** Nothing was tested and nothing comes in. */
  public static final Proving NONE = new Proving(List.of(), List.of(), List.of(), List.of());

  public Proving {
    holds = List.copyOf(holds);
    poured = List.copyOf(poured);
    passages = List.copyOf(passages);
    connections = List.copyOf(connections);
  }
}
