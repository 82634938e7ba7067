/**
 * Readable forms: a YAML 1.2 text as a tree of texts with their places, and its fields read as what
 * they are meant to be.
 *
 * <p>In: bytes. Out: a {@link daylight.archive.form.Tree}, read field by field through {@link
 * daylight.archive.form.Fields} by the shape a {@link daylight.archive.form.Section} gives each
 * key; a {@link daylight.archive.form.Desk} collects every complaint with line, column and path.
 * Start with {@link daylight.archive.form.TreeReader}.
 *
 * <p>No scalar is typed by the YAML reader: {@code 3:00}, {@code no}, {@code 012} and {@code 0x1F}
 * arrive as written. Refused with a complaint, never an exception: what is too large, too deep, not
 * UTF-8, not YAML, aliases, anchors and tags (a readable form needs none, and they can be made to
 * explode), several documents, repeated keys. Source: YAML 1.2.2, yaml.org/spec/1.2.2 (from
 * memory).
 */
@NullMarked
package daylight.archive.form;

import org.jspecify.annotations.NullMarked;
