/**
 * Stands where the client would be while its store cannot be opened: says why, and what can be done. Why comes in as a
 * sentence from the store; out goes the wish to try again or to close.
 */
package org.tenthwise.app.ui.unopened;
