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
}
