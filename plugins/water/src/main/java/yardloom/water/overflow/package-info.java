/**
 * Where does water go that the tank or the gutter does not keep? Start with {@link
 * yardloom.water.overflow.OverflowTable}.
 */
package yardloom.water.overflow;
