/**
 * The rules of the house, held by tests over the compiled classes, the sources and the words. Each rule says why it is
 * there.
 */
package org.tenthwise.app.house;
