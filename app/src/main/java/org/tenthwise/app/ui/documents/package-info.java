/** What documents prove of a run, in a list of its own: what is still to come first. */
package org.tenthwise.app.ui.documents;
