package yardloom.kernel.vocab;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** An option of a word, given by name; the method receives {@code null} when it is left out. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.PARAMETER)
public @interface Opt {
  String name();

  String help();

  /** What holds when the option is left out, in words with unit. */
  String fallback() default "";

  /** Whether leaving it out is an error; scripts still give it by name. */
  boolean required() default false;

  /** The texts that may stand here, when they are the names of an enum. */
  Class<? extends Enum<?>> choices() default AnyText.class;

  /** Stands for "any text". */
  enum AnyText {}
}
