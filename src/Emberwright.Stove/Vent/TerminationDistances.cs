using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Vent;

/// <summary>A distance of the vent's terminal to look up and confirm; never a verdict of compliance.</summary>
/// <param name="Id">Stable id, lower case with hyphens.</param>
/// <param name="From">From what the terminal keeps away.</param>
/// <param name="UsualM">Distance often asked for, m; to be replaced by what local code and the listing say.</param>
/// <param name="Origin">Where the number comes from.</param>
public sealed record TerminationDistance(string Id, string From, double UsualM, Origin Origin);

/// <summary>
/// The places a terminal keeps away from, with distances often asked for in North America. Local code and the appliance's
/// listing decide; the list is there so that none is forgotten.
/// </summary>
public static class TerminationDistances
{
    private const double FootM = 0.3048;

    private static readonly Origin Practice = new(OriginKind.Pattern, "common practice, no source");

    /// <summary>What to say above the list.</summary>
    public const string Caution = "Confirm each against local code and the appliance's listing, which take precedence; these figures are common practice, not a judgement of compliance.";

    /// <summary>The list, in the order one walks around the terminal.</summary>
    public static IReadOnlyList<TerminationDistance> Usual { get; } =
    [
        new("opening-beside", "a window, door or other opening beside or below", 4 * FootM, Practice),
        new("opening-above", "a window, door or other opening above", 1 * FootM, Practice),
        new("air-inlet", "a forced-air inlet of the house", 10 * FootM, Practice),
        new("own-air-kit", "the inlet of the stove's own outside-air kit", 1 * FootM, Practice),
        new("gas-meter", "a gas meter, its regulator or vent", 3 * FootM, Practice),
        new("ground", "ground, or the snow expected to lie there", 1 * FootM, Practice),
        new("walkway", "a public walkway below", 7 * FootM, Practice),
        new("soffit", "an eave or soffit above", 2 * FootM, Practice),
        new("corner", "an inside corner", 1 * FootM, Practice),
        new("wall", "a facing wall or fence", 2 * FootM, Practice),
        new("plants", "plants, decking and stored goods", 2 * FootM, Practice),
        new("roof", "the roof where the run comes through (above it)", 2 * FootM, Practice),
    ];
}
