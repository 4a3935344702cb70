/** How wide text is in the shipped font, without any font on the machine. */
package yardloom.sheet.font;
