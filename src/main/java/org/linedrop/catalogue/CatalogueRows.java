package org.linedrop.catalogue;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * All rows of a catalogue, for lists and documents.
 *
 * @param families      hose families, the user's last
 * @param hoses         hose sizes, family by family
 * @param nipples       nipples of hose ends, family by family
 * @param throughBores  bores through connections, seat by seat
 * @param dashSizes     what goes with each dash number, -2 to -32
 * @param threads       threads, seat by seat
 * @param taperPipe     taper pipe threads, 1/16 to 2 in
 * @param tubeMaterials tube materials that have a row
 * @param tubes         usual tubes, material by material
 * @param roughness     wall roughness by surface
 * @param compatibility linings against fluids
 * @param fluidNames    other names of the fluids of that table
 * @param cutOffs       what ends add to the hose, from military manuals
 * @param brakeSwell    the most that brake hose may swell
 * @param rules         rules of thumb: advice only
 * @param sizeUses      what dash sizes are usually used for
 * @param endConstants  bend ratio and loss coefficients of ends
 */
record CatalogueRows(
        List<HoseFamily> families,
        List<HoseSize> hoses,
        List<NippleSize> nipples,
        List<ThroughBore> throughBores,
        List<DashSize> dashSizes,
        List<ThreadSize> threads,
        List<TaperPipeSize> taperPipe,
        List<TubeMaterial> tubeMaterials,
        List<TubeSize> tubes,
        List<SurfaceRoughness> roughness,
        List<Compatibility> compatibility,
        List<FluidName> fluidNames,
        List<CutOff> cutOffs,
        List<BrakeSwell> brakeSwell,
        List<RuleOfThumb> rules,
        List<SizeUse> sizeUses,
        List<EndConstant> endConstants)
        implements Serializable {

    /** Copies the lists. */
    CatalogueRows {
        families = List.copyOf(families);
        hoses = List.copyOf(hoses);
        nipples = List.copyOf(nipples);
        throughBores = List.copyOf(throughBores);
        dashSizes = List.copyOf(dashSizes);
        threads = List.copyOf(threads);
        taperPipe = List.copyOf(taperPipe);
        tubeMaterials = List.copyOf(tubeMaterials);
        tubes = List.copyOf(tubes);
        roughness = List.copyOf(roughness);
        compatibility = List.copyOf(compatibility);
        fluidNames = List.copyOf(fluidNames);
        cutOffs = List.copyOf(cutOffs);
        brakeSwell = List.copyOf(brakeSwell);
        rules = List.copyOf(rules);
        sizeUses = List.copyOf(sizeUses);
        endConstants = List.copyOf(endConstants);
    }

    /** The rows of the library's own files. */
    static CatalogueRows read() {
        StandardRows files = new StandardRows();
        List<SurfaceRoughness> surfaces = files.roughness();
        List<HoseFamily> families = files.families();
        List<TubeMaterial> materials = files.tubeMaterials();
        return new CatalogueRows(
                families,
                files.hoses(families, surfaces),
                files.nipples(),
                files.throughBores(),
                files.dashSizes(),
                files.threads(),
                files.taperPipe(),
                materials,
                files.tubes(materials, surfaces),
                surfaces,
                files.compatibility(),
                files.fluidNames(),
                files.cutOffs(),
                files.brakeSwell(),
                files.rules(),
                files.sizeUses(),
                files.endConstants());
    }

    /** These rows and some hose of the user's. */
    CatalogueRows with(HoseFamily family, List<HoseSize> itsHoses, List<NippleSize> itsNipples) {
        return new CatalogueRows(
                join(families, List.of(family)),
                join(hoses, itsHoses),
                join(nipples, itsNipples),
                throughBores,
                dashSizes,
                threads,
                taperPipe,
                tubeMaterials,
                tubes,
                roughness,
                compatibility,
                fluidNames,
                cutOffs,
                brakeSwell,
                rules,
                sizeUses,
                endConstants);
    }

    private static <T> List<T> join(List<T> first, List<T> second) {
        List<T> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }
}
