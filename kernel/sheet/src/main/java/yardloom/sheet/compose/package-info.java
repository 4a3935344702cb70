/**
 * Composes marks, tables and notes into sheets of paper. All lengths are paper millimetres, y down
 * from the upper left corner; a text height is the height of its capital letters. Start with {@link
 * yardloom.sheet.compose.SheetComposer}.
 */
package yardloom.sheet.compose;
