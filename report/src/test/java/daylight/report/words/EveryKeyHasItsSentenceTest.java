package daylight.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.FileTrouble;
import daylight.footage.FootageTrouble;
import daylight.line.answer.AnswerKey;
import daylight.line.measure.Key;
import daylight.line.measure.Refusal;
import daylight.line.measure.Shown;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class EveryKeyHasItsSentenceTest {
  private final Words words = Words.of(Language.EN, Shown.FEET_INCHES);

  @Test
  void ofEveryRoom() throws Exception {
    List<Class<?>> keys = new ArrayList<>();
    for (Class<?> type : enums()) {
      if (Key.class.isAssignableFrom(type)) {
        keys.add(type);
      }
    }

    assertThat(keys).contains(AnswerKey.class, FileTrouble.class, FootageTrouble.class);
    assertThat(missing(constants(keys).map(one -> ((Key) one).key()))).isEmpty();
  }

  @Test
  void ofEveryWordOfTheFieldBook() throws Exception {
    List<Class<?>> plain =
        enums().stream()
            .filter(type -> type.getName().startsWith("daylight.line.book."))
            .filter(type -> !Key.class.isAssignableFrom(type))
            .toList();

    assertThat(plain).hasSizeGreaterThan(15);
    assertThat(missing(constants(plain).map(one -> Words.keyOf((Enum<?>) one)))).isEmpty();
  }

  @Test
  void ofEveryReasonOfARefusal() {
    Stream<String> keys =
        Stream.of(Refusal.values()).map(one -> "refusal." + one.name().toLowerCase(Locale.ROOT));

    assertThat(missing(keys)).isEmpty();
  }

  @Test
  void ofEveryKindAndQuantityOfTheCatalogue() throws IOException {
    String catalogue;
    try (InputStream in = Key.class.getResourceAsStream("/daylight/line/catalogue.yaml")) {
      catalogue = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
    List<String> ids = found("\\bid: ([\\w-]+)", catalogue);
    List<String> quantities =
        found("quantities: \\{([^}]*)}", catalogue).stream()
            .flatMap(list -> found("([\\w-]+):", list).stream())
            .distinct()
            .toList();

    assertThat(ids).contains("roots", "foreign-pipe");
    assertThat(missing(ids.stream().map(id -> "kind." + id))).isEmpty();
    assertThat(missing(ids.stream().map(id -> "kind." + id + ".short"))).isEmpty();
    assertThat(quantities).contains("share", "width");
    assertThat(missing(quantities.stream().map(name -> "quantity." + name))).isEmpty();
  }

  private List<String> missing(Stream<String> keys) {
    return keys.filter(key -> !words.has(key)).toList();
  }

  private static List<String> found(String pattern, String text) {
    return Pattern.compile(pattern)
        .matcher(text)
        .results()
        .map((MatchResult result) -> result.group(1))
        .toList();
  }

  private static Stream<Object> constants(List<Class<?>> types) {
    return types.stream()
        .flatMap(type -> Stream.of(Objects.requireNonNull(type.getEnumConstants())));
  }

  private static List<Class<?>> enums() throws Exception {
    List<Class<?>> enums = new ArrayList<>();
    for (Class<?> one : List.of(AnswerKey.class, FileTrouble.class, FootageTrouble.class)) {
      Path place = Path.of(one.getProtectionDomain().getCodeSource().getLocation().toURI());
      if (Files.isDirectory(place)) {
        collect(place, enums);
      } else {
        try (FileSystem jar = FileSystems.newFileSystem(place)) {
          collect(jar.getPath("/"), enums);
        }
      }
    }
    return enums;
  }

  private static void collect(Path root, List<Class<?>> enums) throws Exception {
    List<String> names;
    try (Stream<Path> files = Files.walk(root)) {
      names =
          files
              .map(file -> root.relativize(file).toString().replace('\\', '/'))
              .filter(name -> name.startsWith("daylight/") && name.endsWith(".class"))
              .filter(name -> !name.endsWith("package-info.class"))
              .map(name -> name.substring(0, name.length() - 6).replace('/', '.'))
              .sorted()
              .toList();
    }
    for (String name : names) {
      Class<?> type = Class.forName(name, false, Words.class.getClassLoader());
      if (type.isEnum()) {
        enums.add(type);
      }
    }
  }
}
