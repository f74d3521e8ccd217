/**
 * The trade's rows: hose families and their bores, ends, adapters, tubes, threads, ratings and compatibility, every
 * figure with source and status. Rows are copied into parts when a circuit is built and never looked up again.
 */
@NullMarked
package org.linedrop.catalogue;

import org.jspecify.annotations.NullMarked;
