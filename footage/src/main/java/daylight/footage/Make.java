package daylight.footage;

/** What a film can be written as: a container and what its pictures are written in. */
public enum Make {
  /** H.264 in MP4. */
  H264_MP4("mp4", true),
  /** MPEG-4 Advanced Simple Profile in AVI, every frame from those before it. */
  MPEG4_AVI("avi", false),
  /** The same with frames predicted from both sides, which AVI cannot give times for. */
  MPEG4_B_AVI("avi", false),
  /** MPEG-2 with frames predicted from both sides, in a program stream, as on a DVD. */
  MPEG2_MPG("mpg", false),
  /** The same in a transport stream, as sent over the air. */
  MPEG2_TS("ts", false),
  /** Motion JPEG in AVI. */
  MJPEG_AVI("avi", false),
  /** Motion JPEG in QuickTime. */
  MJPEG_MOV("mov", true),
  /** VP8 in WebM. */
  VP8_WEBM("webm", true),
  /** VP9 in WebM. */
  VP9_WEBM("webm", true),
  /** VP9 in MP4. */
  VP9_MP4("mp4", true);

  private final String extension;
  private final boolean keepsTimes;

  Make(String extension, boolean keepsTimes) {
    this.extension = extension;
    this.keepsTimes = keepsTimes;
  }

  /** What the name of such a file ends with, without the dot. */
  public String extension() {
    return extension;
  }

  /** Whether each frame may have a time of its own; otherwise the rate is steady. */
  public boolean keepsTimes() {
    return keepsTimes;
  }
}
