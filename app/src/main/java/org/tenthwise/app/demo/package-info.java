/**
 * A demo part walked through the real screens by a finger nobody owns: it sees what is on the screen, presses the keys
 * it finds there, and takes pictures on the way. The scene and a readings file come in, pictures go out; whatever
 * reaches the ledger gets there through the screens.
 */
package org.tenthwise.app.demo;
