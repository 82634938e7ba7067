package daylight.app.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The list of phones beside an archive. */
class RegisterTest {
  private static final Instant NOW = Instant.parse("2026-11-27T15:00:00Z");
  @TempDir private Path folder = Path.of("");

  private static Phone phone(String number) {
    return new Phone(number, "Kim’s “phone”", true, NOW, NOW, null);
  }

  @Test
  void whatItKeepsIsThereAfterARestartAndOnlyItsOwnerCanReadIt() throws IOException {
    Register register = Register.of(folder);
    register.port(8731);
    register.join(phone("a"));
    register.join(phone("b"));
    register.revoke("b", NOW.plusSeconds(60));
    Register again = Register.of(folder);

    assertThat(again.port()).isEqualTo(8731);
    assertThat(again.find("a")).contains(phone("a"));
    assertThat(again.find("b").orElseThrow().revoked()).isEqualTo(NOW.plusSeconds(60));
    assertThat(again.find("c")).isEmpty();
    assertThat(
            PosixFilePermissions.toString(
                Files.getPosixFilePermissions(folder.resolve(Register.FILE))))
        .isEqualTo("rw-------");
  }

  @Test
  void lastSeenIsWrittenOnceAMinute() throws IOException {
    Register register = Register.of(folder);
    register.join(phone("a"));
    register.seen("a", NOW.plusSeconds(59));
    assertThat(register.find("a").orElseThrow().seen()).isEqualTo(NOW.plusSeconds(59));
    assertThat(Register.of(folder).find("a").orElseThrow().seen()).isEqualTo(NOW);
    register.seen("a", NOW.plus(Duration.ofMinutes(2)));

    assertThat(Register.of(folder).find("a").orElseThrow().seen())
        .isEqualTo(NOW.plus(Duration.ofMinutes(2)));
  }

  /** A folder in the way of the file stands for a disk that takes nothing. */
  @Test
  void whatCannotBeWrittenIsNotThereButWhoIsTakenOffIsOff() throws IOException {
    Register register = Register.of(folder);
    register.join(phone("a"));
    Path way = Files.createDirectories(folder.resolve("." + Register.FILE + ".new/in-the-way"));

    assertThatThrownBy(() -> register.join(phone("b"))).isInstanceOf(IOException.class);
    assertThat(register.find("b")).isEmpty();
    assertThatThrownBy(() -> register.port(1)).isInstanceOf(IOException.class);
    assertThat(register.port()).isZero();
    register.seen("a", NOW.plusSeconds(600));
    assertThatThrownBy(() -> register.revoke("a", NOW)).isInstanceOf(IOException.class);
    assertThat(register.find("a").orElseThrow().isJoined()).isFalse();
    assertThat(way).exists();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{",
        "[]",
        "{\"port\":70000,\"phones\":[]}",
        "{\"port\":1,\"phones\":[{\"number\":\"a\"}]}",
        "{\"port\":1,\"phones\":[{\"number\":\"a\",\"name\":\"b\",\"secure\":true,\"since\":\"x\",\"seen\":\"y\"}]}"
      })
  void whatIsNoListOfPhonesIsRefusedAndStaysAsItIs(String text) throws IOException {
    Path file = Files.writeString(folder.resolve(Register.FILE), text);

    assertThatThrownBy(() -> Register.of(folder))
        .isInstanceOf(IOException.class)
        .hasMessageContaining(Register.FILE)
        .hasMessageContaining("expected an object with port and phones");
    assertThat(file).hasContent(text);
  }
}
