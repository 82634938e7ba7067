package daylight.archive.store;

import org.jspecify.annotations.Nullable;

/**
 * One state of an entry.
 *
 * @param number from 1 on
 * @param content as a file would have it; null where it was taken out for good
 * @param digest SHA-256 of the content, in hexadecimal
 * @param withdrawn whether the entry holds no more from here on
 */
public record Revision(
    int number, @Nullable String content, String digest, boolean withdrawn, By by) {}
