package daylight.archive;

import daylight.line.survey.Correlated;
import daylight.line.survey.PlaneNetwork;
import daylight.line.survey.Written;
import java.util.Map;

/**
 * A plane network as it was read.
 *
 * @param written every reading as it stands in the file
 */
public record ReadNetwork(PlaneNetwork network, Map<Correlated.Component, Written> written) {
  public ReadNetwork {
    written = Map.copyOf(written);
  }
}
