package org.linedrop.network;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Position;
import org.linedrop.circuit.Run;
import org.linedrop.fact.Explanation;

/** The rows of one run: its parts one after the other, changes of bore between them, tank ends, and lift. */
final class RunPieces {
    private final Circuit circuit;
    private final Run run;
    private final List<Piece> pieces = new ArrayList<>();

    private RunPieces(Circuit circuit, Run run) {
        this.circuit = circuit;
        this.run = run;
    }

    /**
     * Makes the rows.
     *
     * @param streams   the fluid of each part, in order
     * @param ends      what the run starts and ends at
     */
    static List<Piece> of(Circuit circuit, Run run, Bores bores, List<Stream> streams, Ends ends) {
        RunPieces made = new RunPieces(circuit, run);
        made.parts(bores, streams);
        if (ends.firstLeg() != null) {
            made.pieces.add(0, ends.firstLeg());
        }
        if (ends.lastLeg() != null) {
            made.pieces.add(ends.lastLeg());
        }
        made.joinBores();
        made.tankEnds(ends.fromTank(), ends.toTank());
        if (ends.from() != null && ends.to() != null) {
            Lift.share(circuit, run, made.pieces, ends.from(), ends.to());
        }
        made.gateLift();
        return made.pieces;
    }

    /**
     * What a run starts and ends at.
     *
     * @param fromTank whether it starts at a tank
     * @param toTank   whether it ends at one
     * @param firstLeg the leg of the junction where it starts, null where it starts at none
     * @param lastLeg  the leg of the junction where it ends
     * @param from     place of its start, null when heights are left out
     * @param to       place of its end
     */
    record Ends(
            boolean fromTank,
            boolean toTank,
            @Nullable Piece firstLeg,
            @Nullable Piece lastLeg,
            @Nullable Position from,
            @Nullable Position to) {}

    private void parts(Bores bores, List<Stream> streams) {
        for (int i = 0; i < run.parts().size(); i++) {
            Part part = run.parts().get(i);
            List<Piece> rows = part.accept(new PartLaws(bores, streams.get(i), circuit));
            for (int k = 0; k < rows.size(); k++) {
                rows.get(k).row = rows.size() == 1 ? "" + (i + 1) : (i + 1) + "." + (k + 1);
            }
            pieces.addAll(rows);
        }
    }

    /** Gives devices the bores of their neighbours and charges each change of bore to the fitting beside it. */
    private void joinBores() {
        for (int i = 0; i < pieces.size(); i++) {
            if (!pieces.get(i).open()) {
                pieces.get(i).inBoreM = neighbourBore(i, -1);
                pieces.get(i).outBoreM = neighbourBore(i, 1);
                Piece piece = pieces.get(i);
                if (piece.between != null) {
                    piece.local.add(piece.between.apply(piece.inBoreM, piece.outBoreM));
                }
            }
        }
        for (int i = 0; i + 1 < pieces.size(); i++) {
            Piece before = pieces.get(i);
            Piece behind = pieces.get(i + 1);
            if (before.open() && behind.open() && before.outBoreM != behind.inBoreM) {
                boolean behindPays = !before.fitting() && behind.fitting();
                Piece payer = behindPays ? behind : before;
                if (!before.stated() && !behind.stated()) {
                    payer.joined.add(new PlumbingLaws(payer.stream)
                            .areaChange(
                                    payer == before ? "to the next bore" : "from the bore before",
                                    before.outBoreM,
                                    behind.inBoreM));
                }
                if (behindPays) {
                    behind.inBoreM = before.outBoreM;
                } else {
                    before.outBoreM = behind.inBoreM;
                }
            }
        }
    }

    private double neighbourBore(int index, int step) {
        for (int i = index + step; i >= 0 && i < pieces.size(); i += step) {
            if (pieces.get(i).open()) {
                return step < 0 ? pieces.get(i).outBoreM : pieces.get(i).inBoreM;
            }
        }
        for (int i = index - step; i >= 0 && i < pieces.size(); i -= step) {
            if (pieces.get(i).open()) {
                return step < 0 ? pieces.get(i).inBoreM : pieces.get(i).outBoreM;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private void tankEnds(boolean fromTank, boolean toTank) {
        if (pieces.isEmpty()) {
            return;
        }
        Piece first = pieces.get(0);
        Piece last = pieces.get(pieces.size() - 1);
        if (fromTank && Double.isFinite(first.inBoreM) && !first.stated()) {
            Piece entry = tankEnd("entry", first, first.inBoreM);
            entry.inBoreM = Double.POSITIVE_INFINITY;
            entry.local.add(new PlumbingLaws(first.stream).tankEntry(first.inBoreM));
            pieces.add(0, entry);
        }
        if (toTank && Double.isFinite(last.outBoreM) && !last.stated()) {
            Piece exit = tankEnd("exit", last, last.outBoreM);
            exit.outBoreM = Double.POSITIVE_INFINITY;
            exit.local.add(new PlumbingLaws(last.stream).tankExit(last.outBoreM));
            pieces.add(exit);
        }
    }

    private static Piece tankEnd(String kind, Piece beside, double boreM) {
        String name = kind.equals("entry") ? "entry from tank" : "exit into tank";
        Piece piece = new Piece(kind, name, kind, beside.size, beside.stream);
        piece.bore(beside.open() ? beside.boreM : Piece.NO_BORE, boreM);
        piece.row = kind;
        piece.story = Story.of(List.of(new Explanation.Given("bore", piece.boreM, "m")), "bore", null);
        return piece;
    }

    /** A device that switches has no lift of its own: its neighbour takes it, or a row that is nothing but height. */
    private void gateLift() {
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            if (piece.gate == null || piece.liftPa == 0) {
                continue;
            }
            if (i > 0 && pieces.get(i - 1).gate == null && !pieces.get(i - 1).takes()) {
                pieces.get(i - 1).liftPa += piece.liftPa;
            } else if (i + 1 < pieces.size() && pieces.get(i + 1).gate == null) {
                pieces.get(i + 1).liftPa += piece.liftPa;
            } else {
                Piece height = new Piece("height", "height", piece.part, "", piece.stream);
                height.row = piece.row;
                height.inBoreM = piece.inBoreM;
                height.outBoreM = piece.inBoreM;
                height.liftPa = piece.liftPa;
                piece.row += ".1";
                height.row += ".0";
                pieces.add(i, height);
            }
            piece.liftPa = 0;
        }
    }
}
