using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Fouling;
using Emberwright.Visits.Journal;

namespace Emberwright.DemoFirm;

/// <summary>An invented household of the county of Orrin with its stove, and how that stove really fouls.</summary>
/// <param name="Name">Name.</param>
/// <param name="Address">Address.</param>
/// <param name="Phone">Telephone, of the numbers kept for fiction.</param>
/// <param name="Pattern">How the stove is built.</param>
/// <param name="Maker">Invented maker.</param>
/// <param name="Model">Invented model.</param>
/// <param name="Serial">Serial number.</param>
/// <param name="AgeYears">Age, years.</param>
/// <param name="Site">Where it stands.</param>
/// <param name="TonnesPerYear">Fuel of a year, t.</param>
/// <param name="Growth">x per tonne of each passage.</param>
internal sealed record Household(
    string Name, string Address, string Phone, Pattern Pattern, string Maker, string Model, string Serial, double AgeYears, SiteBody Site,
    double TonnesPerYear, IReadOnlyDictionary<Parameter, double> Growth)
{
    private static readonly string[] First =
        ["Anselm", "Barnaby", "Cordelia", "Dorcas", "Edwin", "Fenella", "Gideon", "Hesper", "Ignatius", "Jessamy", "Kester", "Leonora", "Merrick", "Nell", "Osric", "Philippa", "Quentin", "Rosalind", "Silas", "Tamsin", "Ursula", "Verity", "Winifred", "Zachary"];
    private static readonly string[] Last =
        ["Ashgrove", "Brackenbury", "Coldwell", "Dunmarrow", "Elderfield", "Fairlamb", "Greyling", "Hawkmoor", "Inglethorpe", "Junipero", "Kettleby", "Larkspur", "Marchbanks", "Nightshade", "Oakhanger", "Penhallow", "Quillfeather", "Rushmere", "Silverdale", "Thistlewood", "Underhay", "Vellacott", "Wrenfield", "Yarrowby"];
    private static readonly string[] Street = ["Millrace Lane", "Ferry Steps", "Quarry Lane", "Church Row", "Weir Street", "Kiln Road", "Upper Common", "Tollgate Road", "Heron Walk", "Sawpit Lane", "Old Post Road", "Larch Avenue"];
    private static readonly string[] Town = ["Sorrel Mills", "Low Orrin", "Aldmoor", "Tamarack Bridge", "Vale End", "Upper Kiln"];
    private static readonly string[] Makers = ["Fennick & Oar", "Larchmere Stove Works", "Brackwater Thermal", "Corrigan Ember Co.", "Brackenmoor"];
    private static readonly string[] Models = ["Hob", "Column", "Ingle", "Granary", "Mole", "Vault", "Heron", "Aqua"];

    public static Household Any(Chance chance, int number)
    {
        var pattern = chance.Weighted(PatternLibrary.All, p => p.Id is "damper-insert" or "thermocouple-freestanding" ? 3 : 1);
        var rise = chance.Uniform(1.5, 6.5);
        return new(
            $"{chance.Of(First)} {chance.Of(Last)}", $"{chance.Whole(1, 148)} {chance.Of(Street)}, {chance.Of(Town)}, county of Orrin",
            $"555-01{number % 100:00}", pattern, chance.Of(Makers), $"{chance.Of(Models)} {chance.Whole(2, 9) * 10}", $"{pattern.Id[..2].ToUpperInvariant()}-{20_000 + number * 37}",
            Math.Round(chance.Uniform(1, 18)),
            new SiteBody(
                Altitude: Q(Math.Round(chance.Uniform(60, 640)), Units.Metre), Room: Q(20, Units.Celsius), Supply: Q(Math.Round(chance.Normal(pattern.SupplyV, pattern.SupplyV * 0.012)), Units.Volt),
                OutsideAir: chance.Happens(0.35),
                Vent: new VentBody(Q(pattern.SupplyV > 200 ? 80 : 76, Units.Millimetre), Q(Math.Round(chance.Uniform(0.3, 1.2), 1), Units.Metre), Q(Math.Round(rise, 1), Units.Metre), chance.Whole(0, 1), 0, 1, "vertical-cap", "rigid", chance.Happens(0.4))),
            chance.LogNormal(1.2, 0.35),
            GrowthPrior.All.ToDictionary(g => g.Passage, g => chance.LogNormal(g.MedianPerTonne, g.LnSdBetweenStoves)));
    }

    private static Quantity Q(double value, Unit unit) => new(value, unit);
}
