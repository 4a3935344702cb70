/**
 * How are sun and shade drawn? Bands of hours, outlines of shade, the sun's path and the sheet that
 * holds them. Start with {@link yardloom.sun.figure.SunSheet}.
 */
package yardloom.sun.figure;
