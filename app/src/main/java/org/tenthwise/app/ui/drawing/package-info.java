/** The piece of the drawing that a step of a run is about. */
package org.tenthwise.app.ui.drawing;
