/** The first minutes: how a plan comes in, a part to try, what each key does; then machines and people are named. */
package org.tenthwise.app.ui.guide;
