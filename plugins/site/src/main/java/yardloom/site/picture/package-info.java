/**
 * The yard as a picture in colour, for the cover and the client; start with {@link PicturePainter}.
 */
package yardloom.site.picture;
