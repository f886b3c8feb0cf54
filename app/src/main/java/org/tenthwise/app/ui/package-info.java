/**
 * Builds every screen of the client by hand from what it needs, and leads from one to the other. One package below this
 * a screen, or a few about one thing, with view and view model; forms about the step in hand have their view model
 * alone, for {@code form} shows them all. Blocks shared by screens are in {@code form}, {@code keys}, {@code shell} and
 * {@code theme}.
 */
package org.tenthwise.app.ui;
