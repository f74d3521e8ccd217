package org.linedrop.catalogue;

import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All rows, and the look-ups in them. Immutable; a look-up that fails throws a {@link CatalogueException} whose message
 * and hint name the nearest or the allowed names.
 */
public final class Catalogue implements Serializable {
    private static final long serialVersionUID = 1;

    /** All rows; made again from the library's files and the user's families when read from a stream. */
    private final transient CatalogueRows rows;

    /** The user's families, in the order in which they were added. */
    private final List<UserFamily> own;

    /** Read once, on first use; immutable. */
    private static final class Standard {
        private static final Catalogue ROWS = new Catalogue(CatalogueRows.read(), List.of());
    }

    private Catalogue(CatalogueRows rows, List<UserFamily> own) {
        this.rows = rows;
        this.own = List.copyOf(own);
    }

    /** What a stream holds: the library has its own rows. */
    private record Kept(List<UserFamily> own) implements Serializable {
        private Object readResolve() {
            Catalogue catalogue = standard();
            for (UserFamily family : own) {
                catalogue = catalogue.with(family);
            }
            return catalogue;
        }
    }

    private Object writeReplace() {
        return new Kept(own);
    }

    @SuppressWarnings("UnusedMethod") // called by serialization
    private void readObject(ObjectInputStream stream) throws InvalidObjectException {
        throw new InvalidObjectException("a catalogue is read by what it keeps");
    }

    /**
     * The rows that come with the library.
     *
     * @return the same immutable catalogue every time
     */
    public static Catalogue standard() {
        return Standard.ROWS;
    }

    /**
     * This catalogue with a family of the user's own.
     *
     * @param user its rows; what they leave out comes from the family named in {@code like}
     * @return a new catalogue
     * @throws CatalogueException when the name is taken, {@code like} is unknown, a size cannot be read or a bore is
     *                            missing
     */
    public Catalogue with(UserFamily user) {
        if (HoseLookup.family(this, user.name()) != null) {
            throw new CatalogueException(
                    "the catalogue already has a hose family \"" + user.name() + "\"", "Choose another name");
        }
        HoseFamily like = family(user.like());
        List<UserFamily> more = new ArrayList<>(own);
        more.add(user);
        return new Catalogue(
                rows.with(
                        UserFamilies.family(user, like),
                        UserFamilies.hoses(this, user, like),
                        UserFamilies.nipples(this, user, like)),
                more);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other || (other instanceof Catalogue that && own.equals(that.own));
    }

    @Override
    public int hashCode() {
        return own.hashCode();
    }

    // ---- look-ups

    /**
     * A hose by family and size.
     *
     * @param family short trade name, for example {@code race PTFE}; capitals do not matter
     * @param size   {@code -6}, {@code -6AN}, {@code AN6}, or {@code 5/16 in} for hose sized by inch
     * @return its row
     * @throws CatalogueException when there is none, or when the name stands for two bores
     */
    public HoseSize hose(String family, String size) {
        return HoseLookup.find(this, family, size);
    }

    /**
     * A hose by its text in the circuit file.
     *
     * @param text family and size, for example {@code race PTFE -8}
     * @return its row
     * @throws CatalogueException when there is none, when the family is missing (the message then gives the range of
     *                            bores), or when the name stands for two bores
     */
    public HoseSize hose(String text) {
        return HoseLookup.find(this, text);
    }

    /**
     * A hose family.
     *
     * @param name short trade name
     * @return its row
     * @throws CatalogueException when there is none
     */
    public HoseFamily family(String name) {
        HoseFamily family = HoseLookup.family(this, name);
        if (family == null) {
            List<String> names = rows.families().stream().map(HoseFamily::name).toList();
            throw new CatalogueException("no hose family is called \"" + name + "\"", Names.hint(name, names));
        }
        return family;
    }

    /**
     * The usual (reusable where there is one) end of a hose with its own dash at the far side.
     *
     * @param hose     the hose
     * @param kind     straight, swept (bent tube), forged (machined and low-profile mean the same), male or barb
     * @param angleDeg degrees; 0 for all but swept (30 45 60 90 120 150 180) and forged (45 90, rarely 30 60)
     * @return its row
     * @throws CatalogueException when there is no such end
     */
    public EndSize end(HoseSize hose, String kind, double angleDeg) {
        return EndLookup.find(this, hose, kind, angleDeg, "", "");
    }

    /**
     * An end of a hose.
     *
     * @param hose     the hose
     * @param kind     straight, swept, forged, male, barb, banjo or quick-connect
     * @param angleDeg degrees; 0 for all but swept and forged
     * @param build    {@code ""} or {@code reusable} for the usual one, else {@code crimped}, {@code push-on} ...
     * @param detail   bolt of a banjo ({@code M12}), tube of a quick-connect ({@code 3/8 in}); else the dash of the far
     *                 side, {@code ""} for the hose's own
     * @return its row
     * @throws CatalogueException when there is no such end
     */
    public EndSize end(HoseSize hose, String kind, double angleDeg, String build, String detail) {
        return EndLookup.find(this, hose, kind, angleDeg, build, detail);
    }

    /**
     * A hard line. Any outside diameter and wall will do; figures of the table are added where it has them.
     *
     * @param material         for example {@code aluminium}, {@code 6061-T6 aluminium}, {@code steel}
     * @param outsideDiameterM outside diameter, m, above zero
     * @param wallM            wall, m, above zero and under half the outside diameter
     * @return the tube
     * @throws CatalogueException when the material is unknown or a length is out of range
     */
    public TubeSize tube(String material, double outsideDiameterM, double wallM) {
        return FittingLookup.tube(this, material, outsideDiameterM, wallM);
    }

    /**
     * A straight adapter or reducer.
     *
     * @param text {@code -6 to -5}, {@code M22x1.5 to -12}, {@code ORB -8 to -8}, {@code 1/4 NPT to -6}, ...
     * @return its row, connections in the order written
     * @throws CatalogueException when a side cannot be read or its bore is not known
     */
    public AdapterSize adapter(String text) {
        return FittingLookup.adapter(this, text, 0, false);
    }

    /**
     * An adapter that turns.
     *
     * @param text     as {@link #adapter(String)}
     * @param angleDeg 0, 45 or 90 (rarely 30 or 60); of bent tube 0 30 45 60 90 120 150 180
     * @param bentTube true when it turns by a bent tube; false (usual) for two drilled bores that meet
     * @return its row
     * @throws CatalogueException when a side cannot be read or its bore is not known
     */
    public AdapterSize adapter(String text, double angleDeg, boolean bentTube) {
        return FittingLookup.adapter(this, text, angleDeg, bentTube);
    }

    /**
     * A bulkhead fitting.
     *
     * @param size dash size
     * @return its row
     * @throws CatalogueException when the size has no known through bore
     */
    public AdapterSize bulkhead(String size) {
        return FittingLookup.doubleMale(this, "bulkhead", size);
    }

    /**
     * A union between two hose ends.
     *
     * @param size dash size
     * @return its row
     * @throws CatalogueException when the size has no known through bore
     */
    public AdapterSize union(String size) {
        return FittingLookup.doubleMale(this, "union", size);
    }

    /**
     * The connections and through bore of a valve with male flares.
     *
     * @param size {@code -8}
     * @return its row
     * @throws CatalogueException when the size has no known through bore
     */
    public AdapterSize valve(String size) {
        return FittingLookup.doubleMale(this, "valve", size);
    }

    /**
     * A tee.
     *
     * @param text {@code -8}, or {@code -8 to -6} with a smaller branch
     * @return its row
     * @throws CatalogueException when a size has no known through bore
     */
    public JunctionSize tee(String text) {
        return FittingLookup.junction(this, "tee", text);
    }

    /**
     * A Y block.
     *
     * @param text common leg to legs, {@code -8 to -6}
     * @return its row
     * @throws CatalogueException when a size has no known through bore
     */
    public JunctionSize yBlock(String text) {
        return FittingLookup.junction(this, "Y block", text);
    }

    /**
     * A connection by its text, with its thread.
     *
     * @param text   {@code -6}, {@code ORB -8}, {@code 1/4 NPT}, {@code G 3/8}, {@code M22x1.5}, {@code barb 3/8 in} ...
     * @param gender which half it is
     * @param name   how messages name it, for example {@code pump port ORB -8}
     * @return the connection
     * @throws CatalogueException when the text cannot be read
     */
    public Connection connection(String text, Gender gender, String name) {
        return ConnectionLookup.parse(this, text).as(gender).named(name);
    }

    /**
     * The flared end of a tube with its nut.
     *
     * @param tube     the tube
     * @param tubeText how messages name it, for example {@code 5/16 in tube}
     * @return a swivel nut of the tube's dash; not stated when the tube has no dash
     */
    public Connection tubeEnd(TubeSize tube, String tubeText) {
        return tube.dash() == 0
                ? Connection.notStated(tubeText)
                : ConnectionLookup.of(this, Seat.FLARE_37, Gender.SWIVEL, "-" + tube.dash(), tubeText)
                        .ofTube();
    }

    /**
     * How a lining stands a fluid.
     *
     * @param liner       lining, or several joined by {@code or}: the worst counts
     * @param fluidFamily a fluid of the table or one of its other names
     * @return the row; grade unknown when there is none
     */
    public Compatibility compatibility(String liner, String fluidFamily) {
        return CompatibilityLookup.find(this, liner, fluidFamily);
    }

    /**
     * What the compatibility table calls a fluid.
     *
     * @param name any name
     * @return the table's name; the same text when it is not known
     */
    public String fluidName(String name) {
        return CompatibilityLookup.fluidName(this, name);
    }

    /**
     * What goes with a dash number.
     *
     * @param dash dash number, positive
     * @return its row
     * @throws CatalogueException when there is none
     */
    public DashSize dashSize(int dash) {
        return FittingLookup.dashSize(this, dash);
    }

    // ---- rows

    /** All rows, immutable. */
    CatalogueRows rows() {
        return rows;
    }

    /**
     * All families.
     *
     * @return in catalogue order, the user's last
     */
    public List<HoseFamily> families() {
        return rows.families();
    }

    /**
     * All hose sizes.
     *
     * @return family by family
     */
    public List<HoseSize> hoses() {
        return rows.hoses();
    }

    /**
     * Usual tubes.
     *
     * @return material by material
     */
    public List<TubeSize> tubes() {
        return rows.tubes();
    }

    /**
     * Nipples of hose ends.
     *
     * @return family by family
     */
    public List<NippleSize> nipples() {
        return rows.nipples();
    }

    /**
     * What goes with each dash number.
     *
     * @return -2 to -32
     */
    public List<DashSize> dashSizes() {
        return rows.dashSizes();
    }

    /**
     * What dash sizes are usually used for.
     *
     * @return use by use
     */
    public List<SizeUse> sizeUses() {
        return rows.sizeUses();
    }

    /**
     * The most that new brake hose may swell.
     *
     * @return size by size, type by type, from the lowest pressure up
     */
    public List<BrakeSwell> brakeSwell() {
        return rows.brakeSwell();
    }

    /**
     * Linings against fluids.
     *
     * @return lining by lining
     */
    public List<Compatibility> compatibility() {
        return rows.compatibility();
    }

    /**
     * The trade's rules of thumb: advice, which never breaks anything.
     *
     * @return topic by topic
     */
    public List<RuleOfThumb> rules() {
        return rows.rules();
    }
}
