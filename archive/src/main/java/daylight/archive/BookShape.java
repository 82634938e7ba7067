package daylight.archive;

import daylight.archive.form.Bare;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.line.book.Bend;
import daylight.line.book.Boundary;
import daylight.line.book.Exposure;
import daylight.line.book.Finding;
import daylight.line.book.Landmark;
import daylight.line.book.Level;
import daylight.line.book.Locate;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Papers;
import daylight.line.book.Pass;
import daylight.line.book.Reach;
import daylight.line.book.Test;
import daylight.line.measure.Dimension;
import java.util.List;

/** Every key of a field book, section by section, with what may stand at it. */
public final class BookShape {
  private static final Shape WORDS = new Shape.Plain(Shape.Kind.WORDS);

  static final Section UNITS =
      Section.named("units")
          .plain("distance", Shape.Kind.UNIT)
          .plain("depth", Shape.Kind.UNIT)
          .plain("bore", Shape.Kind.UNIT)
          .plain("level", Shape.Kind.UNIT);

  static final Section UNKNOWN = Section.named("unknown").words("unknown");

  // What stands on a site.

  static final Section LANDMARK =
      entry("landmark")
          .words("what")
          .oneOf("kind", Landmark.Kind.class)
          .plain("base", Shape.Kind.YES_NO);
  static final Section BOUNDARY =
      entry("boundary").oneOf("kind", Boundary.Kind.class).texts("points").words("left", "right");
  static final Section NODE = entry("node").oneOf("kind", Node.Kind.class).words("what");
  static final Section REACH =
      entry("reach")
          .words("line", "from", "to")
          .with("water", either(new Shape.OneOf(Flows.class), new Shape.Part(UNKNOWN)))
          .oneOf("use", Reach.Use.class)
          .oneOf("material", Material.class)
          .amount("bore", Dimension.LENGTH, Bare.BORE)
          .amount("length", Dimension.LENGTH, Bare.DISTANCE);

  static final Section SITE =
      entry("site")
          .words("name", "address")
          .plain("zone", Shape.Kind.ZONE)
          .plain("invented", Shape.Kind.YES_NO)
          .rows("landmarks", LANDMARK)
          .rows("boundaries", BOUNDARY)
          .rows("nodes", NODE)
          .rows("reaches", REACH)
          .part("surroundings", AroundShape.SURROUNDINGS);

  // Where a point lies in plan, beside whatever else is said of it.

  static final Section GNSS =
      Section.named("gnss")
          .plain("latitude", Shape.Kind.NUMBER)
          .plain("longitude", Shape.Kind.NUMBER)
          .amount("sd", Dimension.LENGTH)
          .amount("sd-east", Dimension.LENGTH)
          .amount("sd-north", Dimension.LENGTH)
          .plain("correlation", Shape.Kind.NUMBER)
          .words("set")
          .amount("sd-shared", Dimension.LENGTH);
  static final Section BEARING =
      Section.named("bearing")
          .words("from")
          .plain("bearing", Shape.Kind.BEARING)
          .amount("distance", Dimension.LENGTH, Bare.DISTANCE);
  static final Section SKETCH =
      Section.named("sketch")
          .amount("east", Dimension.LENGTH, Bare.DISTANCE)
          .amount("north", Dimension.LENGTH, Bare.DISTANCE);
  static final Section SIDE = Section.named("side").texts("of").oneOf("on", Hand.class);
  static final Section NESTED_TIES =
      Section.named("nested-ties").open(new Shape.Amount(Dimension.LENGTH, Bare.DISTANCE));
  static final Section SPOT =
      Section.named("spot-keys")
          .with("wall", either(WORDS, new Shape.Rows(WORDS)))
          .amount("along", Dimension.LENGTH, Bare.DISTANCE)
          .amount("out", Dimension.LENGTH, Bare.DISTANCE)
          .part("ties", NESTED_TIES)
          .part("gnss", GNSS)
          .part("bearing", BEARING)
          .part("sketch", SKETCH)
          .part("side", SIDE);
  static final Section SPOT_OF = Section.named("spot").words("of").with(SPOT);

  // One push.

  static final Section LEG = Section.named("leg").words("reach").oneOf("turn", Turn.class);
  static final Section ZERO =
      Section.named("zero").amount("reads", Dimension.LENGTH, Bare.DISTANCE).words("unknown");
  static final Section END =
      Section.named("end")
          .amount("cable", Dimension.LENGTH, Bare.DISTANCE)
          .oneOf("why", Pass.Why.class)
          .words("node");
  static final Section SIGHT =
      Section.named("sight")
          .amount("from", Dimension.LENGTH, Bare.DISTANCE)
          .amount("to", Dimension.LENGTH, Bare.DISTANCE)
          .oneOf("clarity", Pass.Clarity.class);
  static final Section MOMENT =
      Section.named("moment").words("media").amount("at", Dimension.DURATION);
  static final Section OUTLINE =
      Section.named("outline")
          .words("on")
          .plain("across", Shape.Kind.NUMBER)
          .plain("down", Shape.Kind.NUMBER)
          .plain("wide", Shape.Kind.NUMBER)
          .plain("high", Shape.Kind.NUMBER);
  static final Section FINDING =
      entry("finding")
          .words("kind")
          .amount("cable", Dimension.LENGTH, Bare.DISTANCE)
          .amount("from", Dimension.LENGTH, Bare.DISTANCE)
          .amount("to", Dimension.LENGTH, Bare.DISTANCE)
          .part("moment", MOMENT)
          .oneOf("moving", Finding.Moving.class)
          .plain("clock", Shape.Kind.CLOCK)
          .words("node")
          .texts("stills")
          .rows("outlines", OUTLINE)
          .words("remark")
          .open(either(WORDS, new Shape.Amount(Dimension.LENGTH, Bare.NONE)));
  static final Section BEND =
      entry("bend")
          .amount("cable", Dimension.LENGTH, Bare.DISTANCE)
          .amount("angle", Dimension.ANGLE)
          .oneOf("sense", Bend.Sense.class);
  static final Section COUNTER_CHECK =
      entry("counter-check")
          .amount("counter", Dimension.LENGTH, Bare.DISTANCE)
          .amount("taped", Dimension.LENGTH, Bare.DISTANCE);
  static final Section RESET =
      entry("reset")
          .amount("before", Dimension.LENGTH, Bare.DISTANCE)
          .amount("after", Dimension.LENGTH, Bare.DISTANCE);
  static final Section ANCHOR =
      entry("anchor")
          .words("media")
          .amount("at", Dimension.DURATION)
          .amount("counter", Dimension.LENGTH, Bare.DISTANCE);
  static final Section CORRECTION =
      entry("correction")
          .words("media")
          .amount("from", Dimension.DURATION)
          .amount("to", Dimension.DURATION)
          .amount("counter", Dimension.LENGTH, Bare.DISTANCE);

  /** What may also stand directly in a visit that has a single pass. */
  static final Section PUSHED =
      Section.named("push-keys")
          .part("end", END)
          .rows("sight", SIGHT)
          .rows("findings", FINDING)
          .rows("bends", BEND);

  static final Section PASS =
      entry("pass")
          .words("entry")
          .with("walk", new Shape.Rows(either(WORDS, new Shape.Part(LEG))))
          .part("zero", ZERO)
          .oneOf("head", Pass.Head.class)
          .with(PUSHED)
          .rows("counter-checks", COUNTER_CHECK)
          .rows("resets", RESET)
          .rows("anchors", ANCHOR)
          .rows("corrections", CORRECTION)
          .words("after")
          .plain("start", Shape.Kind.TIME)
          .words("remark");

  // What is done over the pipe.

  static final Section LIFT =
      Section.named("lift")
          .amount("by", Dimension.LENGTH, Bare.DEPTH)
          .amount("depth", Dimension.LENGTH, Bare.DEPTH);
  static final Section NULLS =
      Section.named("nulls")
          .amount("before", Dimension.LENGTH, Bare.DEPTH)
          .amount("after", Dimension.LENGTH, Bare.DEPTH)
          .amount("over", Dimension.LENGTH, Bare.DEPTH)
          .amount("upright-before", Dimension.LENGTH, Bare.DEPTH)
          .amount("upright-after", Dimension.LENGTH, Bare.DEPTH);
  static final Section LOCATE =
      entry("locate")
          .words("pass")
          .amount("cable", Dimension.LENGTH, Bare.DISTANCE)
          .oneOf("moving", Finding.Moving.class)
          .with(SPOT)
          .amount("depth", Dimension.LENGTH, Bare.DEPTH)
          .amount("receiver-height", Dimension.LENGTH, Bare.DEPTH)
          .words("surface")
          .amount("cover", Dimension.LENGTH, Bare.DEPTH)
          .oneOf("signal", Locate.Signal.class)
          .rows("lifts", LIFT)
          .part("nulls", NULLS)
          .with(
              "off-on",
              either(new Shape.Plain(Shape.Kind.YES_NO), new Shape.OneOf(Locate.OffOn.class)))
          .plain("time", Shape.Kind.TIME)
          .words("remark");
  static final Section EXPOSURE =
      entry("exposure")
          .oneOf("by", Exposure.By.class)
          .words("pass")
          .amount("cable", Dimension.LENGTH, Bare.DISTANCE)
          .with(SPOT)
          .amount("crown", Dimension.LENGTH, Bare.DEPTH)
          .amount("invert", Dimension.LENGTH, Bare.DEPTH)
          .words("surface");
  static final Section TIE =
      entry("tie")
          .words("from", "to", "at", "set", "point")
          .amount("tape", Dimension.LENGTH, Bare.DISTANCE)
          .amount("angle", Dimension.ANGLE)
          .amount("direction", Dimension.ANGLE)
          .plain("bearing", Shape.Kind.BEARING)
          .with("wall", either(WORDS, new Shape.Rows(WORDS)))
          .amount("along", Dimension.LENGTH, Bare.DISTANCE)
          .amount("out", Dimension.LENGTH, Bare.DISTANCE)
          .part("gnss", GNSS)
          .part("sketch", SKETCH)
          .part("side", SIDE);
  static final Section MARK = Section.named("mark").words("of").oneOf("part", Level.Part.class);
  static final Section LEVEL =
      entry("level")
          .with(MARK)
          .amount("rod", Dimension.LENGTH, Bare.LEVEL)
          .words("set-up")
          .amount("height", Dimension.LENGTH, Bare.LEVEL)
          .part("from", MARK)
          .part("to", MARK)
          .amount("rise", Dimension.LENGTH, Bare.LEVEL);

  // The rest of a visit.

  static final Section SEEN =
      Section.named("seen")
          .words("where")
          .plain("arrived", Shape.Kind.YES_NO)
          .amount("after", Dimension.DURATION)
          .amount("volume", Dimension.VOLUME);
  static final Section TEST =
      entry("test")
          .oneOf("kind", Test.Kind.class)
          .words("at")
          .amount("flow", Dimension.FLOW)
          .amount("volume", Dimension.VOLUME)
          .amount("duration", Dimension.DURATION)
          .amount("drop", Dimension.LENGTH, Bare.LEVEL)
          .texts("reaches")
          .amount("riser", Dimension.LENGTH, Bare.BORE)
          .amount("head", Dimension.LENGTH, Bare.LEVEL)
          .amount("topped-up", Dimension.VOLUME)
          .rows("seen", SEEN)
          .words("remark");
  static final Section WORK =
      entry("work")
          .oneOf("kind", WorkKind.class)
          .texts("reaches")
          .words("how")
          .plain("date", Shape.Kind.DATE)
          .words("reach")
          .amount("from", Dimension.LENGTH, Bare.DISTANCE)
          .amount("to", Dimension.LENGTH, Bare.DISTANCE)
          .words("what")
          .plain("altered", Shape.Kind.YES_NO);
  static final Section PIN =
      Section.named("pin")
          .words("of")
          .plain("across", Shape.Kind.NUMBER)
          .plain("down", Shape.Kind.NUMBER);
  static final Section MEDIA =
      entry("media")
          .oneOf("kind", Papers.Media.Kind.class)
          .plain("file", Shape.Kind.FILE)
          .plain("sha256", Shape.Kind.SHA256)
          .words("pass")
          .rows("pins", PIN);
  static final Section CONSENT =
      entry("consent").words("who", "what").plain("when", Shape.Kind.TIME).words("signature");
  static final Section TICKET =
      entry("ticket")
          .words("number")
          .plain("issued", Shape.Kind.DATE)
          .plain("expires", Shape.Kind.DATE);
  static final Section SERVICE =
      entry("service").oneOf("service", Papers.Service.class).texts("points");
  static final Section DECLINED =
      entry("declined").words("what", "who").plain("date", Shape.Kind.DATE);
  static final Section BURNED =
      Section.named("burned").texts("region").plain("unit", Shape.Kind.UNIT);
  static final Section KIT =
      Section.named("kit")
          .words("camera")
          .amount("sonde-behind-lens", Dimension.LENGTH)
          .amount("sonde-above-invert", Dimension.LENGTH)
          .words("receiver")
          .plain("clock-offset", Shape.Kind.SHIFT)
          .part("counter", BURNED);
  static final Section VISIT =
      entry("visit")
          .plain("date", Shape.Kind.DATE)
          .texts("crew")
          .with("complaint", either(WORDS, new Shape.Part(ComplaintShape.REPORTED)))
          .part("kit", KIT)
          .rows("passes", PASS)
          .with(PUSHED)
          .rows("locates", LOCATE)
          .rows("exposures", EXPOSURE)
          .rows("spots", SPOT_OF)
          .rows("ties", TIE)
          .rows("levels", LEVEL)
          .rows("tests", TEST)
          .rows("works", WORK)
          .rows("media", MEDIA)
          .rows("consents", CONSENT)
          .rows("tickets", TICKET)
          .rows("services", SERVICE)
          .rows("declined", DECLINED);

  /** The whole book. */
  static final Section BOOK =
      Section.named("book")
          .words(Versions.KEY)
          .plain("id", Shape.Kind.ID)
          .words("label")
          .part("units", UNITS)
          .part("site", SITE)
          .part("visit", VISIT)
          .rows("visits", VISIT);

  private BookShape() {}

  /** All keys of a book, from which those of every entry within can be found. */
  public static Section book() {
    return BOOK;
  }

  /** What has an identity and a label of its own. */
  static Section entry(String name) {
    return Section.named(name).plain("id", Shape.Kind.ID).words("label");
  }

  private static Shape either(Shape... shapes) {
    return new Shape.Either(List.of(shapes));
  }

  /** Which way water is known to go. */
  enum Flows {
    FORWARD,
    BACKWARD
  }

  /** How a turn into a reach is known. */
  enum Turn {
    SEEN,
    ASSUMED
  }

  /** A side. */
  enum Hand {
    LEFT,
    RIGHT
  }

  /** What was done to a line. */
  enum WorkKind {
    CLEANING,
    REPAIR
  }
}
