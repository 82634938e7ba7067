package daylight.app;

import daylight.app.track.TrackFiles;
import daylight.archive.Folders;
import daylight.archive.MediaFiles;
import daylight.archive.Sha256;
import daylight.archive.seal.Bundle;
import daylight.archive.seal.Content;
import daylight.archive.seal.SealCheck;
import daylight.archive.seal.SealTrouble;
import daylight.archive.store.Archive;
import daylight.footage.codec.Footage;
import daylight.line.book.Papers.Media;
import daylight.line.measure.Argument;
import daylight.line.measure.Shown;
import daylight.line.measure.Statement;
import daylight.report.Report;
import daylight.report.draw.PlanTurn;
import daylight.report.page.Paper;
import daylight.report.words.Language;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;

/**
 * What an answer rests on and what came of it, sealed in one file; and the same answered again from
 * that file. In it are the book as it was answered, the recordings and photographs that it names
 * and that are there, tables of one's own, the tracks read from the recordings, and every result.
 */
public final class SealedAnswer {
  private static final String BOOK = "book/";
  private static final String RESULTS = "results/";
  private static final String RULES = "rules/";
  private static final String TRACKS = "tracks/";
  private static final String NONE = "-";

  private SealedAnswer() {}

  /** What came of sealing. */
  public sealed interface Outcome {
    /**
     * It was sealed.
     *
     * @param files in the bundle, beside its list
     */
    record Sealed(Sha256 seal, int files) implements Outcome {}

    /** The book cannot be answered. */
    record NotAnswered(Job.Outcome.Refused refused) implements Outcome {}

    /** It was not written. */
    record NotSealed(Statement why) implements Outcome {}
  }

  /**
   * Answers a book and seals it.
   *
   * @param book its file, or a folder that holds {@code field-book.yaml}
   */
  public static Outcome seal(Path book, Job.Settings settings, Progress progress, Path target) {
    Path file = Files.isDirectory(book) ? book.resolve("field-book.yaml") : book;
    if (Files.exists(target)) {
      return notSealed(SealTrouble.THERE_ALREADY, target.toString());
    }
    try {
      // As it is now: the answer is that of these bytes, or the seal says that they moved.
      byte[] before = Files.isRegularFile(file) ? Files.readAllBytes(file) : new byte[0];
      return switch (Job.answer(file, settings, progress)) {
        case Job.Outcome.Refused refused -> new Outcome.NotAnswered(refused);
        case Job.Outcome.Answered answered ->
            Arrays.equals(before, Files.readAllBytes(file))
                ? seal(file, before, settings, answered, target)
                : notSealed(SealTrouble.MOVING, file.toString());
      };
    } catch (IOException e) {
      return notSealed(SealTrouble.NOT_WRITTEN, file.toString(), e.toString());
    }
  }

  /**
   * The same of a site of the archive, as it is now.
   *
   * <p>Refused: an identity of which no book is kept.
   */
  public static Outcome seal(
      Archive archive, UUID book, Job.Settings settings, Progress progress, Path target) {
    try {
      Path folder = target.toAbsolutePath().getParent();
      Files.createDirectories(folder);
      Path work = Files.createTempDirectory(folder, ".sealing");
      try {
        return seal(laid(archive, book, work), settings, progress, target);
      } finally {
        Folders.delete(work);
      }
    } catch (IOException e) {
      return notSealed(SealTrouble.NOT_WRITTEN, target.toString(), e.toString());
    }
  }

  /** A book of the archive as a file with what it names beside it, as in a bundle. */
  private static Path laid(Archive archive, UUID book, Path work) throws IOException {
    String written =
        archive.written(book).orElseThrow(() -> new IllegalArgumentException(book.toString()));
    for (Map.Entry<String, Sha256> one : archive.mediaOf(book).entrySet()) {
      Path kept = archive.media().file(one.getValue()).orElse(null);
      if (kept != null && !MediaFiles.leadsOut(one.getKey())) {
        Path beside = work.resolve(one.getKey());
        Files.createDirectories(beside.getParent());
        link(kept, beside);
      }
    }
    return Files.writeString(work.resolve("field-book.yaml"), written);
  }

  /** A second name for a recording costs nothing; not every disk gives one. */
  private static void link(Path kept, Path beside) throws IOException {
    try {
      Files.createLink(beside, kept);
    } catch (IOException | UnsupportedOperationException e) {
      Files.copy(kept, beside);
    }
  }

  private static Outcome seal(
      Path file, byte[] book, Job.Settings settings, Job.Outcome.Answered answered, Path target) {
    SortedMap<String, Content> contents = new TreeMap<>();
    String name = String.valueOf(file.getFileName());
    contents.put(BOOK + name, Content.of(book));
    for (Media media : media(answered)) {
      Path beside = file.resolveSibling(media.file());
      if (Files.isRegularFile(beside)) {
        contents.put(BOOK + media.file(), Content.of(beside));
      }
    }
    // Under its own name, by which it is called where something is said of it.
    settings
        .rules()
        .own()
        .forEach((of, own) -> contents.put(RULES + of + "/" + own.getFileName(), Content.of(own)));
    Path letterhead = settings.rules().letterhead();
    String logo = answered.handout().sender().letterhead().logo();
    if (letterhead != null && logo != null) {
      String beside = RULES + RuleChoice.LETTERHEAD + "/" + logo;
      Logo.file(letterhead, logo).ifPresent(one -> contents.put(beside, Content.of(one)));
    }
    made(answered).forEach((result, bytes) -> contents.put(result, Content.of(bytes)));
    String unfit = contents.keySet().stream().filter(n -> !Bundle.isName(n)).findFirst().orElse("");
    if (!unfit.isEmpty()) {
      return notSealed(SealTrouble.NAME, unfit);
    }
    return switch (Bundle.write(target, facts(name, settings), contents)) {
      case Bundle.Outcome.Sealed(Sha256 seal) -> new Outcome.Sealed(seal, contents.size());
      case Bundle.Outcome.Refused(Statement why) -> new Outcome.NotSealed(why);
    };
  }

  /** What was computed: the tracks that the line was estimated with, and every result. */
  private static SortedMap<String, byte[]> made(Job.Outcome.Answered answered) {
    SortedMap<String, byte[]> made = new TreeMap<>();
    TrackFiles.of(answered.tracks()).forEach((name, bytes) -> made.put(TRACKS + name, bytes));
    Report.files(answered.handout()).forEach((name, bytes) -> made.put(RESULTS + name, bytes));
    return made;
  }

  private static List<Media> media(Job.Outcome.Answered answered) {
    return answered.handout().book().visits().stream()
        .flatMap(visit -> visit.papers().media().stream())
        .toList();
  }

  private static Outcome notSealed(SealTrouble why, String... about) {
    Argument[] arguments = Arrays.stream(about).map(Argument.Text::new).toArray(Argument[]::new);
    return new Outcome.NotSealed(Statement.of(why, arguments));
  }

  /** With what, and as what, it was answered. */
  private static Map<String, String> facts(String book, Job.Settings settings) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("program", Program.VERSION);
    facts.put("program-digest", Program.digest().map(Sha256::hex).orElse(NONE));
    facts.put("decoder", Footage.library());
    facts.put("book", book);
    facts.put("visit", settings.visit() == null ? NONE : "=" + settings.visit());
    facts.put("language", word(settings.language()));
    facts.put("units", word(settings.shown()));
    facts.put("paper", word(settings.paper()));
    facts.put("plan", word(settings.plan()));
    facts.put("slopes", settings.rules().fall());
    facts.put("letters", settings.rules().letters() ? "yes" : "no");
    // Its logo lies beside it, so it is told which of the two it is.
    Path letterhead = settings.rules().letterhead();
    facts.put(
        RuleChoice.LETTERHEAD,
        letterhead == null ? NONE : String.valueOf(letterhead.getFileName()));
    return facts;
  }

  private static String word(@Nullable Enum<?> value) {
    return value == null ? NONE : value.name().toLowerCase(Locale.ROOT);
  }

  private static <E extends Enum<E>> @Nullable E value(Class<E> of, @Nullable String word) {
    return word == null || word.equals(NONE)
        ? null
        : Enum.valueOf(of, word.toUpperCase(Locale.ROOT));
  }

  /**
   * A bundle answered again.
   *
   * @param differing results that come out otherwise, or not at all, or that were not sealed
   * @param other whether it was sealed by another version of the program or its decoder
   */
  public record Again(List<String> differing, boolean other) {
    public Again {
      differing = List.copyOf(differing);
    }
  }

  /**
   * Answers the book of a bundle as it was answered when it was sealed, and compares every result
   * byte by byte.
   *
   * @param checked that it is unchanged
   * @throws IOException where it cannot be unpacked, or is none of an answer
   */
  public static Again again(Path bundle, SealCheck.Checked checked, Progress progress)
      throws IOException {
    Path work = Files.createTempDirectory("daylight-again");
    try {
      unpack(bundle, work);
      Map<String, String> facts = checked.facts();
      String book = BOOK + facts.getOrDefault("book", "");
      if (!Bundle.isName(book)) {
        throw new IOException(book);
      }
      if (!(Job.answer(work.resolve(book), settings(facts, work), progress)
          instanceof Job.Outcome.Answered answered)) {
        return new Again(List.of(book), isOther(facts));
      }
      return new Again(differing(made(answered), work), isOther(facts));
    } catch (IllegalArgumentException | UncheckedIOException e) {
      throw new IOException(e);
    } finally {
      Folders.delete(work);
    }
  }

  private static boolean isOther(Map<String, String> facts) {
    return !Program.digest().map(Sha256::hex).orElse(NONE).equals(facts.get("program-digest"))
        || !Footage.library().equals(facts.get("decoder"));
  }

  private static Job.Settings settings(Map<String, String> facts, Path work) {
    String visit = facts.getOrDefault("visit", NONE);
    RuleChoice rules =
        RuleChoice.of(
            facts.getOrDefault("slopes", RuleChoice.USUAL.fall()),
            "yes".equals(facts.get("letters")),
            of -> own(facts, work, of));
    PlanTurn plan = value(PlanTurn.class, facts.get("plan"));
    return new Job.Settings(
        value(Language.class, facts.get("language")),
        value(Shown.class, facts.get("units")),
        value(Paper.class, facts.get("paper")),
        rules,
        visit.startsWith("=") ? visit.substring(1) : null,
        plan == null ? PlanTurn.AS_IT_FITS : plan);
  }

  private static @Nullable Path own(Map<String, String> facts, Path work, String of) {
    String name = facts.getOrDefault(RuleChoice.LETTERHEAD, NONE);
    if (of.equals(RuleChoice.LETTERHEAD)) {
      String file = RULES + of + "/" + name;
      return name.equals(NONE) || !Bundle.isName(file) ? null : work.resolve(file);
    }
    return only(work.resolve(RULES + of));
  }

  /** The one file in a folder; null where there is none. */
  private static @Nullable Path only(Path folder) {
    if (!Files.isDirectory(folder)) {
      return null;
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.findFirst().orElse(null);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> differing(SortedMap<String, byte[]> now, Path work)
      throws IOException {
    TreeSet<String> names = new TreeSet<>(now.keySet());
    for (String folder : List.of(TRACKS, RESULTS)) {
      if (Files.isDirectory(work.resolve(folder))) {
        try (Stream<Path> files = Files.walk(work.resolve(folder))) {
          files
              .filter(Files::isRegularFile)
              .map(one -> work.relativize(one).toString().replace('\\', '/'))
              .forEach(names::add);
        }
      }
    }
    List<String> differing = new ArrayList<>();
    for (String name : names) {
      byte[] fresh = now.get(name);
      Path before = work.resolve(name);
      if (fresh == null
          || !Files.isRegularFile(before)
          || !Arrays.equals(fresh, Files.readAllBytes(before))) {
        differing.add(name);
      }
    }
    return differing;
  }

  private static void unpack(Path bundle, Path work) throws IOException {
    try (ZipFile zip = new ZipFile(bundle.toFile())) {
      for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
        ZipEntry entry = all.nextElement();
        // All others are files of the bundle, for it is unchanged.
        if (!Bundle.isName(entry.getName())) {
          continue;
        }
        Path to = work.resolve(entry.getName());
        Files.createDirectories(to.getParent());
        try (InputStream in = zip.getInputStream(entry)) {
          Files.copy(in, to);
        }
      }
    }
  }
}
