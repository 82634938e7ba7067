package daylight.archive;

import daylight.archive.form.Fields;
import daylight.line.book.Exposure;
import daylight.line.book.Kit;
import daylight.line.book.Level;
import daylight.line.book.Locate;
import daylight.line.book.Pass;
import daylight.line.book.Reported;
import daylight.line.book.Test;
import daylight.line.book.Tie;
import daylight.line.book.Visit;
import daylight.line.book.Work;
import daylight.line.measure.Argument;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads one visit. */
final class VisitReader {
  private final Clerk clerk;
  private final SiteDraft site;
  private final @Nullable Path folder;

  VisitReader(Clerk clerk, SiteDraft site, @Nullable Path folder) {
    this.clerk = clerk;
    this.site = site;
    this.folder = folder;
  }

  Visit read(Fields visit) {
    LocalDate date = visit.date("date");
    Moments moments = new Moments(clerk.zone(), date);
    var id = clerk.name(visit, "visit", "V");
    List<Pass> passes = new PassReader(clerk, site, moments).passes(visit);
    List<Tie> ties = new ArrayList<>();
    SpotReader spots = new SpotReader(clerk, site, moments, ties);
    List<Locate> locates = spots.locates(visit);
    List<Exposure> exposures = spots.exposures(visit);
    spots.ofOthers(visit);
    TieReader tieReader = new TieReader(clerk, site);
    visit.rows("ties").forEach(row -> tieReader.read(row, ties));
    List<Level> levels = new LevelReader(clerk).levels(visit);
    WorkReader works = new WorkReader(clerk);
    List<Test> tests = works.tests(visit);
    List<Work> done = works.works(visit);
    return new Visit(
        id,
        date,
        visit.texts("crew"),
        complaint(visit),
        kit(visit.part("kit")),
        passes,
        locates,
        exposures,
        ties,
        levels,
        tests,
        done,
        new PaperReader(clerk, moments, folder).papers(visit));
  }

  private static @Nullable Reported complaint(Fields visit) {
    if (!visit.hasKeys("complaint")) {
      String words = visit.words("complaint");
      return words == null ? null : Reported.inWords(words);
    }
    Fields part = visit.part("complaint");
    if (part == null) {
      return null;
    }
    Reported said =
        new Reported(
            part.words("words"),
            Scalars.choices(part, "kinds", Reported.Kind.class),
            part.words("at"),
            part.choice("when", Reported.When.class));
    return said.isBare() && said.words() == null ? null : said;
  }

  private static Kit kit(@Nullable Fields kit) {
    if (kit == null) {
      return Kit.UNRECORDED;
    }
    return new Kit(
        kit.words("camera"),
        kit.reading("sonde-behind-lens"),
        kit.reading("sonde-above-invert"),
        kit.words("receiver"),
        Scalars.shift(kit, "clock-offset"),
        burned(kit.part("counter")));
  }

  private static Kit.@Nullable Burned burned(@Nullable Fields counter) {
    if (counter == null) {
      return null;
    }
    Kit.Region region = counter.has("region") ? region(counter) : null;
    return new Kit.Burned(region, Scalars.unit(counter, "unit"));
  }

  private static Kit.@Nullable Region region(Fields counter) {
    List<String> pixels = counter.texts("region");
    boolean whole = pixels.stream().allMatch(text -> text.matches("\\d{1,5}"));
    if (pixels.size() == 4 && whole) {
      List<Integer> at = pixels.stream().map(Integer::valueOf).toList();
      if (at.get(2) > 0 && at.get(3) > 0) {
        return new Kit.Region(at.get(0), at.get(1), at.get(2), at.get(3));
      }
    }
    counter.complain(
        FileTrouble.NOT_A_REGION, "region", new Argument.Text(String.join(", ", pixels)));
    return null;
  }
}
