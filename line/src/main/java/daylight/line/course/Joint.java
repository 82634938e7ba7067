package daylight.line.course;

import daylight.line.book.Place;
import daylight.line.measure.Measured;
import daylight.line.survey.Covariance2;
import java.util.List;
import java.util.Optional;

/** The covariance of every estimated quantity with every other, asked for figure by figure. */
public interface Joint {
  /** See {@link Line#fall}. */
  Optional<Measured> fall(Place from, Place to);

  /** See {@link Line#profile}. */
  Optional<Profile> profile(List<Place> places);

  /** See {@link Line#dryProfile}. */
  Optional<Profile> dryProfile(List<Place> places);

  /** See {@link Line#relative}. */
  Optional<Covariance2> relative(Place place, String point);

  /** See {@link Line#outlook}. */
  Outlook outlook();
}
