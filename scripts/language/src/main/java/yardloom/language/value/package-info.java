/**
 * What numbers, texts, lists and maps do in a script. Compiled scripts call {@link
 * yardloom.language.value.Operators} for signs, {@code Values} for methods and {@code NumberUnits}
 * for units; {@code Shown} shows values and {@code ParamText} reads them from the command line.
 */
package yardloom.language.value;
