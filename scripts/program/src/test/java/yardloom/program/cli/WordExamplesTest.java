package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.vocab.Lexicon;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.kernel.vocab.Word;
import yardloom.language.limit.RunLimits;
import yardloom.language.run.PlanRunner;

/** The words that ship, as the language sees them. */
class WordExamplesTest {
  @TempDir Path folder;

  private static Lexicon shipped() {
    List<Vocabulary> all = new ArrayList<>();
    ServiceLoader.load(YardPlugin.class).forEach(p -> all.addAll(p.vocabularies()));
    return Lexicon.of(all);
  }

  /** Names that an example takes from around it are allowed to be missing; nothing else is. */
  @Test
  void examples_ofPlanWords_passTheCheck() throws IOException {
    Lexicon lexicon = shipped();
    PlanRunner runner = new PlanRunner(lexicon, RunLimits.standard(), (s, w) -> Optional.empty());
    List<String> faults = new ArrayList<>();
    List<Word> words = new ArrayList<>(lexicon.words(PlanScope.class));
    words.addAll(lexicon.words(Scope.class));
    assertTrue(words.size() > 20, "few words: " + words.size());
    for (Word word : words) {
      Path file = Files.writeString(folder.resolve("example.groovy"), word.example() + "\n");
      for (Problem problem : runner.check(file)) {
        if (!problem.message().contains("is not known here")) {
          faults.add(word.example() + " -> " + problem);
        }
      }
    }
    assertEquals(List.of(), faults);
  }

  /** A word is part of the lock: it takes values of the language only, never a file or a class. */
  @Test
  void parameters_ofAllWords_areValuesOfTheLanguage() {
    List<String> open = new ArrayList<>();
    for (Word word : shipped().all()) {
      for (Word.Parameter p : word.parameters()) {
        boolean listed =
            yardloom.language.type.ScriptTypes.values().contains(p.type())
                || List.of(
                        String.class,
                        Boolean.class,
                        Number.class,
                        Integer.class,
                        Double.class,
                        // Sealed: any of the listed kinds of quantities.
                        yardloom.kernel.unit.Quantity.class,
                        List.class)
                    .contains(p.type());
        // A text or a publication: Source.given refuses whatever else stands there.
        boolean source = p.type() == Object.class && p.name().equals("source");
        if (!listed && !source) {
          open.add(word.name() + "." + p.name() + " takes " + p.type().getName());
        }
      }
    }
    assertEquals(List.of(), open);
  }
}
