package yardloom.kernel.plan;

import java.util.Comparator;

/** Text order in which runs of digits count as numbers: bed 2 comes before bed 10. */
public final class NaturalOrder implements Comparator<String> {
  @Override
  public int compare(String a, String b) {
    int i = 0;
    int j = 0;
    while (i < a.length() && j < b.length()) {
      if (isDigit(a.charAt(i)) && isDigit(b.charAt(j))) {
        int endA = endOfDigits(a, i);
        int endB = endOfDigits(b, j);
        String numberA = stripZeros(a.substring(i, endA));
        String numberB = stripZeros(b.substring(j, endB));
        int byLength = Integer.compare(numberA.length(), numberB.length());
        int byValue = byLength != 0 ? byLength : numberA.compareTo(numberB);
        if (byValue != 0) {
          return byValue;
        }
        i = endA;
        j = endB;
      } else {
        int byChar = Character.compare(a.charAt(i), b.charAt(j));
        if (byChar != 0) {
          return byChar;
        }
        i++;
        j++;
      }
    }
    int rest = Integer.compare(a.length() - i, b.length() - j);
    return rest != 0 ? rest : a.compareTo(b);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static int endOfDigits(String text, int from) {
    int end = from;
    while (end < text.length() && isDigit(text.charAt(end))) {
      end++;
    }
    return end;
  }

  private static String stripZeros(String digits) {
    int start = 0;
    while (start < digits.length() - 1 && digits.charAt(start) == '0') {
      start++;
    }
    return digits.substring(start);
  }
}
