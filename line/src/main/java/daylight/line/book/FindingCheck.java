package daylight.line.book;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Nearest;
import daylight.line.measure.Reading;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** A finding has the quantities of its kind, and its water fits in the pipe. */
final class FindingCheck {
  private static final String DEPTH = "depth";

  private final FaultList faults;
  private final Names names;
  private final Catalogue catalogue;

  FindingCheck(FaultList faults, Names names, Catalogue catalogue) {
    this.faults = faults;
    this.names = names;
    this.catalogue = catalogue;
  }

  /**
   * @param bore the largest that the finding can lie in, in metres; null when it is not known
   */
  void check(Finding finding, @Nullable Double bore) {
    faults.known(BookFault.UNKNOWN_NODE, finding, "node", finding.node(), names.nodes());
    for (int i = 0; i < finding.stills().size(); i++) {
      String field = "stills[" + i + "]";
      faults.known(BookFault.UNKNOWN_MEDIA, finding, field, finding.stills().get(i), names.media());
    }
    Set<String> shown = new TreeSet<>(finding.stills());
    for (int i = 0; i < finding.outlines().size(); i++) {
      String on = finding.outlines().get(i).on();
      faults.known(BookFault.UNKNOWN_STILL, finding, "outlines[" + i + "].on", on, shown);
    }
    Optional<Catalogue.Kind> kind = catalogue.find(finding.kind());
    if (kind.isEmpty()) {
      Set<String> known = new TreeSet<>();
      catalogue.kinds().forEach(each -> known.add(each.id()));
      List<String> near = Nearest.of(finding.kind(), known).stream().toList();
      Argument kindText = new Argument.Text(finding.kind());
      faults.add(BookFault.UNKNOWN_KIND, finding, "kind", kindText, new Argument.Choices(near));
      return;
    }
    finding.quantities().forEach((name, size) -> quantity(finding, name, size, kind.get(), bore));
    finding.words().forEach((name, said) -> word(finding, name, said, kind.get()));
  }

  private void word(Finding finding, String name, String said, Catalogue.Kind kind) {
    List<String> may = kind.says().getOrDefault(name, List.of());
    if (!may.isEmpty() && !may.contains(said)) {
      Argument text = new Argument.Text(said);
      faults.add(BookFault.SAYS_OTHERWISE, finding, name, text, new Argument.Choices(may));
    }
  }

  private void quantity(
      Finding finding, String name, Reading size, Catalogue.Kind kind, @Nullable Double bore) {
    Dimension dimension = kind.quantities().get(name);
    if (dimension == null) {
      faults.add(BookFault.QUANTITY_OF_OTHER_KIND, finding, name, new Argument.Text(name));
    }
    if (dimension == Dimension.LENGTH) {
      faults.notNegative(finding, name, size);
    }
    if (name.equals(DEPTH)
        && dimension == Dimension.LENGTH
        && bore != null
        && size.value() > bore) {
      Argument deep = new Argument.Small(size.value());
      faults.add(BookFault.DEEPER_THAN_BORE, finding, name, deep, new Argument.Bore(bore));
    }
  }
}
