package daylight.report.draw;

import daylight.line.book.Papers;
import daylight.line.course.Route;
import daylight.line.dig.Crossing;
import daylight.line.dig.Digger;
import daylight.line.dig.ServiceFound;
import daylight.line.measure.Argument;
import daylight.report.markup.Tag;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Where marks of other services cross the drain, on the drawing from the side. No paint tells how
 * deep they lie, so each is a line from the ground all the way down.
 */
record ProfileServices(Subject subject, Route route, Legend legend) {

  /**
   * @param ground the height of the ground on the sheet at a distance along the route
   * @param bottom of the drawing on the sheet
   */
  void draw(
      Sheet sheet,
      ProfileFrame frame,
      DoubleUnaryOperator ground,
      double bottom,
      Labeller labeller,
      Marks marks) {
    for (ServiceFound one : Digger.services(subject.book(), subject.line())) {
      for (Crossing crossing : one.crossings()) {
        OptionalDouble x = route.station(crossing.place());
        if (x.isPresent()) {
          Papers.Service service = one.mark().service();
          Point at = new Point(frame.x(x.getAsDouble()), ground.applyAsDouble(x.getAsDouble()));
          Stroke down = new Stroke(at.x(), at.y(), at.x(), bottom);
          sheet.add(
              Pen.at(crossing.place())
                  .add(
                      ServiceInk.way(
                          service,
                          "M"
                              + Tag.number(at.x())
                              + " "
                              + Tag.number(at.y())
                              + "V"
                              + Tag.number(bottom)))
                  .add(ServiceInk.spot(service, at.x(), at.y())));
          labeller.wall(down);
          labeller.keepClear(Box.around(at.x(), at.y(), 3));
          legend.useWay(service);
          marks.write(
              Pen.at(crossing.place()),
              at,
              3,
              subject
                  .words()
                  .say("draw.service.crosses", new Argument.Text(Captions.service(subject, one))),
              true);
        }
      }
    }
  }
}
