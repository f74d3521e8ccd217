/**
 * The trade's rows: hose families and their bores, ends, adapters, tubes, threads, ratings and compatibility, every
 * figure with source and status. Rows are copied into parts when a circuit is built and never looked up again.
 *
 * <p>The status of a figure is that of its usual value, the weakest word where several went into it; where the ends of
 * its band are known less well than the value, the source's locator says so. What nobody published is missing (null),
 * not filled in, except hose-end nipples: without them no hose can be computed, so a named neighbour's is taken and the
 * source says which. The data are CSV files in this package's resources; laws and units of files are no business of
 * this package.
 */
@NullMarked
package org.linedrop.catalogue;

import org.jspecify.annotations.NullMarked;
