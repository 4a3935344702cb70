package yardloom.program.appendix;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import yardloom.kernel.unit.Unit;

/**
 * Works a printed formula out from its printed inputs, knowing nothing but the text.
 *
 * <p>{@code name = …} in front is a heading, or the unit of the result ({@code hours = …}). Signs
 * are + − × / ^ and brackets; functions √( up( down( max( min(. A number may carry a unit, and
 * {@code x in UNIT} makes a number of a quantity. Names are those of the inputs; of {@code l, sheet
 * length} the part before the comma, of {@code Kc kale} the first words. {@code sum over … of X}
 * adds X up over inputs that share their first words; without {@code of} it adds all inputs up.
 * Behind commas may follow {@code rounded up}, {@code up to the next X}, {@code down to the next
 * X}, {@code at least X}; behind a semicolon {@code over X: …}, what holds where the first input is
 * more than X.
 */
final class PrintedFormula {
  private static final Map<String, Unit> RESULTS =
      Map.of("hours", Unit.HOUR, "pounds", Unit.POUND, "kilograms", Unit.KILOGRAM);
  private static final String SHOELACE = "½ |Σ (xᵢ yᵢ₊₁ − xᵢ₊₁ yᵢ)|";
  private static final String LENGTHS = "Σ √((xᵢ₊₁ − xᵢ)² + (yᵢ₊₁ − yᵢ)²)";

  private final List<PrintedEntry.Input> inputs;
  private final String text;
  private int at;

  /** Which of the inputs that share a name is meant; −1 outside of sums. */
  private int turn = -1;

  private PrintedFormula(String text, List<PrintedEntry.Input> inputs) {
    this.text = text;
    this.inputs = inputs;
  }

  /**
   * The value of an entry by its formula.
   *
   * @throws IllegalArgumentException if the formula is no formula of these inputs
   */
  static Interval value(PrintedEntry entry) {
    String formula = entry.formula();
    Interval unit = Interval.exact(1);
    int equals = formula.indexOf(" = ");
    if (equals > 0) {
      Unit result = RESULTS.get(formula.substring(0, equals));
      unit = result == null ? unit : Interval.exact(result.toSi(1));
      formula = formula.substring(equals + 3);
    }
    return new PrintedFormula(formula, entry.inputs()).whole().times(unit);
  }

  private Interval whole() {
    if (text.equals(SHOELACE)) {
      return shoelace();
    } else if (text.equals(LENGTHS)) {
      return lengths();
    }
    Interval value = sum();
    while (at < text.length()) {
      if (take(", rounded up")) {
        value = value.upTo(Interval.exact(1));
      } else if (take(", rounded down")) {
        value = value.downTo(Interval.exact(1));
      } else if (take(", up to the next ")) {
        value = value.upTo(sum());
      } else if (take(", down to the next ")) {
        value = value.downTo(sum());
      } else if (take(", at least ")) {
        take("the ");
        value = value.max(sum());
      } else if (take("; over ")) {
        Interval bound = sum();
        if (!take(": ")) {
          throw wrong("a colon is missing");
        }
        Interval beyond = sum();
        value =
            PrintedNumber.read(inputs.get(0).value()).orElseThrow().low() > bound.high()
                ? beyond
                : value;
      } else {
        throw wrong("this is no sign");
      }
    }
    return value;
  }

  private Interval sum() {
    Interval value = product();
    while (true) {
      if (take(" + ")) {
        value = value.plus(product());
      } else if (take(" − ")) {
        value = value.minus(product());
      } else {
        return value;
      }
    }
  }

  private Interval product() {
    Interval value = power();
    while (true) {
      if (take(" × ")) {
        value = value.times(power());
      } else if (take(" / ")) {
        value = value.over(power());
      } else {
        return value;
      }
    }
  }

  private Interval power() {
    Interval value = inUnit();
    if (take("^")) {
      return value.power(inUnit());
    }
    return take("²") ? value.times(value) : value;
  }

  private Interval inUnit() {
    Interval value = part();
    if (take(" in ")) {
      Unit unit = unit().orElseThrow(() -> wrong("a unit is missing"));
      return value.rising(unit::fromSi);
    }
    return value;
  }

  private Interval part() {
    if (take("sum over ")) {
      return sumOver();
    } else if (take("√(")) {
      return inBrackets(this::sum).max(Interval.exact(0)).rising(Math::sqrt);
    } else if (take("up(")) {
      return inBrackets(this::sum).upTo(Interval.exact(1));
    } else if (take("down(")) {
      return inBrackets(this::sum).downTo(Interval.exact(1));
    } else if (take("max(")) {
      return inBrackets(() -> pairwise(Interval::max));
    } else if (take("min(")) {
      return inBrackets(() -> pairwise(Interval::min));
    } else if (take("(")) {
      return inBrackets(this::sum);
    } else if (take("π")) {
      return Interval.exact(Math.PI);
    }
    return name().orElseGet(this::number);
  }

  private Interval pairwise(java.util.function.BinaryOperator<Interval> by) {
    Interval value = sum();
    while (take(", ")) {
      value = by.apply(value, sum());
    }
    return value;
  }

  private Interval inBrackets(Supplier<Interval> inside) {
    Interval value = inside.get();
    if (!take(")")) {
      throw wrong("a bracket is missing");
    }
    return value;
  }

  private Interval number() {
    int end = at;
    while (end < text.length() && "0123456789.".indexOf(text.charAt(end)) >= 0) {
      end++;
    }
    if (end == at) {
      throw wrong("no input of this name");
    }
    double value = Double.parseDouble(text.substring(at, end));
    at = end;
    if (at < text.length() && text.charAt(at) == ' ') {
      at++;
      Optional<Unit> unit = unit();
      if (unit.isPresent()) {
        return Interval.exact(unit.get().toSi(value));
      }
      at--;
    }
    return Interval.exact(value);
  }

  private Optional<Unit> unit() {
    Optional<Unit> unit = PrintedNumber.unitAt(text.substring(at));
    unit.ifPresent(u -> at += u.symbol().length());
    return unit;
  }

  /** Adds up over inputs of one name, or over all inputs where nothing is said of them. */
  private Interval sumOver() {
    int of = text.indexOf(" of ", at);
    if (of < 0) {
      at = text.length();
      return inputs.stream()
          .flatMap(i -> PrintedNumber.read(i.value()).stream())
          .reduce(Interval.exact(0), Interval::plus);
    }
    int start = of + 4;
    Interval total = Interval.exact(0);
    at = start;
    int turns = most();
    for (int i = 0; i < turns; i++) {
      at = start;
      turn = i;
      total = total.plus(product());
    }
    turn = -1;
    if (at == start) {
      // Nothing to add up: the text is passed over.
      at = text.length();
    }
    return total;
  }

  /** How many inputs share the name that is shared by most of those in the text behind. */
  private int most() {
    int most = 0;
    String behind = withoutWholeNames(text.substring(at));
    for (PrintedEntry.Input input : inputs) {
      int space = input.name().indexOf(' ');
      while (space > 0) {
        String first = input.name().substring(0, space);
        boolean isNamed = isWordOf(behind, first) && !isWhole(first);
        most = Math.max(most, isNamed ? sharing(first).size() : 0);
        space = input.name().indexOf(' ', space + 1);
      }
    }
    return most;
  }

  private String withoutWholeNames(String behind) {
    List<String> names = new ArrayList<>();
    inputs.forEach(i -> names.addAll(List.of(i.name(), alias(i))));
    names.sort(java.util.Comparator.comparing(String::length).reversed());
    String left = behind;
    for (String name : names) {
      left = left.replace(name, "·");
    }
    return left;
  }

  private static boolean isWordOf(String behind, String word) {
    int found = behind.indexOf(word);
    return found >= 0
        && (found == 0 || !Character.isLetter(behind.charAt(found - 1)))
        && !startsWithLetter(behind.substring(found + word.length()));
  }

  private static boolean startsWithLetter(String text) {
    return !text.isEmpty() && Character.isLetter(text.charAt(0));
  }

  private boolean isWhole(String name) {
    return inputs.stream().anyMatch(i -> i.name().equals(name) || alias(i).equals(name));
  }

  private List<Interval> sharing(String first) {
    List<Interval> values = new ArrayList<>();
    for (PrintedEntry.Input input : inputs) {
      if (input.name().startsWith(first + " ")) {
        PrintedNumber.read(input.value()).ifPresent(values::add);
      }
    }
    return values;
  }

  private static String alias(PrintedEntry.Input input) {
    int comma = input.name().indexOf(", ");
    return comma < 0 ? input.name() : input.name().substring(0, comma);
  }

  /** The longest name that stands here: an input's own, else the first words of some. */
  private Optional<Interval> name() {
    String longest = "";
    for (PrintedEntry.Input input : inputs) {
      for (String name : List.of(input.name(), alias(input))) {
        longest = standsHere(name) && name.length() > longest.length() ? name : longest;
      }
    }
    if (!longest.isEmpty()) {
      String found = longest;
      at += found.length();
      return inputs.stream()
          .filter(i -> i.name().equals(found) || alias(i).equals(found))
          .flatMap(i -> PrintedNumber.read(i.value()).stream())
          .findFirst();
    }
    return firstWords();
  }

  private Optional<Interval> firstWords() {
    String longest = "";
    for (PrintedEntry.Input input : inputs) {
      int space = input.name().indexOf(' ');
      while (space > 0) {
        String first = input.name().substring(0, space);
        longest = standsHere(first) && space > longest.length() ? first : longest;
        space = input.name().indexOf(' ', space + 1);
      }
    }
    if (longest.isEmpty()) {
      return Optional.empty();
    }
    List<Interval> values = sharing(longest);
    int which = Math.max(turn, 0);
    if (turn < 0 && values.size() != 1 || which >= values.size()) {
      throw wrong(values.size() + " inputs begin with " + longest);
    }
    at += longest.length();
    return Optional.of(values.get(which));
  }

  private boolean standsHere(String name) {
    return text.startsWith(name, at) && !startsWithLetter(text.substring(at + name.length()));
  }

  private boolean take(String sign) {
    if (text.startsWith(sign, at)) {
      at += sign.length();
      return true;
    }
    return false;
  }

  /** Twice the area of a polygon is the sum of the cross products of its corners. */
  private Interval shoelace() {
    Interval sum = Interval.exact(0);
    List<List<Interval>> corners = corners();
    for (int i = 0; i < corners.size(); i++) {
      List<Interval> a = corners.get(i);
      List<Interval> b = corners.get((i + 1) % corners.size());
      sum = sum.plus(a.get(0).times(b.get(1)).minus(b.get(0).times(a.get(1))));
    }
    Interval half = sum.times(Interval.exact(0.5));
    return half.high() < 0 ? Interval.exact(0).minus(half) : half;
  }

  private Interval lengths() {
    Interval sum = Interval.exact(0);
    List<List<Interval>> corners = corners();
    for (int i = 1; i < corners.size(); i++) {
      Interval right = corners.get(i).get(0).minus(corners.get(i - 1).get(0));
      Interval up = corners.get(i).get(1).minus(corners.get(i - 1).get(1));
      Interval square = right.times(right).plus(up.times(up));
      sum = sum.plus(square.max(Interval.exact(0)).rising(Math::sqrt));
    }
    return sum;
  }

  private List<List<Interval>> corners() {
    List<List<Interval>> corners = PrintedNumber.corners(inputs.get(0).value());
    if (corners.isEmpty()) {
      throw wrong("the corners are not printed");
    }
    return corners;
  }

  private IllegalArgumentException wrong(String what) {
    return new IllegalArgumentException(
        what + " at `" + text.substring(at) + "` of `" + text + "`");
  }
}
