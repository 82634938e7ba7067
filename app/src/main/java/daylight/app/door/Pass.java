package daylight.app.door;

import java.security.KeyStore;
import java.time.Instant;

/**
 * What shows that this machine is the one at an address.
 *
 * @param keys the key and the certificates, kept in memory alone
 * @param password of those keys, made up for this run
 * @param until when it runs out
 */
record Pass(KeyStore keys, String password, Instant until) {}
