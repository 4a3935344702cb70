/**
 * The text of a script and what the parser makes of it, before any word is understood. {@code
 * TextGate} looks at the raw text, {@code RawScript} parses it and no more, {@code SyntaxWords}
 * says the parser's errors in the words of the language; {@code Report} collects the problems of
 * one file. Start with {@link yardloom.language.text.RawScript}.
 */
package yardloom.language.text;
