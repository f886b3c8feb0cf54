/**
 * Where the client opens: runs begun, each with where it stands, and parts to begin one on; the few settings of the
 * look.
 */
package org.tenthwise.app.ui.home;
