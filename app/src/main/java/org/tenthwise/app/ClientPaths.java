package org.tenthwise.app;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Where the files of one opening of the client lie.
 *
 * @param plans folder with plan files, which need not be there; absent for the demo parts alone
 * @param care where what is kept about the store beside it lies; absent for a store that is thrown away
 * @param records folder for records that are handed out
 */
record ClientPaths(Path store, Optional<Path> plans, Path records, Optional<Path> care) {}
