/**
 * Compiles plan scripts through all gates before anything of them runs. Start with {@link
 * yardloom.language.compile.ScriptCompiler}; what scripts may touch is listed in {@link
 * yardloom.language.type.ScriptTypes}.
 *
 * <p>The gates, outermost first: {@code text.TextGate} (raw text), {@code word.Rewriter} and {@code
 * word.Expressions} (raw tree; only what they know is translated, into a fresh tree), {@code
 * word.WordCalls} (words by lexical scope), {@code typed.TypedPass} and {@code typed.LateCalls}
 * (static compilation; every target on the list), {@code bytes.ClassGate} (finished bytes), {@code
 * bytes.ListedLoader} (only listed classes exist). Each refuses what it does not know.
 */
package yardloom.language.compile;
