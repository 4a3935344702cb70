/**
 * The words of the plan language as annotated Java, without any script engine. Start with {@link
 * yardloom.kernel.vocab.Lexicon}.
 *
 * <p>A word is a public static method annotated {@link yardloom.kernel.vocab.Verb}. Its first
 * parameter is the {@link yardloom.kernel.vocab.Scope} in whose block it may stand; required
 * arguments ({@link yardloom.kernel.vocab.Arg}) follow, then named options ({@link
 * yardloom.kernel.vocab.Opt}, {@code null} when not given), and last, if the word opens a block, a
 * {@code Consumer} of the inner scope.
 */
package yardloom.kernel.vocab;
