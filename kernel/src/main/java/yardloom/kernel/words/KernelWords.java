package yardloom.kernel.words;

import java.util.List;
import yardloom.kernel.vocab.Vocabulary;

/** All words that the kernel itself brings. */
public final class KernelWords {
  public static final Vocabulary VOCABULARY =
      new Vocabulary(
          "kernel",
          List.of(
              ShapeWords.class,
              PlanWords.class,
              SurveyWords.class,
              DeedWords.class,
              LotWords.class,
              SideWords.class,
              SightWords.class,
              StandardWords.class,
              BuiltWords.class,
              GrowingWords.class,
              BedWords.class,
              LevelWords.class,
              EarthWords.class,
              RestrictionWords.class,
              GroundWords.class));

  private KernelWords() {}
}
