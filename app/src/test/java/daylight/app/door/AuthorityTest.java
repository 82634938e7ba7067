package daylight.app.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.security.spec.PKCS8EncodedKeySpec;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The archive's own certificate authority; what it signs is judged by another implementation. */
class AuthorityTest {
  private static final Instant NOW = Instant.parse("2026-11-27T15:00:00Z");
  @TempDir private Path folder = Path.of("");
  private X509Certificate root;

  @BeforeEach
  void make() throws IOException, GeneralSecurityException {
    root = parsed(Authority.make(folder, NOW).bytes());
  }

  private Authority authority() throws IOException {
    return Authority.of(folder).orElseThrow();
  }

  private static X509Certificate parsed(byte[] der) throws GeneralSecurityException {
    return (X509Certificate)
        CertificateFactory.getInstance("X.509").generateCertificate(new ByteArrayInputStream(der));
  }

  private X509Certificate door() throws IOException, GeneralSecurityException {
    return parsed(Files.readAllBytes(folder.resolve(Authority.DOOR)));
  }

  private static InetAddress at(String address) {
    return InetAddress.ofLiteral(address);
  }

  /**
   * What an implementation that is not ours says of a certificate; RFC 5280, 4.2.1.10, wants the
   * constraints of the authority to be heeded.
   */
  private String judged(X509Certificate door)
      throws IOException, GeneralSecurityException, InterruptedException {
    Process openssl =
        new ProcessBuilder(
                "openssl",
                "verify",
                "-x509_strict",
                "-purpose",
                "sslserver",
                "-attime",
                Long.toString(NOW.getEpochSecond()),
                "-CAfile",
                pem("root", root),
                pem("door", door))
            .redirectErrorStream(true)
            .start();
    String said = new String(openssl.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(openssl.waitFor()).as(said).isEqualTo(said.endsWith(": OK\n") ? 0 : 2);
    return said;
  }

  private String pem(String name, X509Certificate one)
      throws IOException, GeneralSecurityException {
    String text = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(one.getEncoded());
    return Files.writeString(
            folder.resolve(name + ".pem"),
            "-----BEGIN CERTIFICATE-----\n" + text + "\n-----END CERTIFICATE-----\n")
        .toString();
  }

  private X509Certificate signed(InetAddress at) throws IOException, GeneralSecurityException {
    PrivateKey key =
        KeyFactory.getInstance("EC")
            .generatePrivate(
                new PKCS8EncodedKeySpec(Files.readAllBytes(folder.resolve(Authority.KEY))));
    return Signing.door(at, root.getPublicKey(), root, key, NOW.minusSeconds(60), 30);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "10.77.1.1",
        "172.16.0.1",
        "172.31.255.254",
        "192.168.43.1",
        "100.64.0.1",
        "169.254.7.7"
      })
  void itSignsForPrivateNetworks(String address)
      throws IOException, GeneralSecurityException, InterruptedException {
    assertThat(judged(signed(at(address)))).endsWith(": OK\n");
    authority().pass(at(address), NOW);
    assertThat(judged(door())).endsWith(": OK\n");
    assertThat(door().getSubjectAlternativeNames()).containsExactly(List.of(7, address));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "8.8.8.8",
        "172.32.0.1",
        "192.169.0.1",
        "100.128.0.1",
        "11.0.0.1",
        "127.0.0.1",
        "2001:db8::1",
        "fd00::1"
      })
  void whatItWouldSignForOthersHoldsForNothing(String address)
      throws IOException, GeneralSecurityException, InterruptedException {
    X509Certificate stolen = signed(at(address));

    assertThat(judged(stolen)).contains("permitted subtree violation");
    assertThatThrownBy(() -> authority().pass(at(address), NOW)).isInstanceOf(IOException.class);
  }

  @Test
  void itLastsTenYearsAndItsPassesLessThan398Days() throws IOException, GeneralSecurityException {
    authority().pass(at("10.77.1.1"), NOW);

    assertThat(days(root)).isBetween(3651L, 3653L);
    assertThat(days(door())).isLessThanOrEqualTo(397).isGreaterThan(390);
    assertThat(root.getBasicConstraints()).isZero();
    assertThat(door().getBasicConstraints()).isEqualTo(-1);
    assertThat(door().getExtendedKeyUsage()).containsExactly("1.3.6.1.5.5.7.3.1");
    assertThat(authority().fingerprint()).matches("(?:[0-9A-F]{2}:){31}[0-9A-F]{2}");
  }

  private static long days(X509Certificate one) {
    return Duration.between(one.getNotBefore().toInstant(), one.getNotAfter().toInstant()).toDays();
  }

  @Test
  void aPassIsMadeAnewWhereItRunsOutOrTheAddressIsAnother()
      throws IOException, GeneralSecurityException, InterruptedException {
    authority().pass(at("10.77.1.1"), NOW);
    X509Certificate first = door();
    authority().pass(at("10.77.1.1"), NOW.plus(Duration.ofDays(300)));
    assertThat(door()).as("good still").isEqualTo(first);
    authority().pass(at("10.77.1.1"), NOW.plus(Duration.ofDays(370)));
    X509Certificate second = door();
    assertThat(second).isNotEqualTo(first);
    authority().pass(at("10.77.2.1"), NOW.plus(Duration.ofDays(370)));
    assertThat(door().getSubjectAlternativeNames()).containsExactly(List.of(7, "10.77.2.1"));
    Files.writeString(folder.resolve(Authority.DOOR), "damaged");
    authority().pass(at("10.77.2.1"), NOW);
    assertThat(judged(door())).endsWith(": OK\n");
  }

  @Test
  void itIsMadeOnceAndItsKeyIsItsOwnersAlone() throws IOException {
    String name = authority().name();

    assertThat(name).matches("Daylight archive [0-9a-f]{6}");
    assertThat(Authority.of(folder).orElseThrow().name()).isEqualTo(name);
    for (String file : List.of(Authority.KEY, Authority.CERTIFICATE)) {
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(file))))
          .isEqualTo("rw-------");
    }
    assertThat(Authority.of(Files.createDirectory(folder.resolve("other")))).isEmpty();
  }

  @Test
  void aKeyThatBelongsToAnotherIsRefused() throws IOException {
    Path other = Files.createDirectory(folder.resolve("other"));
    Authority.make(other, NOW);
    Files.copy(
        other.resolve(Authority.KEY),
        folder.resolve(Authority.KEY),
        StandardCopyOption.REPLACE_EXISTING);

    assertThatThrownBy(() -> Authority.of(folder))
        .isInstanceOf(IOException.class)
        .hasMessageContaining(Authority.KEY)
        .hasMessageContaining("remove both");
  }
}
