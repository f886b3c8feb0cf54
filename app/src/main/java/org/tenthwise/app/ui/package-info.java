/**
 * Builds every screen of the client by hand from what it needs, and leads from one to the other. One package below this
 * a screen, with its view and its view model; blocks shared by screens are in {@code keys}, {@code shell} and {@code theme}.
 */
package org.tenthwise.app.ui;
