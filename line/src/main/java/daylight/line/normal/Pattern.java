package daylight.line.normal;

/**
 * Which unknown stands where: first the border, shared by all, then block after block.
 *
 * <p>Blocks form a tree, or several: each names a parent that comes before it.
 */
public final class Pattern {
  private final int border;
  private final int[] parents;
  private final int[] first;
  private final int[] owner;

  /**
   * @param border how many unknowns are shared by all
   * @param parents the parent of each block, less than its own index; −1 for a root
   * @param sizes how many unknowns each block has, at least one
   */
  public Pattern(int border, int[] parents, int[] sizes) {
    if (border < 0 || parents.length != sizes.length) {
      throw new IllegalArgumentException(
          "border must be >= 0 and every block must have a size, were "
              + border
              + " and "
              + parents.length
              + " for "
              + sizes.length);
    }
    this.border = border;
    this.parents = parents.clone();
    first = new int[sizes.length + 1];
    first[0] = border;
    for (int block = 0; block < sizes.length; block++) {
      if (parents[block] >= block || parents[block] < -1 || sizes[block] < 1) {
        throw new IllegalArgumentException(
            "block " + block + " must have a parent before it and a size, had " + parents[block]);
      }
      first[block + 1] = first[block] + sizes[block];
    }
    owner = new int[first[sizes.length]];
    for (int block = 0; block < sizes.length; block++) {
      for (int unknown = first[block]; unknown < first[block + 1]; unknown++) {
        owner[unknown] = block;
      }
    }
    for (int unknown = 0; unknown < border; unknown++) {
      owner[unknown] = -1;
    }
  }

  /** All unknowns. */
  public int size() {
    return owner.length;
  }

  /** The unknowns shared by all. */
  public int border() {
    return border;
  }

  /** How many blocks there are. */
  public int blocks() {
    return parents.length;
  }

  /** The index of the first unknown of a block. */
  public int first(int block) {
    return first[block];
  }

  /** How many unknowns a block has. */
  public int size(int block) {
    return first[block + 1] - first[block];
  }

  /** The parent of a block; −1 for a root. */
  public int parent(int block) {
    return parents[block];
  }

  /** The block of an unknown; −1 for one of the border. */
  public int block(int unknown) {
    return owner[unknown];
  }
}
