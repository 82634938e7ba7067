package daylight.report.markup;

/** Something large that a page shows, such as a picture: written out in it, or only named. */
public interface Embedded {
  /** Its address when the page brings it along: all of it, as a data address (RFC 2397). */
  String inPage();

  /** Its address when it lies beside the page; another content has another name. */
  String beside();
}
