package yardloom.kernel.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestTest {
  private static final List<String> WORDS = List.of("bed", "beds", "building", "path", "plant");

  @Test
  void swappedLetters_areOneMistake() {
    assertEquals(Optional.of("plant"), Nearest.to("palnt", WORDS));
  }

  @Test
  void missingLetter_findsTheWord() {
    assertEquals(Optional.of("plant"), Nearest.to("plnt", WORDS));
  }

  @Test
  void tie_goesToTheAlphabeticallyFirst() {
    assertEquals(Optional.of("bed"), Nearest.to("bedd", WORDS));
  }

  @Test
  void farWord_isNoSuggestion() {
    assertEquals(Optional.empty(), Nearest.to("gazebo", WORDS));
    assertEquals("", Nearest.hint("gazebo", WORDS));
  }

  @Test
  void limit_isAThirdOfTheLetters_atMostThree() {
    assertEquals(Optional.of("path"), Nearest.to("paht", List.of("path")));
    assertEquals(Optional.of("ab"), Nearest.to("ax", List.of("ab")));
    assertEquals(Optional.empty(), Nearest.to("xy", List.of("ab")), "one of two letters at most");
    assertEquals(Optional.of("abcde"), Nearest.to("xycde", List.of("abcde")), "(5 + 1) / 3 = 2");
    assertEquals(Optional.empty(), Nearest.to("xycd", List.of("abcd")), "(4 + 1) / 3 = 1");
    String twelve = "abcdefghijkl";
    assertEquals(Optional.of(twelve), Nearest.to("xyzdefghijkl", List.of(twelve)));
    assertEquals(Optional.empty(), Nearest.to("wxyzefghijkl", List.of(twelve)));
  }

  @Test
  void swap_isOneStep_onlyBetweenNeighbours() {
    assertEquals(Optional.of("ba"), Nearest.to("ab", List.of("ba")), "the first two letters");
    assertEquals(Optional.empty(), Nearest.to("cba", List.of("abc")), "two of three are changed");
    assertEquals(Optional.empty(), Nearest.to("xbya", List.of("aqbz")), "no neighbours");
    assertEquals(Optional.empty(), Nearest.to("aab", List.of("abba")), "two letters more");
    assertEquals(Optional.of("bac"), Nearest.to("abc", List.of("xyz", "bac")));
  }

  @Test
  void sharedWords_areFound_pluralsAside_fourLettersAtLeast() {
    List<String> known =
        List.of("water.tanks", "water-tap", "path-width", "soil.ph", "bed 12", "Path_Reach");
    assertEquals(List.of("water-tap", "water.tanks"), Nearest.sharingAWord("WATERS low", known));
    assertEquals(List.of("water.tanks"), Nearest.sharingAWord("tank", known));
    assertEquals(List.of("Path_Reach", "path-width"), Nearest.sharingAWord("paths", known));
    assertEquals(List.of(), Nearest.sharingAWord("soi ph bed taps", known), "three letters");
    assertEquals(
        List.of("path 1", "path 2", "path 3", "path 4", "path 5"),
        Nearest.sharingAWord(
            "path", List.of("path 6", "path 5", "path 4", "path 3", "path 2", "path 1")));
  }
}
