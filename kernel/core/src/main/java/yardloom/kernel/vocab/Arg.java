package yardloom.kernel.vocab;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A required argument of a word; scripts give it by position. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.PARAMETER)
public @interface Arg {
  String name();

  String help();

  /** The texts that may stand here, when they are the names of an enum. */
  Class<? extends Enum<?>> choices() default Opt.AnyText.class;
}
