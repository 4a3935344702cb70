/** Tables, layers and sheets of the sun plugin. Start with {@link yardloom.sun.sheet.SunTable}. */
package yardloom.sun.sheet;
