/**
 * What the measurements mean to the owner: the complaint with its causes, the seven questions, and
 * how soon each finding is to be seen to.
 *
 * <p>In: a {@link daylight.line.book.FieldBook}, the {@link daylight.line.course.Line} estimated
 * from it and {@link daylight.line.answer.Rules}. Out: {@link daylight.line.answer.Answers}, typed
 * reasons with their evidence and never a sentence; words are made elsewhere. SI units. Refuses a
 * book without a visit; anything else that cannot be answered is an answer that says which
 * measurement is missing. Start with {@link daylight.line.answer.Judge}.
 *
 * <p>Sources: the rule tables carry their own; thresholds of our own are in {@link
 * daylight.line.answer.Rules.Limits} and are common practice.
 */
@NullMarked
package daylight.line.answer;

import org.jspecify.annotations.NullMarked;
