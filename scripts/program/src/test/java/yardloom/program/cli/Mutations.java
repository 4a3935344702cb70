package yardloom.program.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Makes wrong plans of right ones: by letter, by token, by line and, of JSON, by tree. */
final class Mutations {
  private static final Pattern TOKEN = Pattern.compile("[\\p{L}_]+|[0-9.]+|'[^'\n]*'|\\s+|.");

  private static final List<String> ODD =
      List.of(
          "0",
          "-1",
          "1e9",
          "-1e-9",
          "1e308",
          "0.0000001",
          "2147483648",
          "null",
          "''",
          "[]",
          "it",
          "'\\u202e'",
          "'a\\nb'",
          "{ }",
          "true",
          "4.kg",
          "1000000.ft",
          "-3.ft",
          "1.degF",
          "..");

  private static final List<String> ODD_JSON =
      List.of(
          "0",
          "-1",
          "1e9",
          "-1e-9",
          "1e308",
          "2147483648",
          "null",
          "\"\"",
          "[]",
          "{}",
          "true",
          "\"4 kg\"",
          "\"1000000 ft\"",
          "\"-3 ft\"",
          "\"1 degF\"",
          "\"a\\nb\"",
          "\"<b>&\"",
          "{\"ref\": \"bed 1\"}",
          "[\"1 m\", \"2 m\"]",
          "\"=1+1\"");

  private static final ObjectMapper JSON = new ObjectMapper();

  private final SplittableRandom random;
  private final List<String> tokens;

  /**
   * @param corpus the plans whose tokens are put where they do not belong
   */
  Mutations(SplittableRandom random, List<String> corpus) {
    this.random = random;
    this.tokens = corpus.stream().flatMap(t -> tokens(t).stream()).distinct().toList();
  }

  private static List<String> tokens(String text) {
    Matcher found = TOKEN.matcher(text);
    List<String> all = new ArrayList<>();
    while (found.find()) {
      all.add(found.group());
    }
    return all;
  }

  private <T> T any(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** One to three changes. */
  String of(String plan, boolean json) {
    String changed = plan;
    for (int i = random.nextInt(1, 4); i > 0 && !changed.isEmpty(); i--) {
      int kind = random.nextInt(json ? 6 : 4);
      changed =
          kind == 0
              ? byLetter(changed)
              : kind == 1 ? byLine(changed) : kind < 4 ? byToken(changed) : byTree(changed);
    }
    return changed;
  }

  private String byLetter(String text) {
    int at = random.nextInt(text.length());
    String sign = String.valueOf((char) random.nextInt(32, 127));
    return switch (random.nextInt(4)) {
      case 0 -> text.substring(0, at) + text.substring(at + 1);
      case 1 -> text.substring(0, at) + sign + text.substring(at);
      case 2 -> text.substring(0, at) + sign + text.substring(at + 1);
      default -> text.substring(0, at);
    };
  }

  private String byLine(String text) {
    List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
    int at = random.nextInt(lines.size());
    switch (random.nextInt(3)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(random.nextInt(lines.size()), lines.get(at));
      default -> lines.add(random.nextInt(lines.size()), lines.remove(at));
    }
    return String.join("\n", lines);
  }

  private String byToken(String text) {
    List<String> all = tokens(text);
    int at = random.nextInt(all.size());
    switch (random.nextInt(4)) {
      case 0 -> all.remove(at);
      case 1 -> all.add(at, all.get(at));
      case 2 -> all.set(at, any(tokens));
      default -> {
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
          if (all.get(i).matches("[0-9.]*[0-9]")) {
            numbers.add(i);
          }
        }
        all.set(numbers.isEmpty() ? at : any(numbers), any(ODD));
      }
    }
    return all.stream().collect(Collectors.joining());
  }

  private String byTree(String text) {
    try {
      JsonNode root = JSON.readTree(text);
      List<JsonNode> inside = new ArrayList<>();
      collect(root, inside);
      if (inside.isEmpty()) {
        return text;
      }
      JsonNode at = any(inside);
      JsonNode other =
          random.nextInt(2) == 0 ? JSON.readTree(any(ODD_JSON)) : any(inside).deepCopy();
      if (at instanceof ObjectNode object && !object.isEmpty()) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        String name = any(names);
        if (random.nextInt(3) == 0) {
          object.remove(name);
        } else {
          object.set(name, other);
        }
      } else if (at instanceof ArrayNode list && !list.isEmpty()) {
        switch (random.nextInt(3)) {
          case 0 -> list.remove(random.nextInt(list.size()));
          case 1 -> list.insert(random.nextInt(list.size()), list.get(0).deepCopy());
          default -> list.set(random.nextInt(list.size()), other);
        }
      }
      return root.toPrettyString();
    } catch (JsonProcessingException e) {
      // Broken already.
      return text;
    }
  }

  private static void collect(JsonNode node, List<JsonNode> inside) {
    if (node != null && node.isContainerNode()) {
      inside.add(node);
      node.forEach(n -> collect(n, inside));
    }
  }
}
