/**
 * The device under the client: where its private files lie, when it goes to the background, how large its display is,
 * what shows a file beside it.
 *
 * <p>Each is a small interface, answered through Attach where the device has the service and plainly where it has not.
 * Nothing else in the client knows Attach.
 */
package org.tenthwise.app.device;
