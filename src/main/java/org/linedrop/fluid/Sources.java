package org.linedrop.fluid;

import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/** Where the tables of this package come from. */
final class Sources {
    private Sources() {}

    static final Source KELL = new Source(
            "Kell 1975, J. Chem. Eng. Data 20:97, density of water",
            "coefficients from memory, checked against IAPWS-IF97",
            Status.FROM_MEMORY);
    static final Source IAPWS_VISCOSITY = new Source(
            "IAPWS SR6-08(2011), liquid water at 0.1 MPa",
            "coefficients from memory, checked against IAPWS-IF97",
            Status.FROM_MEMORY);
    static final Source REGION_4 = new Source(
            "IAPWS-IF97 equation 30, saturation pressure",
            "coefficients from memory, checked against its verification values",
            Status.FROM_MEMORY);
    static final Source IF97_FIT =
            new Source("least-squares fit to IAPWS-IF97 (2007) at 3 bar", "0 to 130 C", Status.COMPUTED);
    static final Source ASHRAE = new Source(
            "ASHRAE Handbook Fundamentals 2001, ch. 21, inhibited glycols",
            "least-squares fit to the tables",
            Status.COMPUTED);
    static final Source RAOULT =
            new Source("Raoult's law on the water, glycol's own vapour pressure neglected", "", Status.DERIVED);
    static final Source GLYCOL_INTERPOLATED = new Source(
            "interpolated between neighbouring concentrations of the ASHRAE fits", "by volume", Status.DERIVED);
    static final Source GLYCOL_THIN =
            new Source("interpolated between water and the 30 % fit", "by volume", Status.DERIVED);
    static final Source SOUND = new Source("estimate based on the speed of sound", "", Status.FROM_MEMORY);
    static final Source IDEAL_GAS =
            new Source("ideal gas law, R = 287.055 J/(kg K)", "at 101.325 kPa", Status.STANDARD);
    static final Source US_ATMOSPHERE =
            new Source("US Standard Atmosphere 1976, viscosity", "constants from memory", Status.FROM_MEMORY);
    static final Source AIR_HEAT =
            new Source("fit to Lemmon and Jacobsen 2004, air at 101.325 kPa", "-60 to 200 C", Status.COMPUTED);
    static final Source DIPPR_DENSITY =
            new Source("Perry's Chemical Engineers' Handbook, 8th ed., Table 2-32", "", Status.PUBLISHED);
    static final Source DIPPR_VISCOSITY =
            new Source("Perry's Chemical Engineers' Handbook, 8th ed., Table 2-313", "", Status.PUBLISHED);
    static final Source DIPPR_HEAT =
            new Source("Perry's Chemical Engineers' Handbook, 8th ed., Table 2-153", "", Status.PUBLISHED);
    static final Source VDI = new Source("VDI Heat Atlas, 2nd ed., PPDS equations", "", Status.PUBLISHED);
    static final Source API_DENSITY = new Source(
            "API MPMS 11.1 / ASTM D1250 (1980), constants published",
            "density at 15 C typical of the grade, from memory",
            Status.FROM_MEMORY);
    static final Source API_MODULUS =
            new Source("API MPMS 11.2.1M (1984)", "constants from memory", Status.FROM_MEMORY);
    static final Source CRAGOE =
            new Source("NBS Miscellaneous Publication 97 (Cragoe 1929)", "constants from memory", Status.FROM_MEMORY);
    static final Source DOE_PETROL = new Source(
            "US DOE, Properties of Fuels table",
            "two-point fit to the mid-points of the ranges at -20 and 20 C",
            Status.DERIVED);
    static final Source AP42 =
            new Source("US EPA AP-42, ch. 7.1, fig. 7.1-14b/15", "slope S from memory", Status.FROM_MEMORY);
    static final Source BLEND = new Source("computed from the components by volume", "", Status.DERIVED);
    static final Source D5798 = new Source(
            "ASTM D5798-15 vapour pressure classes", "slope with temperature is an estimate", Status.FROM_MEMORY);
    static final Source BLEND_PRESSURE =
            new Source("interpolated between petrol, E10, the E85 class and ethanol", "estimate", Status.FROM_MEMORY);
    static final Source DOE_DIESEL = new Source(
            "US DOE, Properties of Fuels table",
            "slope from the mid-points at -20, 20 and 40 C; level from the viscosity at 40 C",
            Status.DERIVED);
    static final Source JET =
            new Source("Jet A-1 specification with typical values", "level; slope of n-dodecane", Status.DERIVED);
    static final Source MEMORY = new Source("typical product data sheet figures", "", Status.FROM_MEMORY);
    static final Source ATF =
            new Source("constants of an open-source gearbox controller", "viscosity at 40 and 100 C", Status.PUBLISHED);
    static final Source ISO_VG = new Source(
            "ISO 3448 mid-point at 40 C", "viscosity at 100 C as published for mineral oil", Status.PUBLISHED);
    static final Source SILICONE = new Source(
            "US patent 4640792, DOT 5 silicone fluids 15 to 50 mm2/s at 25 C",
            "temperature formula from memory",
            Status.FROM_MEMORY);
    static final Source FMVSS = new Source("49 CFR 571.116 (FMVSS 116)", "boiling point minima only", Status.STANDARD);
    static final Source USER = Source.of("given by the user", Status.GIVEN);
}
