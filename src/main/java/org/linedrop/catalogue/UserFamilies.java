package org.linedrop.catalogue;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/** Makes rows of a user's family from the family it resembles. */
final class UserFamilies {
    private UserFamilies() {}

    static HoseFamily family(UserFamily user, HoseFamily like) {
        return new HoseFamily(
                user.name(),
                like.liner(),
                like.liners(),
                like.sizedByDash(),
                like.sizing(),
                like.convoluted(),
                like.surface(),
                like.endBuild(),
                "of the user's own, like " + like.name(),
                like.name(),
                Source.of("user's catalogue", Status.GIVEN));
    }

    static List<HoseSize> hoses(Catalogue base, UserFamily user, HoseFamily like) {
        List<HoseSize> made = new ArrayList<>();
        for (UserFamily.Row row : user.rows()) {
            String size = size(user, row, like);
            HoseSize same = same(base, like, size);
            if (row.boreM() == null && same == null) {
                throw new CatalogueException(
                        user.name() + " " + size + " has no bore, and " + like.name() + " has no " + size,
                        "Give bore:");
            }
            made.add(hose(base, user, row, like, size, same));
        }
        return made;
    }

    private static HoseSize hose(
            Catalogue base,
            UserFamily user,
            UserFamily.Row row,
            HoseFamily like,
            String size,
            @Nullable HoseSize same) {
        Figure bore = row.boreM() != null ? row.boreM() : boreOf(like, same);
        Figure roughness = row.roughnessM() != null ? row.roughnessM() : FittingLookup.roughness(base, like.surface());
        return new HoseSize(
                user.name(),
                SizeText.dashNumber(size),
                size,
                like.liner(),
                bore,
                roughness,
                or(row.outsideDiameterM(), same == null ? null : same.outsideDiameterM(), like),
                or(row.minBendRadiusM(), same == null ? null : same.minBendRadiusM(), like),
                orGuess(row.workingPressurePa(), same == null ? null : same.workingPressurePa(), like),
                orGuess(row.proofPressurePa(), same == null ? null : same.proofPressurePa(), like),
                orGuess(row.burstPressurePa(), same == null ? null : same.burstPressurePa(), like),
                orGuess(row.vacuumPa(), same == null ? null : same.vacuumPa(), like),
                orGuess(row.minTemperatureK(), same == null ? null : same.minTemperatureK(), like),
                orGuess(row.maxTemperatureK(), same == null ? null : same.maxTemperatureK(), like),
                or(row.massKgPerM(), same == null ? null : same.massKgPerM(), like),
                like.convoluted(),
                same != null ? same.neverJudged() : like.name().equals("brake hose"));
    }

    private static Figure boreOf(HoseFamily like, @Nullable HoseSize same) {
        if (same == null) {
            throw new IllegalStateException("no bore");
        }
        return taken(same.boreM(), like, same.boreM().status());
    }

    /** Nipples of the family's sizes: the user's bore, or the one of the family it resembles. */
    static List<NippleSize> nipples(Catalogue base, UserFamily user, HoseFamily like) {
        List<NippleSize> made = new ArrayList<>();
        for (UserFamily.Row row : user.rows()) {
            String size = size(user, row, like);
            for (NippleSize nipple : base.rows().nipples()) {
                if (nipple.family().equals(like.name()) && nipple.size().equals(size)) {
                    Figure bore = row.endBoreM() != null
                            ? row.endBoreM()
                            : taken(nipple.boreM(), like, nipple.boreM().status());
                    made.add(new NippleSize(user.name(), nipple.build(), size, bore, nipple.lengthM()));
                }
            }
            boolean none = made.stream().noneMatch(n -> n.size().equals(size));
            if (none && row.endBoreM() != null) {
                made.add(
                        new NippleSize(user.name(), like.endBuild(), size, row.endBoreM(), threeBores(row.endBoreM())));
            }
        }
        return made;
    }

    /** A nipple some three bores long; from memory. */
    private static Figure threeBores(Figure bore) {
        double length = 3 * bore.value();
        return new Figure(
                0.7 * length,
                length,
                1.3 * length,
                new Source("Recollection of the trade", "three bores long, 30 % each way", Status.FROM_MEMORY));
    }

    private static String size(UserFamily user, UserFamily.Row row, HoseFamily like) {
        String size = like.sizedByDash() ? SizeText.dash(row.size()) : SizeText.inch(row.size());
        if (size == null) {
            throw new CatalogueException(
                    user.name() + " size \"" + row.size() + "\" cannot be read",
                    like.sizedByDash()
                            ? like.name() + " is sized by dash: write -6"
                            : like.name() + " is sized by inch: write 5/16 in");
        }
        return size;
    }

    private static @Nullable HoseSize same(Catalogue base, HoseFamily like, String size) {
        for (HoseSize hose : base.hoses()) {
            if (hose.family().equals(like.name()) && hose.sizeText().equals(size)) {
                return hose;
            }
        }
        return null;
    }

    private static @Nullable Figure or(@Nullable Figure own, @Nullable Figure base, HoseFamily like) {
        return own != null || base == null ? own : taken(base, like, base.status());
    }

    /** A rating of another hose is a guess about this one, whatever it was worth there. */
    private static @Nullable Figure orGuess(@Nullable Figure own, @Nullable Figure base, HoseFamily like) {
        return own != null || base == null ? own : taken(base, like, Status.weaker(base.status(), Status.GUESSED));
    }

    private static Figure taken(Figure figure, HoseFamily like, Status status) {
        Source source = figure.source();
        String locator = "taken from " + like.name() + (source.locator().isEmpty() ? "" : ": " + source.locator());
        return new Figure(figure.low(), figure.value(), figure.high(), new Source(source.title(), locator, status));
    }
}
