/**
 * Which parts and revisions there are: the two invented demo parts that come along, and plan files in a folder.
 *
 * <p>Plans go out sound, files that are not go out with their problems.
 */
package org.tenthwise.checklists.catalogue;
