package daylight.archive.store;

import java.util.List;

/**
 * Some of the sites that were looked for.
 *
 * @param from how many go before the first of them
 * @param sites in the order of their names
 * @param of how many were found in all
 */
public record SitesFound(int from, List<KeptSite> sites, int of) {
  public SitesFound {
    sites = List.copyOf(sites);
  }
}
