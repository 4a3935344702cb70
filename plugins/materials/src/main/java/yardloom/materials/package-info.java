/**
 * What is bought and laid, and how it comes to the yard. Start with {@link
 * yardloom.materials.MaterialsPlugin}.
 */
package yardloom.materials;
