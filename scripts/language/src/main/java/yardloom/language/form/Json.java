package yardloom.language.form;

import java.util.List;

/** A value of a JSON text, with the line and column where it begins, both from 1. */
sealed interface Json {
  int line();

  int column();

  /** What messages call it: "a text", "a list". */
  String kind();

  /**
   * Named values in the order written.
   *
   * @param members no name twice
   */
  record Obj(int line, int column, List<Member> members) implements Json {
    @Override
    public String kind() {
      return "an object";
    }

    /** The value called so, or null. */
    Json get(String name) {
      for (Member member : members) {
        if (member.name().equals(name)) {
          return member.value();
        }
      }
      return null;
    }
  }

  /** One named value; the place is that of its name. */
  record Member(int line, int column, String name, Json value) {}

  record Items(int line, int column, List<Json> values) implements Json {
    @Override
    public String kind() {
      return "a list";
    }
  }

  record Text(int line, int column, String value) implements Json {
    @Override
    public String kind() {
      return "the text '" + (value.length() > 40 ? value.substring(0, 40) + "…" : value) + "'";
    }
  }

  /**
   * A number.
   *
   * @param value an Integer or Long where it has neither point nor exponent, otherwise a Double
   */
  record Num(int line, int column, Number value) implements Json {
    @Override
    public String kind() {
      return "the bare number " + value;
    }
  }

  record Truth(int line, int column, boolean value) implements Json {
    @Override
    public String kind() {
      return String.valueOf(value);
    }
  }

  record Nothing(int line, int column) implements Json {
    @Override
    public String kind() {
      return "null";
    }
  }
}
