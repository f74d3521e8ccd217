package org.linedrop.network;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/** Which row of the answer comes from which terms of which branch. */
public final class Trace {
    private Trace() {}

    /**
     * One run as it was put into the network. It is one section unless something in it switches or takes fluid.
     *
     * @param id       name of the run
     * @param from     number of its first point
     * @param to       number of its last point
     * @param sections its sections in flow order, at least one
     */
    public record RunTrace(String id, int from, int to, List<Section> sections) {
        /** Copies the sections. */
        public RunTrace {
            sections = List.copyOf(sections);
        }

        /**
         * Its rows.
         *
         * @return in flow order
         */
        public List<Row> rows() {
            return sections.stream().flatMap(section -> section.rows().stream()).toList();
        }

        /**
         * The section of a row.
         *
         * @param row index of the row in {@link #rows()}
         * @return the section that holds it
         */
        public Section section(int row) {
            int before = row;
            for (Section section : sections) {
                if (before < section.rows().size()) {
                    return section;
                }
                before -= section.rows().size();
            }
            throw new IndexOutOfBoundsException("run " + id + " has no row " + row);
        }

        /**
         * Its first section.
         *
         * @return the one that begins where the run does
         */
        public Section first() {
            return sections.get(0);
        }

        /**
         * Its last section.
         *
         * @return the one that ends where the run does
         */
        public Section last() {
            return sections.get(sections.size() - 1);
        }
    }

    /**
     * A stretch of a run with one flow: one branch of the network.
     *
     * @param branch number of its branch
     * @param gate   whether it is a single device that switches, whose drop is set by the pressures on both sides
     * @param rows   its rows in flow order
     */
    public record Section(int branch, boolean gate, List<Row> rows) {
        /** Copies the rows. */
        public Section {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A branch of a device that switches.
     *
     * @param device name of the device in the circuit
     * @param way    which way through it: empty where it has only one, else the name of the port it leads to
     * @param branch number of its branch
     * @param open   what it loses wide open, as a function of mass flow
     */
    public record Gate(String device, String way, int branch, Law open) {}

    /**
     * A tee or Y block as it was put into the network.
     *
     * @param id     name of its point in the circuit
     * @param number number of its junction in the network
     * @param centre number of the point in its middle
     * @param runBoreM bore that its coefficients refer to
     * @param stream the fluid in it
     */
    public record JunctionTrace(String id, int number, int centre, double runBoreM, Stream stream) {}

    /**
     * A leg of a junction, as a row of the run that ends there.
     *
     * @param junction number of the junction in the network
     * @param leg      number of the leg
     * @param sense    1 where the run flows towards the junction, -1 where it starts there
     */
    public record Leg(int junction, int leg, int sense) {}

    /**
     * One row.
     *
     * @param row       its number within the run
     * @param name      what the text table prints
     * @param kind      hose, end, tube, bends, adapter, bulkhead, tee, Y block, valve, restrictor, filter, pump, entry, exit
     * @param part      name of the part it belongs to
     * @param device    name of the device, empty when it is none
     * @param size      as the trade writes it
     * @param boreM     bore of its velocity, with band and source
     * @param usedBoreM the bore that the solve used
     * @param inBoreM   bore before it, infinite in a vessel
     * @param outBoreM  bore behind it, infinite in a vessel
     * @param stream    the fluid in it
     * @param friction  its friction terms
     * @param local     its other terms
     * @param lengthM   length of bore in it, 0 where it is none
     * @param liftPa    its lift
     * @param joined    those of its other terms that are changes of bore to its neighbours
     * @param story     what it can tell of itself beyond its terms
     * @param leg       the junction leg it is, which loses by the flows of all legs; null for any other row
     */
    public record Row(
            String row,
            String name,
            String kind,
            String part,
            String device,
            String size,
            Figure boreM,
            double usedBoreM,
            double inBoreM,
            double outBoreM,
            Stream stream,
            List<Term> friction,
            List<Term> local,
            double lengthM,
            double liftPa,
            List<Term> joined,
            Story story,
            @Nullable Leg leg) {
        /** Copies the terms. */
        public Row {
            friction = List.copyOf(friction);
            local = List.copyOf(local);
            joined = List.copyOf(joined);
        }

        /**
         * Whether the row is something to be lost in plumbing, rather than a pump.
         *
         * @return false for pumps of any kind
         */
        public boolean plumbing() {
            return !kind.endsWith("pump");
        }

        /**
         * Friction along the row's bore.
         *
         * @param massFlowKgPerS mass flow
         * @return Pa, with the sign of the flow
         */
        public double frictionDropPa(double massFlowKgPerS) {
            return sum(friction, massFlowKgPerS);
        }

        /**
         * Everything lost or gained in the row that is neither friction along its bore nor lift, nor what a junction
         * loses by the flows of its legs.
         *
         * @param massFlowKgPerS mass flow
         * @return Pa
         */
        public double localDropPa(double massFlowKgPerS) {
            return sum(local, massFlowKgPerS);
        }

        private static double sum(List<Term> terms, double massFlowKgPerS) {
            double drop = 0;
            for (Term term : terms) {
                drop += term.dropPa(massFlowKgPerS);
            }
            return drop;
        }
    }
}
