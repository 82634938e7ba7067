package daylight.report.paper;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLogger;
import java.util.logging.Level;

/** Keeps the page setter from writing to a console; what it has to say is handed over instead. */
final class Quiet implements XRLogger {

  @Override
  public void log(String where, Level level, String message) {}

  @Override
  public void log(String where, Level level, String message, Throwable cause) {}

  @Override
  public void setLevel(String logger, Level level) {}

  @Override
  public boolean isLogLevelEnabled(Diagnostic diagnostic) {
    return false;
  }
}
