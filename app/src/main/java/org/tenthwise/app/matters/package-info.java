/**
 * What is open over all runs of a store, and where somebody signs for what becomes of it. A matter is gone when its
 * cause is; one that was signed for comes back when what it rests on changes. Every one leads to the run it is of, in
 * which nothing is changed from here.
 */
package org.tenthwise.app.matters;
