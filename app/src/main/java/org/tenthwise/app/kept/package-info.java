/** What is kept beside the ledger in small files: settings, and no evidence. */
package org.tenthwise.app.kept;
