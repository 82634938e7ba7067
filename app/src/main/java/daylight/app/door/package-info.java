/**
 * The door by which phones come in: where it is open, who may pass, and how it is kept secret.
 *
 * <p>In: the folder of an archive, the server that runs, orders of whoever sits at this machine.
 * Out: a second place at which that server listens, at one chosen address of this machine; codes by
 * which a phone joins, each good once and for five minutes; the register of phones that joined,
 * kept with the archive; a certificate authority of the archive's own and what it signs for the
 * chosen address. Nothing here knows a page. Units: none. Refuses: an address that is not, or no
 * longer, one of this machine; more than a few wrong codes a minute; a register that cannot be read
 * (it says where, and what was expected); a certificate for an address that everybody could have.
 *
 * <p>Start at {@link daylight.app.door.Doorkeeper}. Secrets lie beside the archive in files that
 * only their owner can read.
 *
 * <p>Sources: {@code rfc-1918}, {@code rfc-5280}, {@code certificate-398-days}, {@code qr-code}.
 */
@NullMarked
package daylight.app.door;

import org.jspecify.annotations.NullMarked;
