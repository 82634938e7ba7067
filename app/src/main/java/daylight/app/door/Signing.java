package daylight.app.door;

import java.math.BigInteger;
import java.net.InetAddress;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.stream.Stream;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.asn1.DEROctetString;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.CertIOException;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** How certificates are made ({@code rfc-5280}, 4.1 and 4.2). */
final class Signing {
  private static final int SERIAL_BITS = 127;

  /**
   * Names are permitted under this one alone, which never leads anywhere (RFC 6761, 6.4): kinds of
   * name of which a constraint says nothing would all be permitted.
   */
  private static final String NO_NAME = "daylight.invalid";

  private Signing() {}

  static X509Certificate authority(String name, KeyPair pair, Instant from, int days)
      throws GeneralSecurityException {
    X500Principal self = new X500Principal("CN=" + name);
    try {
      X509v3CertificateBuilder builder = begin(self, self, pair.getPublic(), from, days);
      builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
      builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign));
      builder.addExtension(Extension.nameConstraints, true, privateAddresses());
      builder.addExtension(
          Extension.subjectKeyIdentifier,
          false,
          new JcaX509ExtensionUtils().createSubjectKeyIdentifier(pair.getPublic()));
      return sign(builder, pair.getPrivate());
    } catch (CertIOException | OperatorCreationException e) {
      throw new GeneralSecurityException(e);
    }
  }

  static X509Certificate door(
      InetAddress at,
      PublicKey key,
      X509Certificate authority,
      PrivateKey signing,
      Instant from,
      int days)
      throws GeneralSecurityException {
    try {
      X509v3CertificateBuilder builder =
          begin(
              authority.getSubjectX500Principal(),
              // No name that could be a host's: some would look for it among the permitted ones.
              new X500Principal("CN=Daylight at " + at.getHostAddress()),
              key,
              from,
              days);
      builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
      builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
      builder.addExtension(
          Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
      builder.addExtension(
          Extension.subjectAlternativeName,
          false,
          new GeneralNames(new GeneralName(GeneralName.iPAddress, at.getHostAddress())));
      JcaX509ExtensionUtils ids = new JcaX509ExtensionUtils();
      builder.addExtension(
          Extension.authorityKeyIdentifier,
          false,
          ids.createAuthorityKeyIdentifier(authority.getPublicKey()));
      builder.addExtension(
          Extension.subjectKeyIdentifier, false, ids.createSubjectKeyIdentifier(key));
      return sign(builder, signing);
    } catch (CertIOException | OperatorCreationException e) {
      throw new GeneralSecurityException(e);
    }
  }

  private static X509v3CertificateBuilder begin(
      X500Principal issuer, X500Principal subject, PublicKey key, Instant from, int days) {
    return new JcaX509v3CertificateBuilder(
        issuer,
        new BigInteger(SERIAL_BITS, new SecureRandom()).setBit(SERIAL_BITS - 1),
        Date.from(from),
        Date.from(from.plus(Duration.ofDays(days))),
        subject,
        key);
  }

  private static X509Certificate sign(X509v3CertificateBuilder builder, PrivateKey key)
      throws OperatorCreationException, GeneralSecurityException {
    return new JcaX509CertificateConverter()
        .getCertificate(builder.build(new JcaContentSignerBuilder("SHA256withECDSA").build(key)));
  }

  /** Addresses of private networks, each with its mask ({@code rfc-5280}, 4.2.1.10). */
  private static NameConstraints privateAddresses() {
    Stream<GeneralSubtree> addresses =
        Address.PRIVATE.stream()
            .map(
                block ->
                    new GeneralSubtree(
                        new GeneralName(
                            GeneralName.iPAddress, new DEROctetString(withMask(block)))));
    GeneralSubtree name = new GeneralSubtree(new GeneralName(GeneralName.dNSName, NO_NAME));
    return new NameConstraints(
        Stream.concat(addresses, Stream.of(name)).toArray(GeneralSubtree[]::new), null);
  }

  private static byte[] withMask(Address.Block block) {
    byte[] both = new byte[8];
    System.arraycopy(InetAddress.ofLiteral(block.first()).getAddress(), 0, both, 0, 4);
    for (int i = 0; i < 4; i++) {
      both[4 + i] = (byte) (block.mask() >>> (8 * (3 - i)));
    }
    return both;
  }
}
