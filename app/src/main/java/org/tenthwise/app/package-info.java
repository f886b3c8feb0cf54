/**
 * Where the program starts and where everything is put together by hand: {@link org.tenthwise.app.Wiring} knows every
 * package, and no package knows it.
 */
package org.tenthwise.app;
