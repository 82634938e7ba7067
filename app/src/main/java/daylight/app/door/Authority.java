package daylight.app.door;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigInteger;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.Signature;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.security.spec.PKCS8EncodedKeySpec;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The archive's own certificate authority. It is made once, lasts ten years, and may sign for
 * addresses of private networks and for nothing else: so it is of no use against a bank. What it
 * signs for this machine lasts 397 days at most, and is made anew a month before. Its keys are
 * those of {@code rfc-5280}, on the curve P-256, which phones have known for long.
 */
public final class Authority {
  static final String KEY = "authority.key";
  static final String CERTIFICATE = "authority.crt";
  static final String DOOR_KEY = "door.key";
  static final String DOOR = "door.crt";

  /** How long, days; a server's is no longer than {@code certificate-398-days} allows. */
  static final int AUTHORITY_DAYS = 3652;

  static final int DOOR_DAYS = 396;

  /** A pass is made anew so long before it runs out. */
  static final Duration EARLY = Duration.ofDays(30);

  /** Clocks of phones are not all alike. */
  static final Duration SLACK = Duration.ofDays(1);

  private static final int MARK_BYTES = 3;
  private static final int SUBJECT_ADDRESS = 7;

  private final Path folder;
  private final PrivateKey key;
  private final X509Certificate certificate;

  private Authority(Path folder, PrivateKey key, X509Certificate certificate) {
    this.folder = folder;
    this.key = key;
    this.certificate = certificate;
  }

  /**
   * That of the archive in a folder; empty where none was made.
   *
   * @throws IOException where there is one that cannot be read
   */
  static Optional<Authority> of(Path folder) throws IOException {
    if (!Files.exists(folder.resolve(CERTIFICATE))) {
      return Optional.empty();
    }
    try {
      PrivateKey key = key(folder.resolve(KEY));
      X509Certificate certificate = certificate(folder.resolve(CERTIFICATE));
      if (!belong(key, certificate)) {
        throw new GeneralSecurityException("the key belongs to another certificate");
      }
      return Optional.of(new Authority(folder, key, certificate));
    } catch (GeneralSecurityException e) {
      throw new IOException(
          CERTIFICATE
              + " and "
              + KEY
              + " are not the certificate and its key that were written here ("
              + e.getMessage()
              + "). Put them back, or remove both: then a new one is made, and every phone needs it",
          e);
    }
  }

  /** Makes one, and keeps it. */
  static Authority make(Path folder, Instant now) throws IOException {
    try {
      KeyPair pair = pair();
      byte[] mark = new byte[MARK_BYTES];
      new SecureRandom().nextBytes(mark);
      String name = "Daylight archive " + HexFormat.of().formatHex(mark);
      X509Certificate certificate = Signing.authority(name, pair, now.minus(SLACK), AUTHORITY_DAYS);
      // The certificate comes last: where it is, its key is, too.
      OwnerFile.write(folder.resolve(KEY), pair.getPrivate().getEncoded());
      OwnerFile.write(folder.resolve(CERTIFICATE), certificate.getEncoded());
      return new Authority(folder, pair.getPrivate(), certificate);
    } catch (GeneralSecurityException e) {
      throw new IOException(e);
    }
  }

  /** What it is called in the lists of a phone. */
  public String name() {
    return certificate.getSubjectX500Principal().getName().replaceFirst("^CN=", "");
  }

  /** As phones take it: DER. */
  public byte[] bytes() {
    try {
      return certificate.getEncoded();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("it was read from these bytes", e);
    }
  }

  /** SHA-256 of it, in pairs of figures as phones show it. */
  public String fingerprint() {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes());
      return HexFormat.ofDelimiter(":").withUpperCase().formatHex(digest);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** When it runs out. */
  public Instant until() {
    return certificate.getNotAfter().toInstant();
  }

  /** A pass for that address: the one there is, or a new one where it is for another or old. */
  Pass pass(InetAddress at, Instant now) throws IOException {
    if (!Address.isPrivate(at)) {
      throw new IOException(at.getHostAddress() + " is no address of a private network");
    }
    try {
      X509Certificate known = known(at, now);
      if (known != null) {
        return pass(key(folder.resolve(DOOR_KEY)), known);
      }
      KeyPair pair = pair();
      X509Certificate fresh =
          Signing.door(at, pair.getPublic(), certificate, key, now.minus(SLACK), days(now));
      OwnerFile.write(folder.resolve(DOOR_KEY), pair.getPrivate().getEncoded());
      OwnerFile.write(folder.resolve(DOOR), fresh.getEncoded());
      return pass(pair.getPrivate(), fresh);
    } catch (GeneralSecurityException e) {
      throw new IOException(e);
    }
  }

  /** No longer than the authority itself lasts. */
  private int days(Instant now) {
    return Math.clamp(Duration.between(now, until()).toDays(), 1, DOOR_DAYS);
  }

  private @Nullable X509Certificate known(InetAddress at, Instant now) {
    try {
      X509Certificate known = certificate(folder.resolve(DOOR));
      known.verify(certificate.getPublicKey());
      boolean fits =
          known.getSubjectAlternativeNames() != null
              && known
                  .getSubjectAlternativeNames()
                  .contains(List.of(SUBJECT_ADDRESS, at.getHostAddress()))
              && known.getNotAfter().toInstant().minus(EARLY).isAfter(now)
              && !known.getNotBefore().toInstant().isAfter(now)
              && belong(key(folder.resolve(DOOR_KEY)), known);
      return fits ? known : null;
    } catch (IOException | GeneralSecurityException missing) {
      // Where it is not there, or is damaged, a new one costs nobody anything.
      return null;
    }
  }

  private Pass pass(PrivateKey doorKey, X509Certificate door)
      throws GeneralSecurityException, IOException {
    byte[] secret = new byte[32];
    new SecureRandom().nextBytes(secret);
    String password = HexFormat.of().formatHex(secret);
    KeyStore keys = KeyStore.getInstance("PKCS12");
    keys.load(null, null);
    keys.setKeyEntry(
        "door", doorKey, password.toCharArray(), new Certificate[] {door, certificate});
    return new Pass(keys, password, door.getNotAfter().toInstant());
  }

  private static KeyPair pair() throws GeneralSecurityException {
    KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
    generator.initialize(256);
    return generator.generateKeyPair();
  }

  private static PrivateKey key(Path file) throws IOException, GeneralSecurityException {
    return KeyFactory.getInstance("EC")
        .generatePrivate(new PKCS8EncodedKeySpec(Files.readAllBytes(file)));
  }

  private static X509Certificate certificate(Path file)
      throws IOException, GeneralSecurityException {
    return (X509Certificate)
        CertificateFactory.getInstance("X.509")
            .generateCertificate(new ByteArrayInputStream(Files.readAllBytes(file)));
  }

  private static boolean belong(PrivateKey key, X509Certificate certificate)
      throws GeneralSecurityException {
    byte[] asked = BigInteger.TEN.toByteArray();
    Signature sign = Signature.getInstance("SHA256withECDSA");
    sign.initSign(key);
    sign.update(asked);
    byte[] signed = sign.sign();
    sign.initVerify(certificate.getPublicKey());
    sign.update(asked);
    return sign.verify(signed);
  }
}
