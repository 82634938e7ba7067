package daylight.footage.counter;

import java.util.ArrayList;
import java.util.List;

/** The glyphs of one line by their shape: a counter has a dozen, however often they appear. */
final class Kinds {
  private static final int MOST = 300;
  private static final float SAME = 0.95f;
  private static final float LIKE = 0.75f;
  private static final int OFTEN = 3;
  private static final int SETTLED = 400;

  /** So sure the network is of what it sees beyond doubt. */
  private static final float PLAIN = 0.95f;

  private final Letters letters;
  private final List<float[]> means = new ArrayList<>();
  private final List<float[]> sums = new ArrayList<>();
  private final List<Integer> counts = new ArrayList<>();
  private final List<float[]> opinions = new ArrayList<>();
  private float near;
  private int named;

  Kinds(Letters letters) {
    this.letters = letters;
  }

  int size() {
    return means.size();
  }

  /** From now on the kinds there are keep their names, each as it looks on the average. */
  void settle() {
    for (int i = 0; i < means.size(); i++) {
      opinions.set(i, letters.opinion(means.get(i)));
    }
    named = means.size();
  }

  /** Whether a kind was there from the beginning or was seen often enough since. */
  boolean settled(int kind) {
    return kind < named || counts.get(kind) >= OFTEN;
  }

  /** Whether a kind is settled or a digit beyond doubt: a counter may show one for one frame. */
  boolean holds(int kind) {
    return settled(kind) || plain(kind);
  }

  private boolean plain(int kind) {
    char letter = letter(kind);
    return Character.isDigit(letter) && opinion(kind)[Letters.KINDS.indexOf(letter)] > PLAIN;
  }

  int count(int kind) {
    return counts.get(kind);
  }

  /** How near the shape given last is to its kind. */
  float near() {
    return near;
  }

  /** The likeliest letter of a shape: that of its kind, or what the network says of it. */
  char seemingly(float[] shape) {
    float nearest = SAME;
    int best = -1;
    for (int i = 0; i < means.size(); i++) {
      float alike = Shape.alike(means.get(i), shape);
      if (alike >= nearest) {
        nearest = alike;
        best = i;
      }
    }
    return letter(best >= 0 ? opinion(best) : letters.opinion(shape));
  }

  /** The kind of a shape: one there is or a new one; -1 where there are too many. */
  int of(float[] shape) {
    int best = -1;
    near = -1;
    for (int i = 0; i < means.size(); i++) {
      float alike = Shape.alike(means.get(i), shape);
      if (alike > near) {
        near = alike;
        best = i;
      }
    }
    if (near < SAME && means.size() < MOST) {
      means.add(shape.clone());
      sums.add(shape.clone());
      counts.add(1);
      opinions.add(letters.opinion(shape));
      near = 1;
      return means.size() - 1;
    }
    if (near >= SAME && counts.get(best) < SETTLED) {
      learn(best, shape);
    }
    return near < LIKE ? -1 : best;
  }

  private void learn(int kind, float[] shape) {
    float[] sum = sums.get(kind);
    double squares = 0;
    for (int i = 0; i < sum.length; i++) {
      sum[i] += shape[i];
      squares += sum[i] * sum[i];
    }
    float length = (float) Math.sqrt(squares);
    float[] mean = means.get(kind);
    for (int i = 0; i < sum.length; i++) {
      mean[i] = sum[i] / length;
    }
    int count = counts.get(kind) + 1;
    counts.set(kind, count);
    if (kind >= named && Integer.bitCount(count) == 1) {
      opinions.set(kind, letters.opinion(mean));
    }
  }

  /** What the network thinks of a kind as it looks on the average. */
  float[] opinion(int kind) {
    return opinions.get(kind);
  }

  /** Says what some kinds are, one letter each; says nothing where there are no letters. */
  void name(List<Integer> kinds, String letters) {
    for (int i = 0; i < letters.length(); i++) {
      float[] opinion = new float[Letters.KINDS.length()];
      opinion[Letters.KINDS.indexOf(letters.charAt(i))] = 1;
      opinions.set(kinds.get(i), opinion);
    }
  }

  /** The likeliest letter of a kind; a question mark for what is none. */
  char letter(int kind) {
    return kind < 0 ? '?' : letter(opinion(kind));
  }

  private static char letter(float[] opinion) {
    int best = 0;
    for (int i = 1; i < opinion.length; i++) {
      best = opinion[i] > opinion[best] ? i : best;
    }
    return Letters.KINDS.charAt(best);
  }
}
