package daylight.line.answer;

import daylight.line.measure.Key;
import java.util.Locale;

/** What the answers say; the arguments of each sentence are given in braces. */
public enum AnswerKey implements Key {
  /** The line runs {0} from {1} to {2}, {3} to {4} below the ground. */
  WHERE_FOUND,
  /** The line runs {0} from {1} to {2}; how deep is not known. */
  WHERE_FOUND_FLAT,
  /** The drain was followed for {0} from {1}, {3} to {4} below the ground; not on to {2}. */
  WHERE_FOLLOWED,
  /** The drain was followed for {0} from {1}, not on to {2}; how deep is not known. */
  WHERE_FOLLOWED_FLAT,
  /** Its course is not known yet. */
  WHERE_NOT_FOUND,
  /** At its least certain, {0} from {1}, it lies within {2} to either side. */
  WHERE_CORRIDOR,
  /** It comes out at {0}. */
  WHERE_OUTLET,
  /** Where it comes out was not seen. */
  WHERE_OUTLET_NOT_SEEN,
  /** It crosses {0} about {1} from {2}, give or take {3}. */
  WHERE_CROSSES,
  /** It comes nearest to {0} about {1} from {2}, {3} away; that it lies beyond it is {4}. */
  WHERE_MAY_CROSS,
  /** The course of {0} is not known: it was not located. */
  WHERE_REACH_OPEN,
  /** Find the spot of the transmitter at two places at least. */
  MISSING_LOCATES,
  /** Find the transmitter at a second place, well away from {0}. */
  MISSING_SECOND,
  /** Read the depth where the transmitter is found. */
  MISSING_DEPTHS,
  /** Locate {0} at one place beyond its start. */
  MISSING_LOCATE_ON,
  /** Run the camera through to {0}. */
  MISSING_PASS_TO,
  /** Run the camera through the line. */
  MISSING_PASS,
  /** Look again from {0} to {1} from {2}, after cleaning or emptying. */
  MISSING_SIGHT,
  /** It was clear all the way seen, {0} of its length. */
  CLEAR_YES,
  /** It was clear for the part seen, {0} of its length. */
  CLEAR_FOR_PART,
  /** It was clear as far as was seen, {0}; how long the line is is not known. */
  CLEAR_SO_FAR,
  /** It is not clear: {0}, {1} from {2}. */
  CLEAR_NO,
  /** It is not clear: {0}, {1} from {2}, fills {3} of the bore. */
  CLEAR_NO_SHARE,
  /** The camera was stopped {0} from {1}: {2}. */
  CLEAR_STOPPED,
  /** Also {0}, {1} from {2}. */
  ALSO_FOUND,
  /**
   * From {0}: seen clearly {1}, poorly {2}; blind {3}, blind under water {4}; sight not noted {5};
   * not seen {6}. Each is a list of stretches, and a list that is empty is left out.
   */
  SEEN,
  /** The same where nothing was seen clearly. */
  SEEN_NOTHING,
  /** {0} to {1}. */
  SEEN_STRETCH,
  /** A camera went through it, but how well it could be seen was not noted. */
  SIGHT_NOT_NOTED,
  /** Note from where to where the sight was clear. */
  MISSING_SIGHT_NOTES,
  /** No camera went through it. */
  NOT_SEEN,
  /** No defect was seen in {0} of its length. */
  SOUND_NONE_SEEN,
  /** No defect was seen as far as was seen, {0}; how long the line is is not known. */
  SOUND_NONE_SO_FAR,
  /** Defects were seen: {0} of them; the first is {1}, {2} from {3}. */
  SOUND_DEFECTS,
  /** None of them has a grade. */
  SOUND_UNGRADED,
  /** {0}, {1}: a class and its word. */
  SOUND_CLASS,
  /** The worst for structure is class {0}: {1}, {2} from {3}. */
  SOUND_WORST,
  /** {0}, {1} from {2}, calls for action at once, whatever its grade. */
  SOUND_AT_ONCE,
  /** A camera alone does not prove that a pipe is tight. */
  SOUND_NOT_TIGHT,
  /** Water stands from {0} to {1} from {2}. */
  DRAIN_WATER_STANDS,
  /** Water stands {0} from {1}. */
  DRAIN_WATER_STANDS_AT,
  /** It stands up to {0} deep. */
  DRAIN_WATER_DEPTH,
  /** It is held by {0}, as far as can be told: {1}. */
  DRAIN_HELD,
  /** What holds it is not settled. It may be held {0}. */
  DRAIN_HELD_OPEN,
  /** By {0}, {1}: a cause and its chance. */
  DRAIN_HELD_BY,
  /** The water seen {0} from {1} was still running off: {2}. */
  DRAIN_RAN_OFF,
  /** By its heights water stands from {0} to {1} from {2}, up to {3} deep. */
  DRAIN_POOL,
  /** That water stands from {0} to {1} from {2} by its heights is {3}. */
  DRAIN_POOL_MAY,
  /** By its heights water might stand from {0} to {1} from {2}, yet none was seen there. */
  DRAIN_POOL_SEEN_DRY,
  /** Whether shallow water stands cannot be said: {0}. */
  DRAIN_POOLS_OPEN,
  /** To learn what holds the water: {0}. */
  MISSING_WATER_TEST,
  /** From {2} to {3} it falls {0}, and the rule asks for {1}. */
  DRAIN_FALLS,
  /** From {1} to {2} it falls {0}; no rule was found for its bore. */
  DRAIN_FALLS_NO_RULE,
  /** Short dips between the places measured cannot be ruled out. */
  DRAIN_DIPS_OPEN,
  /** It is flatter than the {1} that the rule asks for: {0} from {2} to {3} from {4}. */
  DRAIN_TOO_FLAT,
  /** It runs backward: {0} from {1} to {2} from {3}. */
  DRAIN_BACKWARD,
  /** Whether it falls enough cannot be said: {0} where the rule asks for {1}. */
  DRAIN_OPEN,
  /** Whether it falls cannot be said: its depth is not known. */
  DRAIN_NO_HEIGHTS,
  /** The chance that it is flatter than the rule from {0} to {1} from {2} is {3}. */
  DRAIN_CHANCE,
  /** The rule is for new work; an existing drain may be lawful with less. */
  DRAIN_RULE_NEW_WORK,
  /** Water put in at {0} came out at {1} after {2}. */
  TEST_ARRIVED_AFTER,
  /** Water put in at {0} came out at {1}. */
  TEST_ARRIVED,
  /** Water put in at {0} did not come out at {1}. */
  TEST_DID_NOT_ARRIVE,
  /** That water came out does not prove that all of it drains. */
  TEST_PROVES_LITTLE,
  /** Something passes: {0} put in at {1} came out at {2}; how much of the bore is free is open. */
  CLEAR_PASSES,
  /** Dye put in at {0} did not come out at {1}. */
  DYE_DID_NOT_ARRIVE,
  /** {0} put in at {1} came out at {2}, where the book does not say that it leads. */
  CAME_ELSEWHERE,
  /** {0} put in at {1} came out of the ground at {2}. */
  CAME_OUT_OF_GROUND,
  /** Of {0} put in at {1}, {2} were caught, give or take {3}: the rest stands or leaked. */
  WATER_NOT_CAUGHT,
  /** Of {0} put in at {1}, {2} were caught, give or take {3}: no loss shows. */
  WATER_CAUGHT,
  /** Smoke put in at {0} came out indoors at {1}: its trap is dry or broken. */
  SMOKE_INDOORS,
  /** Held full at {0} for {1}, it lost {2} a day, give or take {3}. */
  HOLD_LOST,
  /** Held full at {0} for {1}, no drop could be read: at most {2} a day, 19 times of 20. */
  HOLD_NO_DROP,
  /** Held full at {0} for {1}, the level left the riser: it lost {2} a day at least. */
  HOLD_LEFT_RISER,
  /** That is within the {1} a day that {2} lets {0} lose; for that stretch and that day alone. */
  HOLD_WITHIN,
  /** That is more than the {1} a day that {2} lets {0} lose. */
  HOLD_BEYOND,
  /** That it is within the {1} a day that {2} lets {0} lose is too close to say: {3}. */
  HOLD_CLOSE,
  /** By {2}, which lets {0} lose {1} a day, it is not decided: {3}. */
  HOLD_UNDECIDED,
  /** By {0}: {1}. */
  HOLD_OTHER,
  /** The limit of {0} is from memory of its source. */
  HOLD_FROM_MEMORY,
  /** These limits are for new work; an older drain may be lawful with more. */
  HOLD_NEW_WORK,
  /** It leaks: held full, {0} lost {1} a day, give or take {2}, where {4} allows {3}. */
  SOUND_LEAKS,
  /** It leaks: held full, {0} lost more than {1} a day, where {4} allows {3}. */
  SOUND_LEAKS_AT_LEAST,
  /** It is open to the ground: {0} put in at {1} came out at {2}. */
  SOUND_OPEN,
  /** See first to the trap at {0}: smoke came up there. */
  NOW_TRAP,
  /** Plug the line and hold it full, to tell a leak from water that stands. */
  MISSING_HOLD,
  /** The hold test {0} tells no loss yet. */
  HOLD_NOT_READ,
  /** Dye put in at {0} came out at {1} after {2}. */
  DYE_ARRIVED_AFTER,
  /** Dye put in at {0} came out at {1}. */
  DYE_ARRIVED,
  /** See first to where it leaks. */
  NOW_LEAK,
  /** For {0}: note how far the level fell, or how much was topped up. */
  MISSING_HOLD_LOSS,
  /** For {0}: note how long it was held. */
  MISSING_HOLD_DURATION,
  /** For {0}: measure the bore of the riser in which the level was read. */
  MISSING_HOLD_RISER,
  /** For {0}: note which reaches were plugged off and full. */
  MISSING_HOLD_REACHES,
  /** For {0}: measure how far the water stood above the highest pipe held. */
  MISSING_HOLD_HEAD,
  /** Do {0} again, held for {1}. */
  MISSING_HOLD_LONGER,
  /** Do {0} again with a finer reading or a narrower riser. */
  MISSING_HOLD_FINER,
  /** Do {0} again with {1} of water above the pipe or more. */
  MISSING_HOLD_HIGHER,
  /** Do {0} again with {1} of water above the pipe or less. */
  MISSING_HOLD_LOWER,
  /** Do {0} again and read the level before it leaves the riser. */
  MISSING_HOLD_SHORTER,
  /** Measure the length of {0}. */
  MISSING_LENGTH,
  /** Find the way from {0} to {1}. */
  MISSING_TRACE,
  /** Put dye in at {0} again, wait longer and look wherever it may come out. */
  MISSING_DYE_AGAIN,
  /** Level the ground at {0} against each other. */
  MISSING_LEVELS,
  /** Level the invert at {0}. */
  MISSING_INVERT_LEVEL,
  /** Measure the bore of {0}. */
  MISSING_BORE,
  /** A pumped line has no smallest slope. */
  DRAIN_PUMPED,
  /** Whether it copes was not computed. */
  COPE_OPEN,
  /** Measure the roof and paved area that drains into it. */
  MISSING_AREA,
  /** Find the design rain of the place. */
  MISSING_RAIN,
  /** Read the plate of the pump or time the pit's rise. */
  MISSING_PUMP,
  /** Whether it freezes cannot be worked out from what is noted. */
  FREEZE_OPEN,
  /** It does not freeze: {0}. */
  FREEZE_NO_FROST,
  /** It cannot be worked out: {0}. */
  FREEZE_NOT_HELD,
  /** Frost goes {0} deep; how deep the pipe lies is not known. */
  FREEZE_NO_DEPTHS,
  /** Frost goes {0} deep, and the pipe's top lies {1} deep where it is nearest, {2} from {3}. */
  FREEZE_DEEP_ENOUGH,
  /** Water stands {0} from {1}, and frost gets to it: {2} of frost, {3} of ground above it. */
  FREEZE_WATER,
  /** Water stands {0} from {1}, so near the outlet {2} that the air's cold gets to it. */
  FREEZE_OUTLET,
  /** Frost gets to the pipe {0} from {1}, {2}, but nothing that could freeze stands in it. */
  FREEZE_EMPTY_PIPE,
  /** That it freezes {0} from {1} is {2}: too close to say. */
  FREEZE_CLOSE,
  /** Frost is likeliest at the pipe {0} from {1}, where its top lies {2} deep: {3}. */
  FREEZE_WORST,
  /** Frost goes {0} deep. */
  FREEZE_DEPTH,
  /** Water seen {0} from {1}: there to stay {2}; frost gets to it {3}; all ice by spring {4}. */
  FREEZE_WATER_SEEN,
  /** Water by the grade {0} from {1}: there {2}; frost gets to it {3}; all ice by spring {4}. */
  FREEZE_WATER_POOLED,
  /** Once frost is at the pipe the water there takes {0} at the least to be ice. */
  FREEZE_TIME,
  /** Most of the doubt comes from {0}. */
  FREEZE_DECIDES,
  /** Worked out from {0}, a year of {1} and frost for {2}, by {3}. */
  FREEZE_WINTER,
  /** Soil as usual for {0}, with {1} of water, {2}. */
  FREEZE_SOIL,
  /** Soil as usual for {0} apart from its water, {1} as measured; the rest {2}. */
  FREEZE_SOIL_MEASURED,
  /** The surface is {0}, which gets {1} of the air's cold, {2}. */
  FREEZE_SURFACE,
  /** What covers the ground was not noted; {1} of the air's cold was taken, {2}. */
  FREEZE_SURFACE_UNKNOWN,
  /** "{0}" is not known as what covers the ground, so {1} of the air's cold was taken: {2}. */
  FREEZE_SURFACE_WORD,
  /** It lies under a floor indoors all along; outside frost goes {0} deep. */
  FREEZE_ALL_INDOORS,
  /** Snow lies {0} deep all winter; how it conducts is {1}. */
  FREEZE_SNOW,
  /** No snow was counted on. */
  FREEZE_NO_SNOW,
  /** What was not counted. */
  FREEZE_LEFT_OUT,
  /** Under a building none was counted; left out besides is what {@link #FREEZE_LEFT_OUT} says. */
  FREEZE_INDOORS,
  /** Near {0} water stands where the air's cold gets in. */
  FREEZE_OUTLET_WET,
  /** Where {0} is in the open, a trickle may build up ice, which cannot be worked out. */
  FREEZE_OUTLET_DRY,
  /** A pumped line that does not run back stands full. */
  FREEZE_PUMPED,
  /** Find the mean temperature of the year. */
  MISSING_MEAN_TEMPERATURE,
  /** Find how long it freezes. */
  MISSING_SEASON,
  /** Say what soil {0} is: one of {1}. */
  MISSING_SOIL_NAME,
  /** Measure the ground's warmth at the pipe's depth in late winter. */
  MISSING_GROUND_TEMPERATURE,
  /** Weigh a sample of the soil wet and dry. */
  MISSING_SOIL_WATER,
  /** Have the soil's density and conductivity measured. */
  MISSING_SOIL_TEST,
  /** Note what covers the ground in winter. */
  MISSING_SURFACE,
  /** Measure how deep snow lies through a winter. */
  MISSING_SNOW,
  /** Find the freezing index of single winters. */
  MISSING_WINTERS,
  /** Measure how deep the pipe lies {0} from {1}. */
  MISSING_COVER,
  /** Look whether water stands {0} from {1}. */
  MISSING_WATER_LOOK,
  /** See whether the line runs back when the pump stops. */
  MISSING_DRAIN_BACK,
  /** Find the freezing index of the place. */
  MISSING_FROST,
  /** Note the soil it lies in. */
  MISSING_SOIL,
  /** Find the transmitter from the ground {0} from {1}: {2} is known to {3} and would be to {4}. */
  ASK_LOCATE,
  /** Level the ground {0} from {1}: {2} is known to {3} and would be to {4}. */
  ASK_LEVEL,
  /** Lay the pipe bare {0} from {1}: {2} is known to {3} and would be to {4}. */
  ASK_PROBE,
  /** How far aside it may lie {0} from {1}. */
  KNOWN_PLACE,
  /** How deep it lies {0} from {1}. */
  KNOWN_DEPTH,
  /** How far it falls from {0} to {1} from {2}. */
  KNOWN_FALL,
  /** Do first: {0}, {1} from {2}. */
  NOW_FIRST,
  /** Do first: {0}, {1} from {2}, {3} below the ground. */
  NOW_FIRST_DEEP,
  /** The spot above it is {0} from {1} and {2} from {3} by level tape. */
  NOW_SPOT,
  /** Then: {0}, {1} from {2}. */
  NOW_THEN,
  /** See first to why it does not drain. */
  NOW_DRAIN,
  /** See before winter to the water where frost gets to it. */
  NOW_FREEZE,
  /** Stop work on this line and call the utility. */
  NOW_STOP,
  /** Nothing seen asks for work; the next thing to measure is named above. */
  NOW_MEASURE,
  /** Nothing seen asks for work. */
  NOW_NOTHING,
  /** A probable cause is {0}, {1} from {2}. */
  CAUSE_FINDING,
  /** A probable cause is standing water from {0} to {1} from {2}. */
  CAUSE_WATER,
  /** A probable cause is that it is too flat or runs backward from {0} to {1} from {2}. */
  CAUSE_FALL,
  /** Nothing found explains it yet. */
  CAUSE_NONE,
  /** Against it speaks that water put in at {0} came out at {1}. */
  AGAINST_TEST;

  @Override
  public String key() {
    return "answer." + name().toLowerCase(Locale.ROOT);
  }
}
