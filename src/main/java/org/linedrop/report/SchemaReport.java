package org.linedrop.report;

/**
 * JSON Schema, draft 2020-12, of what Linedrop reads and writes, so that an editor completes and explains keys and a
 * program checks what it hands over. Those of files are made from the key table, that of results from the columns of
 * the reports. A file that a schema takes may still be wrong in what one key says of another: the reader finds that.
 */
public final class SchemaReport {
    private SchemaReport() {}

    /**
     * The circuit file. Quantities are texts with their units; a bare number is taken only where the trade writes one.
     *
     * @return JSON, ending with a line end
     */
    public static String circuit() {
        return Schema.text(CircuitSchema.circuit());
    }

    /**
     * A file of the user's own hoses.
     *
     * @return JSON, ending with a line end
     */
    public static String catalogue() {
        return Schema.text(CircuitSchema.catalogue());
    }

    /**
     * The results that {@link JsonReport} writes.
     *
     * @return JSON, ending with a line end
     */
    public static String result() {
        return Schema.text(ResultSchema.result());
    }
}
