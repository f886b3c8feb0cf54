/**
 * Where the client opens: runs begun, each with where it stands, and parts to begin one on; the few settings of the
 * look. Null is not passed and not returned.
 */
package org.tenthwise.app.ui.home;
