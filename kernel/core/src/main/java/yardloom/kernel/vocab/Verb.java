package yardloom.kernel.vocab;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Makes a public static method a word of the plan language, named after the method. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface Verb {
  /** One sentence: what the word adds to the plan. */
  String help();

  /** A line of script that uses it. */
  String example();

  /** The word as scripts write it, if the method name cannot be used. */
  String word() default "";
}
