package yardloom.sheet.label;

import java.util.ArrayList;
import java.util.List;

/** A name broken between its words into lines of much the same length. */
final class WrappedName {
  private WrappedName() {}

  /**
   * The fewest letters that the longest line can have; words stay whole and in their order.
   *
   * @param most at most so many lines, at least 1; fewer if there are fewer words
   */
  static List<String> onLines(String name, int most) {
    String[] words = name.strip().split("\\s+");
    int least = 0;
    for (String word : words) {
      least = Math.max(least, word.length());
    }
    for (int width = least; ; width++) {
      List<String> lines = filled(words, width);
      if (lines.size() <= most) {
        return lines;
      }
    }
  }

  private static List<String> filled(String[] words, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(words[0]);
    for (int i = 1; i < words.length; i++) {
      if (line.length() + 1 + words[i].length() > width) {
        lines.add(line.toString());
        line = new StringBuilder(words[i]);
      } else {
        line.append(' ').append(words[i]);
      }
    }
    lines.add(line.toString());
    return lines;
  }
}
