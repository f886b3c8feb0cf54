/**
 * How everything looks: colours by role for day and night, type, lines, icons, and the few settings a person can
 * change.
 *
 * <p>What comes in is a scene and a {@link org.tenthwise.app.ui.theme.Look}; what goes out is the same scene, dressed.
 * Screens name roles and type classes only; no colour and no font size is written anywhere else.
 */
package org.tenthwise.app.ui.theme;
