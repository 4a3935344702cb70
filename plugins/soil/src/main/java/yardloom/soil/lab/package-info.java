/**
 * What a laboratory found and what is wanted of the soil. Start with {@link
 * yardloom.soil.lab.SoilTestWords}.
 */
package yardloom.soil.lab;
