/**
 * Pictures on the screen: a pen that draws on a canvas, and a region that shows one picture at its own size, in the
 * colours of the theme and at the text size set. Screen thread only.
 */
package org.tenthwise.app.ui.picture;
