package daylight.line.cause;

/**
 * What causes are ranked by.
 *
 * @param table the causes
 * @param words by which kinds of complaint are recognised where a book has words only
 */
public record CauseRules(CauseTable table, WordList words) {}
